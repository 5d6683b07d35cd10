package org.straddle.ui.sky.picture;

/** How large words come out, whole pixels. */
record Size(int width, int height) {
}
