package org.straddle.drawing;

/** How large words come out, pixels. May be asked on any thread. */
public interface Lettering {

    double width(String text, Face face);

    double height(Face face);
}
