package org.straddle.sky;

/** Guards of the value records: NaN fails as well. */
final class Ranges {

    private Ranges() {
    }

    static void require(String what, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "The " + what + " must lie between " + least + " and " + most + ", not " + value);
        }
    }
}
