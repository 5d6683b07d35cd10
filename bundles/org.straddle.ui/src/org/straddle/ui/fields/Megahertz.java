package org.straddle.ui.fields;

import org.straddle.outlook.things.Band;
import org.straddle.words.Catalogue;

/** A frequency in MHz and the band that it lies in; nothing where nobody knows it, which the model holds as 0. */
public final class Megahertz implements Notation<Double> {

    private static final Catalogue TEXTS = Catalogue.of(Megahertz.class);

    private final Notation<Double> number = Numbers.orUnknown(0, 300_000);

    @Override
    public String print(Double value) {
        return number.print(value);
    }

    @Override
    public Double parse(String text) {
        return number.parse(text);
    }

    @Override
    public String told(Double value) {
        return value == null || value == 0 ? TEXTS.text("megahertz.unknown")
                : Band.of(value).map(band -> TEXTS.text("megahertz.band", "band", band.label()))
                        .orElse(TEXTS.text("megahertz.noBand"));
    }

    @Override
    public boolean tells() {
        return true;
    }
}
