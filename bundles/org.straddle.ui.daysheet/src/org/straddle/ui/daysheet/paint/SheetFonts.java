package org.straddle.ui.daysheet.paint;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Control;
import org.straddle.daysheet.layout.Face;
import org.straddle.daysheet.layout.TextMeasure;

/**
 * The fonts of a control in the faces of the sheet. Widths are remembered, because zooming and panning measure the
 * same words again and again.
 */
public final class SheetFonts implements TextMeasure {

    /** More different words than a large event has; then the memory starts anew. */
    private static final int MOST_WORDS = 20_000;

    private final Map<Face, Font> fonts = new EnumMap<>(Face.class);
    private final Map<Face, Integer> heights = new EnumMap<>(Face.class);
    private final Map<Face, Map<String, Integer>> widths = new EnumMap<>(Face.class);
    private final GC gc;

    /** Lives as long as the control. */
    public SheetFonts(Control control) {
        FontDescriptor plain = FontDescriptor.createFrom(control.getFont());
        fonts.put(Face.PLAIN, plain.createFont(control.getDisplay()));
        fonts.put(Face.SMALL, plain.increaseHeight(-1).createFont(control.getDisplay()));
        fonts.put(Face.BOLD, plain.setStyle(SWT.BOLD).createFont(control.getDisplay()));
        gc = new GC(control);
        for (Face face : Face.values()) {
            gc.setFont(fonts.get(face));
            heights.put(face, gc.getFontMetrics().getHeight());
            widths.put(face, new HashMap<>());
        }
        control.addDisposeListener(disposed -> {
            gc.dispose();
            fonts.values().forEach(Font::dispose);
        });
    }

    @Override
    public int width(String text, Face face) {
        Map<String, Integer> known = widths.get(face);
        if (known.size() > MOST_WORDS) {
            known.clear();
        }
        return known.computeIfAbsent(text, words -> {
            gc.setFont(fonts.get(face));
            return gc.textExtent(words, SWT.DRAW_TRANSPARENT).x;
        });
    }

    @Override
    public int height(Face face) {
        return heights.get(face);
    }

    Font font(Face face) {
        return fonts.get(face);
    }
}
