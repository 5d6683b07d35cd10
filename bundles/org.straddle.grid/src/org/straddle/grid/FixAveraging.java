package org.straddle.grid;

import java.util.OptionalInt;

import org.straddle.words.Catalogue;

/**
 * How much the mean of several fixes is better than one of them.
 *
 * <p>Two models bracket the truth. If the errors of the fixes are independent, the error of the mean is
 * that of one fix over √n. But fixes of one receiver within hours share the errors of satellites and
 * atmosphere, and no number of them takes that part away: with a common part c the error of the mean is
 * √(c² + (e² − c²)/n), which is the first model for c = 0. A receiver that reports less than the common
 * part (it has corrections) is believed, and averaging gains nothing.
 */
public final class FixAveraging {

    private static final Catalogue TEXTS = Catalogue.of(FixAveraging.class);

    /** The part of R95 in metres that averaging for an hour or so leaves: common practice, no source. */
    public static final double COMMON_R95_M = 3;

    /** Nobody stands at a roadside for more. */
    public static final int MOST_FIXES = 1000;

    private FixAveraging() {
    }

    /**
     * R95 of the mean of fixes that are each as good as one, in metres.
     *
     * @param oneR95M R95 of one fix in metres, 0 or more
     * @param commonR95M the part of it that all share, as R95 in metres; 0 for independent errors
     * @param fixes 1 and up
     * @throws IllegalArgumentException if a value is out of range
     */
    public static double r95M(double oneR95M, double commonR95M, int fixes) {
        require(oneR95M, commonR95M);
        if (fixes < 1) {
            throw new IllegalArgumentException(TEXTS.text("fixAveraging.thereMustFix", "fixes", fixes));
        }
        double common = Math.min(oneR95M, commonR95M);
        return Math.sqrt(common * common + (oneR95M * oneR95M - common * common) / fixes);
    }

    /**
     * The least number of such fixes whose mean is good enough; empty if none up to {@link #MOST_FIXES} is.
     *
     * @param wantedR95M R95 that the mean must not exceed, in metres
     * @throws IllegalArgumentException if a value is negative or not finite
     */
    public static OptionalInt fixesFor(double wantedR95M, double oneR95M, double commonR95M) {
        require(oneR95M, commonR95M);
        if (oneR95M <= wantedR95M) {
            return OptionalInt.of(1);
        }
        double common = Math.min(oneR95M, commonR95M);
        double room = wantedR95M * wantedR95M - common * common;
        // A hair less, so that an exact ratio is not rounded up to one more fix.
        double fixes = Math.ceil((oneR95M * oneR95M - common * common) / room - 1e-9);
        return wantedR95M > common && fixes <= MOST_FIXES ? OptionalInt.of(Math.max(1, (int) fixes)) : OptionalInt.empty();
    }

    private static void require(double oneR95M, double commonR95M) {
        if (!(oneR95M >= 0 && commonR95M >= 0) || Double.isInfinite(oneR95M) || Double.isInfinite(commonR95M)) {
            throw new IllegalArgumentException(TEXTS.text("fixAveraging.errorsFixesMust", "oneR95M", oneR95M,
                    "commonR95M", commonR95M));
        }
    }
}
