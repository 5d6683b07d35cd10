package org.straddle.outlook.things;

import java.util.Collection;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.model.Bird;
import org.straddle.model.Link;
import org.straddle.model.Operator;

/**
 * An amateur band, from its widest limits anywhere: what a licence allows differs by country.
 * Names and limits as in the band enumeration of ADIF 3.1 (from memory).
 */
public enum Band {
    M10("10m", 28, 29.7), M6("6m", 50, 54), M4("4m", 70, 71), M2("2m", 144, 148), M1_25("1.25m", 222, 225),
    CM70("70cm", 420, 450), CM33("33cm", 902, 928), CM23("23cm", 1240, 1300), CM13("13cm", 2300, 2450),
    CM9("9cm", 3300, 3500), CM6("6cm", 5650, 5925), CM3("3cm", 10000, 10500);

    private final String label;
    private final double lowMhz;
    private final double highMhz;

    Band(String label, double lowMhz, double highMhz) {
        this.label = label;
        this.lowMhz = lowMhz;
        this.highMhz = highMhz;
    }

    public String label() {
        return label;
    }

    /** Empty when the bird has no uplink written down, or one on no band known here. */
    public static Optional<Band> ofUplink(Bird bird) {
        return of(bird.getUplink());
    }

    /** Empty when the bird has no downlink written down, or one on no band known here. */
    public static Optional<Band> ofDownlink(Bird bird) {
        return of(bird.getDownlink());
    }

    private static Optional<Band> of(Link link) {
        return link == null ? Optional.empty() : of(link.getLowMhz());
    }

    /** The band that a frequency lies in; empty when it is in none known here. */
    public static Optional<Band> of(double mhz) {
        return Stream.of(values()).filter(band -> band.lowMhz <= mhz && mhz <= band.highMhz).findFirst();
    }

    /** Whether the operator's licence is noted for this band, however it is spaced: {@code 70cm}, {@code 70 cm}. */
    public boolean isIn(Operator operator) {
        return isAmong(operator.getBands());
    }

    /** Whether it is one of the bands named, however they are spaced. */
    public boolean isAmong(Collection<String> names) {
        return names.stream().filter(Objects::nonNull).anyMatch(noted -> noted.replaceAll("\\s", "").equalsIgnoreCase(label));
    }
}
