package org.straddle.daysheet.layout;

import org.straddle.drawing.Face;
import org.straddle.drawing.Lettering;

/** How much room text takes, whole pixels. */
public interface TextMeasure {

    int width(String text, Face face);

    int height(Face face);

    /** What letters need, rounded up. */
    static TextMeasure of(Lettering letters) {
        return new TextMeasure() {
            @Override
            public int width(String text, Face face) {
                return (int) Math.ceil(letters.width(text, face));
            }

            @Override
            public int height(Face face) {
                return (int) Math.ceil(letters.height(face));
            }
        };
    }
}
