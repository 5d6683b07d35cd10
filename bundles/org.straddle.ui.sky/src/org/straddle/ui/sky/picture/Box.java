package org.straddle.ui.sky.picture;

import org.straddle.drawing.Frame;

/** A part of a picture, whole pixels. */
public record Box(int x, int y, int width, int height) {

    public boolean contains(int pointX, int pointY) {
        return pointX >= x && pointY >= y && pointX < x + width && pointY < y + height;
    }

    boolean meets(Box other) {
        return x < other.x + other.width && other.x < x + width && y < other.y + other.height && other.y < y + height;
    }

    Frame frame() {
        return new Frame(x, y, x + width, y + height);
    }
}
