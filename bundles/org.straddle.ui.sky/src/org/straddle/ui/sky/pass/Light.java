package org.straddle.ui.sky.pass;

import org.straddle.words.Catalogue;

/** How a piece of a pass shows itself to the site. */
public enum Light {
    /** Above the mask, and the whole sun shines on the bird. */
    LIT,
    /** Above the mask, in the Earth's shadow; half-shadow counts as shadow. */
    SHADED,
    /** Behind what the mask says is in the way. */
    HIDDEN;

    private static final Catalogue TEXTS = Catalogue.of(Light.class);

    public String words() {
        return TEXTS.text(this);
    }
}
