package org.straddle.sky;

import org.straddle.words.Catalogue;

/** Guards of the value records: NaN fails as well. */
final class Ranges {

    private static final Catalogue TEXTS = Catalogue.of(Ranges.class);

    private Ranges() {
    }

    static void require(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    TEXTS.text("ranges.mustLieBetween", "what", what, "least", least, "most", most, "value", value));
        }
    }
}
