package org.straddle.exchange.maps;

/** Formats of files with roads and other things on a map. */
public enum MapFormat {
    /** GPX 1.1 (and 1.0): waypoints, routes and tracks. */
    GPX,
    /** RFC 7946. */
    GEOJSON
}
