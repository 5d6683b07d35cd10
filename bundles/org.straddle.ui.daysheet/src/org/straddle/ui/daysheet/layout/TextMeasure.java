package org.straddle.ui.daysheet.layout;

/** How much room text takes, pixels. */
public interface TextMeasure {

    int width(String text, Face face);

    int height(Face face);
}
