package org.straddle.exchange.sites;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What a column of a table can say of a site. */
public enum SiteField {

    NAME("name", "name", "sitename", "site", "title", "label", "waypoint", "place", "placename"),
    /** Latitude and longitude in one, in any form that people write, or a locator. */
    POSITION("position in any form", "position", "coordinates", "coordinate", "coords", "coord", "latlon", "latlong", "latlng", "gps",
            "locator", "gridlocator", "maidenhead", "wgs84", "location", "grid"),
    LATITUDE("latitude", "latitude", "lat", "latitudedeg", "latdeg", "latdd", "y"),
    LONGITUDE("longitude", "longitude", "lon", "lng", "long", "longitudedeg", "londeg", "longdeg", "londd", "x"),
    ALTITUDE("altitude, m", "altitude", "altitudem", "alt", "ele", "elevation", "elevationm", "height", "heightm"),
    /** Radius that holds 95 % of fixes. */
    ERROR("error of the mark, m", "error", "errorm", "markerror", "markerrorm", "accuracy", "accuracym", "r95", "r95m"),
    KIND("kind", "kind", "sitekind", "type"),
    SQUARES("squares", "squares", "square", "grids", "gridsquares", "gridsquare", "grid"),
    /** The identity that an export of the same event wrote. */
    ID("id", "id", "uuid", "siteid");

    private final String label;
    private final Set<String> usualNames;

    SiteField(String label, String... usualNames) {
        this.label = label;
        this.usualNames = Set.of(usualNames);
    }

    /** For headings and lists. */
    public String label() {
        return label;
    }

    /** The word by which the command line knows it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @throws IllegalArgumentException with a sentence for the user if there is no such field */
    public static SiteField parse(String word) {
        for (SiteField field : values()) {
            if (field.word().equalsIgnoreCase(word.strip())) {
                return field;
            }
        }
        throw new IllegalArgumentException("\"" + word + "\" is nothing that a site has. There are: "
                + Arrays.stream(values()).map(SiteField::word).collect(Collectors.joining(", ")) + ".");
    }

    /** Whether people call a column so that says this, whatever case, blanks and marks they write it with. */
    boolean isUsuallyCalled(String column) {
        return usualNames.contains(column.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", ""));
    }
}
