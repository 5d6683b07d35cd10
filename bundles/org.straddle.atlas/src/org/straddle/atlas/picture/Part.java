package org.straddle.atlas.picture;

import org.straddle.words.Catalogue;

/** What of a map can be shown or hidden, besides the layers of the user. */
public enum Part {
    BASE_MAP, FIELDS, SQUARES, SUBSQUARES, DEMAND, REGIONS, REACH, DRIVES, BASES, SITES, TEAMS, FINDINGS, NAMES,
    /** What the line scout found. */
    PLACES;

    private static final Catalogue TEXTS = Catalogue.of(Part.class);

    public String label() {
        return TEXTS.text(this);
    }
}
