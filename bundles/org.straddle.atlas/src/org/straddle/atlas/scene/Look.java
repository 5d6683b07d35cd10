package org.straddle.atlas.scene;

import java.util.function.Function;

import org.straddle.model.Site;

/**
 * What later parts of the program know of the things on a map.
 *
 * @param attention what the checks found about a site
 */
public record Look(Function<Site, Attention> attention) {

    /** Nothing found. */
    public static final Look PLAIN = new Look(site -> Attention.NONE);
}
