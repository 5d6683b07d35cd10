package org.straddle.store;

import java.util.Locale;
import java.util.stream.IntStream;

/** Name of a file that is kept as it came: its own name in a form fit for every system, with its extension. */
final class KeptName {

    private KeptName() {
    }

    /** The name and, after it, the same with 2, 3, … until there is one that is free. */
    static Iterable<String> candidates(String suggested) {
        String last = suggested.substring(Math.max(suggested.lastIndexOf('/'), suggested.lastIndexOf('\\')) + 1);
        String extension = extension(last);
        String stem = Slug.of(last.substring(0, last.length() - lengthOfExtension(last)), "file");
        return () -> IntStream.range(1, 1000).mapToObj(i -> stem + (i == 1 ? "" : "-" + i) + extension).iterator();
    }

    /** The extension with its dot, lower-case letters and digits; empty when there is none that could be one. */
    static String extension(String name) {
        return name.substring(name.length() - lengthOfExtension(name)).toLowerCase(Locale.ROOT);
    }

    private static int lengthOfExtension(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 && name.substring(dot + 1).matches("[A-Za-z0-9]{1,8}") ? name.length() - dot : 0;
    }
}
