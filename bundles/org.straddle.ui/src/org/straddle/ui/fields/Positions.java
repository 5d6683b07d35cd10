package org.straddle.ui.fields;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Locator;
import org.straddle.grid.PositionText;
import org.straddle.words.Catalogue;

/** A position in any form that people write; how it was understood is told back. */
public final class Positions implements Notation<GeoPosition> {

    private static final Catalogue TEXTS = Catalogue.of(Positions.class);

    @Override
    public String print(GeoPosition value) {
        return value == null ? "" : plain(value.latitudeDeg()) + ", " + plain(value.longitudeDeg());
    }

    private static String plain(double degrees) {
        return BigDecimal.valueOf(degrees).setScale(6, RoundingMode.HALF_UP).toPlainString();
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
        return TEXTS.text("positions.told", "understood", understood,
                "seconds", PositionText.write(value, PositionText.Form.SECONDS), "locator", Locator.of(value, 10));
    }

    @Override
    public boolean tells() {
        return true;
    }
}
