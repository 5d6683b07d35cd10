package org.straddle.grid;

import java.math.BigDecimal;

import org.straddle.words.Catalogue;

/**
 * A place on the WGS-84 ellipsoid.
 *
 * <p>Prints as decimal degrees, latitude first ({@code 64.1466, -21.9426}), with as many digits as
 * are needed to read the same value back.
 *
 * @param latitudeDeg geodetic latitude in degrees, -90 to 90, north positive
 * @param longitudeDeg longitude in degrees, east positive; values from -360 to 360 are accepted and
 *     brought into [-180, 180), so the 180° meridian is always -180
 */
public record GeoPosition(double latitudeDeg, double longitudeDeg) {

    private static final Catalogue TEXTS = Catalogue.of(GeoPosition.class);

    /** @throws IllegalArgumentException if a value is not a number or out of range */
    public GeoPosition {
        if (!(latitudeDeg >= -90 && latitudeDeg <= 90)) {
            throw new IllegalArgumentException(TEXTS.text("geoPosition.latitudeNotBetween", "latitudeDeg", latitudeDeg));
        }
        if (!(longitudeDeg >= -360 && longitudeDeg <= 360)) {
            throw new IllegalArgumentException(TEXTS.text("geoPosition.longitudeNotBetween", "longitudeDeg", longitudeDeg));
        }
        // Adding zero turns -0.0 into 0.0, which a record would otherwise hold for a different value.
        latitudeDeg += 0.0;
        longitudeDeg = normalised(longitudeDeg) + 0.0;
    }

    private static double normalised(double longitudeDeg) {
        if (longitudeDeg >= 180) {
            return longitudeDeg - 360;
        }
        return longitudeDeg < -180 ? longitudeDeg + 360 : longitudeDeg;
    }

    /**
     * Reads any common written form.
     *
     * @throws IllegalArgumentException with a sentence for the user if the text is no position
     * @see PositionText#read(String)
     */
    public static GeoPosition parse(String text) {
        return PositionText.read(text).position();
    }

    @Override
    public String toString() {
        return plain(latitudeDeg) + ", " + plain(longitudeDeg);
    }

    static String plain(double degrees) {
        BigDecimal digits = new BigDecimal(Double.toString(degrees)).stripTrailingZeros();
        return digits.signum() == 0 ? "0" : digits.toPlainString();
    }
}
