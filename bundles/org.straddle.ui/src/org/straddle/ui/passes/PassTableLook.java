package org.straddle.ui.passes;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.nebula.widgets.nattable.style.HorizontalAlignmentEnum;
import org.eclipse.nebula.widgets.nattable.style.theme.ModernNatTableThemeConfiguration;
import org.eclipse.nebula.widgets.nattable.util.GUIHelper;

/** Quiet lines, the system's own font, headings like those of the other tables. */
final class PassTableLook extends ModernNatTableThemeConfiguration {

    PassTableLook() {
        defaultFont = JFaceResources.getDefaultFont();
        defaultSelectionFont = defaultFont;
        cHeaderFont = defaultFont;
        cHeaderSelectionFont = defaultFont;
        cHeaderFullSelectionFont = defaultFont;
        evenRowBgColor = GUIHelper.getColor(255, 255, 255);
        oddRowBgColor = GUIHelper.getColor(246, 249, 251);
        cHeaderBgColor = GUIHelper.getColor(238, 242, 245);
        cHeaderFgColor = GUIHelper.getColor(52, 66, 79);
        cHeaderHAlign = HorizontalAlignmentEnum.LEFT;
        defaultHAlign = HorizontalAlignmentEnum.LEFT;
    }
}
