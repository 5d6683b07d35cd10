package org.straddle.safety;

import java.util.Collection;

import org.straddle.model.Jurisdiction;

/**
 * Class of high-visibility clothing for people on foot beside traffic. ISO 20471 asks for class 3 above 60 km/h and
 * class 2 up to that (secondary pages on the standard); its class 1, up to 30 km/h, and that of ANSI/ISEA 107, for
 * people who do nothing but watch the traffic, are not for operators, who look at the sky with headphones on. Poor
 * light asks for class 3 at any speed (common practice, no source).
 */
public enum HighVisibility {
    CLASS_2(2), CLASS_3(3);

    private static final double CLASS_2_UP_TO_KMH = 60;

    private final int number;

    HighVisibility(int number) {
        this.number = number;
    }

    /** The class as the standard numbers it. */
    public int number() {
        return number;
    }

    /** @param speedKmh speed of the traffic, 0 or more; a speed or a light that is not known asks for the highest class */
    public static HighVisibility at(double speedKmh, Light light) {
        return speedKmh <= CLASS_2_UP_TO_KMH && !light.asksForMore() ? CLASS_2 : CLASS_3;
    }

    /**
     * The same where a country asks for more.
     *
     * @param ofCountry as {@link #ofCountries} says
     */
    public static HighVisibility at(double speedKmh, Light light, int ofCountry) {
        return ofCountry >= CLASS_3.number ? CLASS_3 : at(speedKmh, light);
    }

    /** The highest class that the rules of some countries ask for, as far as entered, 1 to 3; 0 where none was entered. */
    public static int ofCountries(Collection<Jurisdiction> countries) {
        return countries.stream().mapToInt(Jurisdiction::getClothingClass).filter(asked -> asked >= 1 && asked <= 3).max().orElse(0);
    }
}
