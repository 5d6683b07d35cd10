package org.straddle.ui.daysheet.paint;

/** How a line is drawn. */
enum Stroke {
    SOLID, DASHED, DOTTED
}
