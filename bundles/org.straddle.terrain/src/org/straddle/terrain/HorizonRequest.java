package org.straddle.terrain;

import org.straddle.grid.GeoPosition;
import org.straddle.words.Catalogue;

/**
 * What a horizon is to be computed for.
 *
 * @param mark where the station stands
 * @param antennaM height of the antenna above the ground, metres, 0 to 500
 * @param refraction k, see {@link BentRay}: 0.13 is usual for light, 0.25 is the radio engineers' Earth of 4/3 radius
 * @param farthestM how far to look, metres, 100 to 300 000
 * @param takeForWgs84 whether files that do not say their coordinate reference system hold longitudes and latitudes
 *     on WGS 84
 */
public record HorizonRequest(GeoPosition mark, double antennaM, double refraction, double farthestM, boolean takeForWgs84) {

    private static final Catalogue TEXTS = Catalogue.of(HorizonRequest.class);

    /** A low antenna on a tripod: common practice, no source. */
    public static final double USUAL_ANTENNA_M = 2;

    /** A ridge of 1000 m hides less than 1° from here on. */
    public static final double USUAL_FARTHEST_M = 50_000;

    /** @throws IllegalArgumentException with a sentence for the user if a value is out of range */
    public HorizonRequest {
        require(TEXTS.text("horizonRequest.heightAntenna"), antennaM, 0, 500, "m");
        require(TEXTS.text("horizonRequest.refraction"), refraction, -0.5, 0.9, "");
        require(TEXTS.text("horizonRequest.farthestDistance"), farthestM, 100, 300_000, "m");
    }

    /** With the usual figures. */
    public static HorizonRequest at(GeoPosition mark) {
        return new HorizonRequest(mark, USUAL_ANTENNA_M, BentRay.USUAL_REFRACTION, USUAL_FARTHEST_M, false);
    }

    private static void require(String name, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(TEXTS.text("horizonRequest.notBetween", "name", name, "value", value,
                    "least", least, "most", most, "unit", unit.isEmpty() ? "." : " " + unit + "."));
        }
    }
}
