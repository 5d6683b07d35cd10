package org.straddle.ui.drawing;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;
import org.straddle.drawing.Face;
import org.straddle.drawing.Lettering;

/**
 * The letters of a picture on this screen. Their widths are measured once, so that pictures can be laid out on other
 * threads, which may not ask the window system.
 */
public final class ScreenLetters implements Lettering {

    private static final char FIRST = ' ';
    private static final char END = 0x250;
    /** Of what lies beyond, those that our texts have. */
    private static final String MORE = "‐–—‘’“”…→←−×≤≥′″";

    private record Measured(Font font, float[] widths, Map<Character, Integer> more, double height) {
    }

    private final Map<Face, Measured> faces = new EnumMap<>(Face.class);

    /**
     * @param owner the fonts live as long as this control, and are like its own
     * @param size of plain letters, as a part of the control's own
     */
    public ScreenLetters(Control owner, double size) {
        LocalResourceManager fonts = new LocalResourceManager(JFaceResources.getResources(), owner);
        FontData usual = owner.getFont().getFontData()[0];
        GC gc = new GC(owner);
        for (Face face : Face.values()) {
            Font font = fonts.create(FontDescriptor.createFrom(usual.getName(),
                    Math.max(6, (int) Math.round(usual.getHeight() * size * face.size())), face.bold() ? SWT.BOLD : SWT.NORMAL));
            gc.setFont(font);
            float[] widths = new float[END - FIRST];
            for (char letter = FIRST; letter < END; letter++) {
                widths[letter - FIRST] = gc.getAdvanceWidth(letter);
            }
            Map<Character, Integer> more = new HashMap<>();
            MORE.chars().forEach(letter -> more.put((char) letter, gc.getAdvanceWidth((char) letter)));
            faces.put(face, new Measured(font, widths, more, gc.getFontMetrics().getHeight()));
        }
        gc.dispose();
    }

    Font font(Face face) {
        return faces.get(face).font();
    }

    @Override
    public double width(String text, Face face) {
        Measured measured = faces.get(face);
        double width = 0;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            // Other scripts have letters about as wide as a line is high.
            width += letter >= FIRST && letter < END ? measured.widths[letter - FIRST]
                    : measured.more.getOrDefault(letter, (int) measured.height);
        }
        return width;
    }

    @Override
    public double height(Face face) {
        return faces.get(face).height();
    }
}
