package org.straddle.ui.sky.picture;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Control;

/** The fonts of the pictures; they live as long as the control. */
public record Faces(Font plain, Font small, Font bold) {

    public static Faces of(Control control) {
        FontDescriptor plain = FontDescriptor.createFrom(control.getFont());
        Faces faces = new Faces(plain.createFont(control.getDisplay()),
                plain.increaseHeight(-1).createFont(control.getDisplay()),
                plain.setStyle(SWT.BOLD).createFont(control.getDisplay()));
        control.addDisposeListener(disposed -> {
            faces.plain.dispose();
            faces.small.dispose();
            faces.bold.dispose();
        });
        return faces;
    }
}
