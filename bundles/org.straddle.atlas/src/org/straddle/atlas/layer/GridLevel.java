package org.straddle.atlas.layer;

/** How finely a map is divided by locators. */
public enum GridLevel {
    /** Two characters, 20° by 10°. */
    FIELD(2, 20, 10, 1),
    /** Four characters, 2° by 1°. */
    SQUARE(4, 2, 1, 0.25),
    /** Six characters, 5′ by 2.5′. */
    SUBSQUARE(6, 1 / 12.0, 1 / 24.0, 1 / 24.0);

    private final int characters;
    private final double widthDeg;
    private final double heightDeg;
    private final double stepDeg;

    GridLevel(int characters, double widthDeg, double heightDeg, double stepDeg) {
        this.characters = characters;
        this.widthDeg = widthDeg;
        this.heightDeg = heightDeg;
        this.stepDeg = stepDeg;
    }

    /** Length of its locators. */
    public int characters() {
        return characters;
    }

    public double widthDeg() {
        return widthDeg;
    }

    public double heightDeg() {
        return heightDeg;
    }

    /** Between positions along an edge: parallels are curves on the plane. */
    double stepDeg() {
        return stepDeg;
    }
}
