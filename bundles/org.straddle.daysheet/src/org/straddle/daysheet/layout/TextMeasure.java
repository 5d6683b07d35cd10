package org.straddle.daysheet.layout;

/** How much room text takes, pixels. */
public interface TextMeasure {

    int width(String text, Face face);

    int height(Face face);
}
