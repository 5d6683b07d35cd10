package org.straddle.safety;

/**
 * Class of high-visibility clothing for people on foot beside traffic of a speed: 3 above 60 km/h, 2 up to 60, 1 up to
 * 30 (ISO 20471, after secondary pages on the standard). Bad light or a busy road asks for a higher class.
 */
public enum HighVisibility {
    CLASS_1(1), CLASS_2(2), CLASS_3(3);

    private final int number;

    HighVisibility(int number) {
        this.number = number;
    }

    /** The class as the standard numbers it. */
    public int number() {
        return number;
    }

    /** @param speedKmh speed of the traffic, 0 or more; a speed that is not known asks for the highest class */
    public static HighVisibility atKmh(double speedKmh) {
        if (speedKmh <= 30) {
            return CLASS_1;
        }
        return speedKmh <= 60 ? CLASS_2 : CLASS_3;
    }
}
