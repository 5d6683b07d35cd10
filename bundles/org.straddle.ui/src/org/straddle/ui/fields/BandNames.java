package org.straddle.ui.fields;

import org.straddle.outlook.things.BandName;
import org.straddle.words.Catalogue;

/** An amateur band by its wavelength, {@code 70cm}; spaced or not, in small letters or large. */
public final class BandNames implements Notation<String> {

    private static final Catalogue TEXTS = Catalogue.of(BandNames.class);

    @Override
    public String print(String value) {
        return value == null ? "" : value;
    }

    @Override
    public String parse(String text) {
        return text.isBlank() ? null : BandName.of(text)
                .orElseThrow(() -> new IllegalArgumentException(TEXTS.text("bandNames.wrong", "text", text.strip())));
    }
}
