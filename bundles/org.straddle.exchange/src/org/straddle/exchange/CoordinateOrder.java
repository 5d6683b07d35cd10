package org.straddle.exchange;

/** Which of two coordinates is taken for the latitude. */
public enum CoordinateOrder {
    /** As the format has it: longitude first in GeoJSON, by name in GPX. */
    OF_THE_FORMAT,
    /** The other way round, for files made by mistake. */
    SWAPPED
}
