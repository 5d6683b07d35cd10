package org.straddle.exchange.sites;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

import org.straddle.words.Catalogue;

/** What a column of a table can say of a site. */
public enum SiteField {

    NAME("name", "sitename", "site", "title", "label", "waypoint", "place", "placename"),
    /** Latitude and longitude in one, in any form that people write, or a locator. */
    POSITION("position", "coordinates", "coordinate", "coords", "coord", "latlon", "latlong", "latlng", "gps",
            "locator", "gridlocator", "maidenhead", "wgs84", "location", "grid"),
    LATITUDE("latitude", "lat", "latitudedeg", "latdeg", "latdd", "y"),
    LONGITUDE("longitude", "lon", "lng", "long", "longitudedeg", "londeg", "longdeg", "londd", "x"),
    ALTITUDE("altitude", "altitudem", "alt", "ele", "elevation", "elevationm", "height", "heightm"),
    /** Radius that holds 95 % of fixes. */
    ERROR("error", "errorm", "markerror", "markerrorm", "accuracy", "accuracym", "r95", "r95m"),
    KIND("kind", "sitekind", "type"),
    SQUARES("squares", "square", "grids", "gridsquares", "gridsquare", "grid"),
    /** The identity that an export of the same event wrote. */
    ID("id", "uuid", "siteid");

    private static final Catalogue TEXTS = Catalogue.of(SiteField.class);

    private final Set<String> usualNames;

    SiteField(String... usualNames) {
        this.usualNames = Set.of(usualNames);
    }

    /** For headings and lists. */
    public String label() {
        return TEXTS.text(this);
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
        throw new IllegalArgumentException(TEXTS.text("siteField.unknown", "word", word,
                "known", Arrays.stream(values()).map(SiteField::word).toList()));
    }

    /** Whether people call a column so that says this, whatever case, blanks and marks they write it with. */
    boolean isUsuallyCalled(String column) {
        return usualNames.contains(column.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", ""));
    }
}
