package org.straddle.architecture;

import java.util.List;
import java.util.Set;

/**
 * A place in the code that asks a catalogue for a text.
 *
 * @param where     file and line
 * @param catalogue file of the texts, as {@code org.straddle.cli/messages}
 * @param keys      the keys that are written out there
 * @param prefixes  beginnings of keys that the code completes
 * @param constants whether the key is that of a constant of an enum
 * @param arguments names of the arguments; null where they cannot be read from the code
 */
record TextCall(String where, String catalogue, List<String> keys, List<String> prefixes, boolean constants,
        Set<String> arguments) {
}
