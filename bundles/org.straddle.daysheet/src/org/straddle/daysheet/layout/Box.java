package org.straddle.daysheet.layout;

/** A rectangle on the canvas, pixels; y grows downwards. */
public record Box(int x, int y, int width, int height) {

    /** From one x to another; never narrower than 0. */
    public static Box between(int left, int right, int y, int height) {
        return new Box(left, y, Math.max(0, right - left), height);
    }

    public int right() {
        return x + width;
    }

    public int bottom() {
        return y + height;
    }

    public int middleX() {
        return x + width / 2;
    }

    public int middleY() {
        return y + height / 2;
    }

    public boolean isEmpty() {
        return width <= 0 || height <= 0;
    }

    public boolean contains(int px, int py) {
        return px >= x && px < right() && py >= y && py < bottom();
    }

    public boolean overlaps(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    /** What both cover; may be empty. */
    public Box common(Box other) {
        int left = Math.max(x, other.x);
        int top = Math.max(y, other.y);
        return new Box(left, top, Math.max(0, Math.min(right(), other.right()) - left),
                Math.max(0, Math.min(bottom(), other.bottom()) - top));
    }

    /** Smaller by this much at each side. */
    public Box inset(int horizontal, int vertical) {
        return new Box(x + horizontal, y + vertical, Math.max(0, width - 2 * horizontal),
                Math.max(0, height - 2 * vertical));
    }
}
