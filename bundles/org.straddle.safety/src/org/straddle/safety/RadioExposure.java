package org.straddle.safety;

import org.straddle.model.ExposureLimits;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * How far people stay from an antenna that transmits, by the limits of 47 CFR 1.1310 for power density. The distance
 * takes the far field with full power in the main lobe and a reflection from the ground, all the time (formula of OET
 * Bulletin 65, from memory): averaging over time and a beam that points at the sky leave more room. Close to the
 * antenna the far-field formula does not hold. Local law differs by country: defer to it.
 */
public enum RadioExposure {
    /** People who know of the field and can leave it; averaged over 6 minutes. */
    CONTROLLED(1, 5),
    /** Everybody else; averaged over 30 minutes. */
    UNCONTROLLED(0.2, 1);


    private static final Catalogue TEXTS = Catalogue.of(RadioExposure.class);

    /** Ground reflection: field strength × 1.6, power density × 1.6² (OET Bulletin 65, from memory). */
    private static final double GROUND_REFLECTION = 2.56;

    private static final double WATTS_PER_M2_IN_MW_PER_CM2 = 10;

    /** Speed of light, m times MHz. */
    private static final double M_MHZ = 299.792458;

    private final double below300MhzMwCm2;
    private final double above1500MhzMwCm2;

    RadioExposure(double below300MhzMwCm2, double above1500MhzMwCm2) {
        this.below300MhzMwCm2 = below300MhzMwCm2;
        this.above1500MhzMwCm2 = above1500MhzMwCm2;
    }

    /**
     * Highest power density (47 CFR 1.1310, table 1; the part above 1500 MHz from memory).
     *
     * @param frequencyMhz 30 to 100 000
     * @return mW/cm²
     */
    public double limitMwCm2(double frequencyMhz) {
        requireCovered(frequencyMhz);
        if (frequencyMhz <= 300) {
            return below300MhzMwCm2;
        }
        return frequencyMhz < 1500 ? frequencyMhz / 300 * below300MhzMwCm2 : above1500MhzMwCm2;
    }

    /**
     * Highest power density by the limits that apply somewhere. ICNIRP: 10 and 2 W/m² up to 400 MHz, f/40 and f/200 up to
     * 2 GHz, 50 and 10 W/m² above (reference levels for the whole body, after secondary pages).
     *
     * @param whose the strictest of those known where nobody says
     * @param frequencyMhz 30 to 100 000
     * @return W/m²
     */
    public double limitWm2(ExposureLimits whose, double frequencyMhz) {
        double fcc = limitMwCm2(frequencyMhz) * WATTS_PER_M2_IN_MW_PER_CM2;
        double icnirp = frequencyMhz <= 400 ? icnirpBelow400MhzWm2()
                : frequencyMhz <= 2000 ? icnirpBelow400MhzWm2() * frequencyMhz / 400 : icnirpBelow400MhzWm2() * 5;
        return switch (whose) {
            case FCC -> fcc;
            case ICNIRP -> icnirp;
            case STRICTEST -> Math.min(fcc, icnirp);
        };
    }

    private double icnirpBelow400MhzWm2() {
        return this == CONTROLLED ? 10 : 2;
    }

    /**
     * Distance at which the field falls to the limit that applies, and never so near that the far-field formula does not
     * hold: a wavelength over 2π.
     *
     * @return metres from the antenna
     */
    public double distanceM(ExposureLimits whose, double powerW, double gainDbi, double frequencyMhz) {
        double eirpW = requirePower(powerW) * Math.pow(10, requireGain(gainDbi) / 10);
        double far = Math.sqrt(GROUND_REFLECTION * eirpW / (4 * Math.PI * limitWm2(whose, frequencyMhz)));
        return Math.max(far, M_MHZ / frequencyMhz / (2 * Math.PI));
    }

    private static double requirePower(double powerW) {
        if (!(powerW >= 0) || !Double.isFinite(powerW)) {
            throw new IllegalArgumentException("A power is 0 W or more, not " + powerW + ".");
        }
        return powerW;
    }

    private static double requireGain(double gainDbi) {
        if (!Double.isFinite(gainDbi)) {
            throw new IllegalArgumentException("A gain is a number of dB, not " + gainDbi + ".");
        }
        return gainDbi;
    }

    /**
     * Distance at which the field falls to the limit.
     *
     * @param powerW average power at the antenna, W, 0 or more
     * @param gainDbi gain over an isotropic radiator, dB
     * @param frequencyMhz 30 to 100 000
     * @return metres from the antenna
     */
    public double distanceM(double powerW, double gainDbi, double frequencyMhz) {
        if (!(powerW >= 0) || !Double.isFinite(powerW) || !Double.isFinite(gainDbi)) {
            throw new IllegalArgumentException("A power is 0 W or more, not " + powerW + ", and a gain a number of dB,"
                    + " not " + gainDbi + ".");
        }
        double eirpW = powerW * Math.pow(10, gainDbi / 10);
        double limitWm2 = limitMwCm2(frequencyMhz) * WATTS_PER_M2_IN_MW_PER_CM2;
        return Math.sqrt(GROUND_REFLECTION * eirpW / (4 * Math.PI * limitWm2));
    }

    /**
     * Effective radiated power up to which no evaluation is asked for at a distance (47 CFR 1.1307(b)(3)(i)(C), from
     * memory).
     *
     * @param frequencyMhz 30 up to 1500
     * @param distanceM at least a wavelength divided by 2π
     * @return W over a half-wave dipole
     */
    public static double exemptErpW(double frequencyMhz, double distanceM) {
        requireCovered(frequencyMhz);
        double nearestM = 299.792458 / frequencyMhz / (2 * Math.PI);
        if (frequencyMhz >= 1500 || !(distanceM >= nearestM)) {
            throw new IllegalArgumentException(TEXTS.text("radioExposure.exemptionStatedBelow",
                    "nearestM", FigureText.inCurrent().atMost(1, nearestM), "frequencyMhz", frequencyMhz, "distanceM", distanceM));
        }
        return (frequencyMhz < 300 ? 3.83 : 0.0128 * frequencyMhz) * distanceM * distanceM;
    }

    private static void requireCovered(double frequencyMhz) {
        if (!(frequencyMhz >= 30 && frequencyMhz <= 100_000)) {
            throw new IllegalArgumentException(TEXTS.text("radioExposure.limitsKnownFrom", "frequencyMhz", frequencyMhz));
        }
    }
}
