package org.straddle.store;

import java.nio.file.Path;

/**
 * Where a file or folder of an event lies, or would lie. Only {@link EventTree} turns it into one.
 *
 * @param name relative to the event's folder, with {@code /}; empty for that folder
 */
record Place(EventTree tree, String name) {

    boolean isRoot() {
        return name.isEmpty();
    }

    /** The folder around it. */
    Place parent() {
        return new Place(tree, name.substring(0, Math.max(0, name.lastIndexOf('/'))));
    }

    Place resolve(String inner) {
        return tree.at(isRoot() ? inner : name + "/" + inner);
    }

    /** For messages, and for comparing; not for opening. */
    Path path() {
        return tree.root().resolve(name);
    }
}
