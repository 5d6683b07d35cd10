package org.straddle.daysheet.paint;

/** How a line is drawn. */
public enum Stroke {
    SOLID, DASHED, DOTTED
}
