package org.straddle.sky;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;

/**
 * One bird above one place's horizon mask, from rise to set.
 *
 * <p>When the pass was already under way at the start of the time searched, {@code startsBefore}
 * is set and AOS is that start, not the rise; {@code endsAfter} likewise. Instants carry
 * nanoseconds but are good to about 0.02 s against the same element set; how far the real
 * bird may be off says {@code PassError}.
 *
 * @param elements         the bird
 * @param aos              the bird comes above the mask
 * @param tca              highest elevation while above the mask
 * @param los              the bird goes below the mask
 * @param aosAzimuthDeg    direction at AOS, from true north over east
 * @param tcaAzimuthDeg    direction at TCA
 * @param losAzimuthDeg    direction at LOS
 * @param peakElevationDeg elevation at TCA
 * @param minRangeKm       least distance during the pass
 * @param ascending        whether the bird moves north at TCA
 * @param startsBefore     cut at the start of the time searched
 * @param endsAfter        cut at the end of the time searched (or where the prediction ends)
 */
public record Pass(ElementSet elements, Instant aos, Instant tca, Instant los, double aosAzimuthDeg,
        double tcaAzimuthDeg, double losAzimuthDeg, double peakElevationDeg, double minRangeKm,
        boolean ascending, boolean startsBefore, boolean endsAfter) {

    /** By AOS, then LOS, then catalogue number. */
    public static final Comparator<Pass> IN_TIME_ORDER = Comparator.comparing(Pass::aos)
            .thenComparing(Pass::los).thenComparing(p -> p.elements.catalogueNumber());

    /** @throws IllegalArgumentException when AOS, TCA and LOS are not in order */
    public Pass {
        if (!aos.isBefore(los) || tca.isBefore(aos) || tca.isAfter(los)) {
            throw new IllegalArgumentException("AOS, TCA and LOS out of order: " + aos + ", " + tca + ", " + los);
        }
    }

    /** From AOS to LOS. */
    public Window window() {
        return new Window(aos, los);
    }

    public Duration duration() {
        return Duration.between(aos, los);
    }

    /** Whether rise and set were both found. */
    public boolean isWhole() {
        return !startsBefore && !endsAfter;
    }

    /** {@code Tern-1 (demo) 2031-06-21T10:02:11Z/2031-06-21T10:14:05Z 47°}; an ellipsis marks a cut end. */
    @Override
    public String toString() {
        return elements.label() + " " + (startsBefore ? "…" : "") + aos.truncatedTo(ChronoUnit.SECONDS) + "/"
                + los.truncatedTo(ChronoUnit.SECONDS) + (endsAfter ? "…" : "") + " "
                + Math.round(peakElevationDeg) + "°";
    }
}
