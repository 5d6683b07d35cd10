package org.straddle.grid;

import org.straddle.words.Catalogue;

/**
 * A piece of the graticule, half-open: the southern and western edges belong to it, the northern and
 * eastern do not. Only the pole is an exception: a northern edge at 90° belongs to the piece, since
 * no piece lies beyond it.
 *
 * @param southDeg latitude of the southern edge in degrees
 * @param westDeg longitude of the western edge in degrees, [-180, 180)
 * @param northDeg latitude of the northern edge in degrees
 * @param eastDeg longitude of the eastern edge in degrees, (-180, 180], greater than {@code westDeg}
 */
public record GeoBounds(double southDeg, double westDeg, double northDeg, double eastDeg) {

    private static final Catalogue TEXTS = Catalogue.of(GeoBounds.class);

    public GeoBounds {
        if (!(southDeg >= -90 && southDeg < northDeg && northDeg <= 90)) {
            throw new IllegalArgumentException(TEXTS.text("geoBounds.notRangeLatitude", "southDeg", southDeg,
                    "northDeg", northDeg));
        }
        if (!(westDeg >= -180 && westDeg < eastDeg && eastDeg <= 180)) {
            throw new IllegalArgumentException(TEXTS.text("geoBounds.notRangeLongitude", "westDeg", westDeg,
                    "eastDeg", eastDeg));
        }
    }

    public boolean contains(GeoPosition position) {
        double latitude = position.latitudeDeg();
        double longitude = position.longitudeDeg();
        return southDeg <= latitude && (latitude < northDeg || latitude == 90 && northDeg == 90)
                && westDeg <= longitude && longitude < eastDeg;
    }

    public GeoPosition southWest() {
        return new GeoPosition(southDeg, westDeg);
    }

    /** The middle in degrees; not the middle by area or distance. */
    public GeoPosition centre() {
        return new GeoPosition((southDeg + northDeg) / 2, (westDeg + eastDeg) / 2);
    }
}
