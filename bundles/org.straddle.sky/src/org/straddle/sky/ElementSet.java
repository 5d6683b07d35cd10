package org.straddle.sky;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;

import org.straddle.words.Catalogue;

/**
 * The mean orbital elements of one bird, in the sense of SGP4 and in the frame TEME, as two-line
 * element sets (TLE) and orbit mean-elements messages (OMM) carry them.
 *
 * <p>The epoch is a UTC instant with nanoseconds. A TLE epoch (10⁻⁸ day = 0.864 ms steps) is a
 * whole number of nanoseconds and so is held exactly; an OMM epoch with more digits is off by half
 * a nanosecond at most, 4 µm along a low orbit.
 *
 * @param name                    name given by whoever published the set; may be empty
 * @param catalogueNumber         0 to 999 999 999; only up to 339 999 fits a TLE
 * @param internationalDesignator as in an OMM, {@code 1958-002B}; may be empty
 * @param epoch                   UTC, of the years 1957 to 2099
 * @param meanMotionRevPerDay     10⁻⁶ to 20 revolutions a day
 * @param eccentricity            0 ≤ e &lt; 1
 * @param inclinationDeg          0 to 180
 * @param raanDeg                 right ascension of the ascending node, 0 to 360
 * @param argumentOfPerigeeDeg    0 to 360
 * @param meanAnomalyDeg          0 to 360
 * @param bstar                   drag term, per Earth radius
 * @param meanMotionDot           ṅ/2 in rev/day², as in the TLE field; public OMM files carry the
 *                                same halved number. SGP4 does not use it
 * @param meanMotionDdot          n̈/6 in rev/day³, likewise
 * @param elementSetNumber        0 or more; only up to 9999 fits a TLE
 * @param revolutionAtEpoch       0 or more; only up to 99 999 fits a TLE
 */
public record ElementSet(String name, int catalogueNumber, String internationalDesignator, Instant epoch,
        double meanMotionRevPerDay, double eccentricity, double inclinationDeg, double raanDeg,
        double argumentOfPerigeeDeg, double meanAnomalyDeg, double bstar, double meanMotionDot,
        double meanMotionDdot, int elementSetNumber, int revolutionAtEpoch) {

    private static final Catalogue TEXTS = Catalogue.of(ElementSet.class);

    /** @throws ElementSetException when a value is out of its range */
    public ElementSet {
        name = Objects.requireNonNull(name, "name").strip();
        internationalDesignator = Objects.requireNonNull(internationalDesignator, "internationalDesignator").strip();
        Objects.requireNonNull(epoch, "epoch");
        try {
            Ranges.require(TEXTS.text("elementSet.yearEpoch"), epoch.atOffset(ZoneOffset.UTC).getYear(), 1957, 2099);
            Ranges.require(TEXTS.text("elementSet.catalogueNumber"), catalogueNumber, 0, 999_999_999);
            Ranges.require(TEXTS.text("elementSet.meanMotionRevolutions"), meanMotionRevPerDay, 1e-6, 20);
            Ranges.require("eccentricity", eccentricity, 0, Math.nextDown(1.0));
            Ranges.require("inclination", inclinationDeg, 0, 180);
            Ranges.require(TEXTS.text("elementSet.rightAscensionAscending"), raanDeg, 0, 360);
            Ranges.require(TEXTS.text("elementSet.argumentPerigee"), argumentOfPerigeeDeg, 0, 360);
            Ranges.require(TEXTS.text("elementSet.meanAnomaly"), meanAnomalyDeg, 0, 360);
            Ranges.require(TEXTS.text("elementSet.dragTerm"), bstar, -10, 10);
            Ranges.require(TEXTS.text("elementSet.meanMotionRate"), meanMotionDot, -100, 100);
            Ranges.require(TEXTS.text("elementSet.meanMotionAcceleration"), meanMotionDdot, -100, 100);
            Ranges.require(TEXTS.text("elementSet.elementSetNumber"), elementSetNumber, 0, Integer.MAX_VALUE);
            Ranges.require(TEXTS.text("elementSet.revolutionNumber"), revolutionAtEpoch, 0, Integer.MAX_VALUE);
        } catch (IllegalArgumentException e) {
            throw new ElementSetException((name.isEmpty() ? TEXTS.text("elementSet.elementSet",
                    "catalogueNumber", catalogueNumber) : name) + ": "
                    + e.getMessage());
        }
    }

    /** Of what tells sets apart: they are looked up by value in every search for passes. */
    @Override
    public int hashCode() {
        return 31 * (31 * epoch.hashCode() + Double.hashCode(meanAnomalyDeg)) + Double.hashCode(raanDeg);
    }

    /**
     * Reads a two-line element set: columns, checksums and the agreement of both lines are
     * verified.
     *
     * @param name the name beside the lines; may be empty. A leading {@code "0 "}, as some files
     *             have it, is dropped
     * @throws ElementSetException saying which line and column is wrong, and how
     */
    public static ElementSet ofTle(String name, String line1, String line2) {
        return TleNotation.read(name, line1, line2);
    }

    /**
     * Writes the two lines. The classification column, which this record does not keep, says U.
     * Reading them back gives an equal set when the set came from a TLE.
     *
     * @throws ElementSetException when a value has no room in the format: a catalogue number above
     *                             339 999 above all
     */
    public List<String> toTleLines() {
        return TleNotation.write(this);
    }

    /** Time from epoch to {@code instant}, negative before the epoch. */
    public Duration ageAt(Instant instant) {
        return Duration.between(epoch, instant);
    }

    /** Anomalistic period. */
    public Duration period() {
        return Duration.ofNanos(Math.round(86_400e9 / meanMotionRevPerDay));
    }

    /** Semi-major axis from Kepler's third law, kilometres from the Earth's centre. */
    public double semiMajorAxisKm() {
        double meanMotion = meanMotionRevPerDay * 2 * Math.PI / 86_400;
        return Math.cbrt(Wgs72.MU_KM3_S2 / (meanMotion * meanMotion));
    }

    /** Perigee above the Earth's equatorial radius, kilometres; good to some 10 km. */
    public double perigeeAltitudeKm() {
        return semiMajorAxisKm() * (1 - eccentricity) - Wgs72.EARTH_RADIUS_KM;
    }

    /** Apogee above the Earth's equatorial radius, kilometres; good to some 10 km. */
    public double apogeeAltitudeKm() {
        return semiMajorAxisKm() * (1 + eccentricity) - Wgs72.EARTH_RADIUS_KM;
    }

    /** What to call the bird: its name, or its catalogue number when it has none. */
    public String label() {
        return name.isEmpty() ? "#" + catalogueNumber : name;
    }
}
