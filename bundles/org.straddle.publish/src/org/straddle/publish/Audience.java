package org.straddle.publish;

/** Whom a sheet is for. Each has a folder of its own, so that no careless upload takes the wrong one along. */
public enum Audience {

    /** Everybody: nothing of people but call signs, nothing of places but squares. */
    PUBLIC("public"),

    /** One team: names, telephone numbers of relatives, places. */
    PRIVATE("private");

    private final String folder;

    Audience(String folder) {
        this.folder = folder;
    }

    /** Name of its folder within a publication. */
    public String folder() {
        return folder;
    }
}
