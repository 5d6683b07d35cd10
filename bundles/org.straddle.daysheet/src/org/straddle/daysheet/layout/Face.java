package org.straddle.daysheet.layout;

/** The type that the sheet is set in. */
public enum Face {
    PLAIN, SMALL, BOLD
}
