package org.straddle.store;

import java.io.IOException;

/** What a save does to one file of the event. */
sealed interface Change {

    /** Name relative to the event folder. */
    String name();

    /** New bytes for a file, old or new. */
    record Put(String name, byte[] bytes) implements Change {
    }

    /** The bytes of a file of another event folder, such as a photo when an event is saved to another folder. */
    record Copy(String name, Place from) implements Change {
    }

    record Delete(String name) implements Change {
    }

    /** Brings the new content to a place of its own; a deletion has none. */
    static void stage(Change change, Place place, FileSteps steps) throws IOException {
        if (change instanceof Put put) {
            steps.write(place, put.bytes());
        } else if (change instanceof Copy copy) {
            steps.copy(copy.from(), place);
        }
    }
}
