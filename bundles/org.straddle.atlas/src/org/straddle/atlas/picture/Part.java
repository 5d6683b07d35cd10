package org.straddle.atlas.picture;

/** What of a map can be shown or hidden, besides the layers of the user. */
public enum Part {
    BASE_MAP("Base map"), FIELDS("Fields"), SQUARES("Squares"), SUBSQUARES("Subsquares"), DEMAND("Demand"),
    REGIONS("Where chasers live"),
    REACH("Reach of the pass"), LEGS("Drives"), BASES("Bases"), SITES("Sites"),
    TEAMS("Team marks"), FINDINGS("Findings"), NAMES("Names of sites"),
    /** What the line scout found. */
    PLACES("Places found");

    private final String label;

    Part(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
