package org.straddle.store;

import java.nio.file.Path;

/** Where the program keeps what belongs to the user and to no event. May not exist yet. */
public final class UserFolder {

    /** Names another folder, for tests and for portable installations. */
    public static final String PROPERTY = "straddle.user";

    private UserFolder() {
    }

    /** As the XDG Base Directory Specification 0.8 says for state. */
    public static Path path() {
        String chosen = System.getProperty(PROPERTY);
        if (chosen != null && !chosen.isBlank()) {
            return Path.of(chosen);
        }
        String state = System.getenv("XDG_STATE_HOME");
        Path base = state != null && Path.of(state).isAbsolute() ? Path.of(state)
                : Path.of(System.getProperty("user.home", "."), ".local", "state");
        return base.resolve("straddle");
    }
}
