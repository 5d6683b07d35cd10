package org.straddle.ui.fields;

import java.util.Locale;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Locator;
import org.straddle.grid.PositionText;

/** A position in any form that people write; how it was understood is told back. */
public final class Positions implements Notation<GeoPosition> {

    @Override
    public String print(GeoPosition value) {
        return value == null ? "" : String.format(Locale.ROOT, "%.6f, %.6f", value.latitudeDeg(), value.longitudeDeg());
    }

    @Override
    public GeoPosition parse(String text) {
        return PositionText.read(text).position();
    }

    @Override
    public String told(GeoPosition value) {
        return value == null ? "" : told(print(value), value);
    }

    /** What the text was taken for, then the place in the other forms, so that a slip shows in whichever one knows. */
    @Override
    public String told(String text, GeoPosition value) {
        String understood;
        try {
            understood = PositionText.read(text).interpretation();
        } catch (IllegalArgumentException unread) {
            understood = PositionText.read(print(value)).interpretation();
        }
        return understood + "\n" + PositionText.write(value, PositionText.Form.SECONDS) + "; locator " + Locator.of(value, 10);
    }

    @Override
    public boolean tells() {
        return true;
    }
}
