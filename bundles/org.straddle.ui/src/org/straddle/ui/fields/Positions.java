package org.straddle.ui.fields;

import java.util.Locale;

import org.straddle.grid.GeoPosition;
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
        return value == null ? "" : PositionText.read(print(value)).interpretation();
    }

    @Override
    public boolean tells() {
        return true;
    }
}
