package org.straddle.ui.sky.pass;

/** How a piece of a pass shows itself to the site. */
public enum Light {
    /** Above the mask, and the whole sun shines on the bird. */
    LIT("lit by the sun"),
    /** Above the mask, in the Earth's shadow; half-shadow counts as shadow. */
    SHADED("in the Earth's shadow"),
    /** Behind what the mask says is in the way. */
    HIDDEN("behind the mask");

    private final String words;

    Light(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
