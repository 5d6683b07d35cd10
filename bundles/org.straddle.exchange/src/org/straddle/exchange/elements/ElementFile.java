package org.straddle.exchange.elements;

import java.util.List;

import org.straddle.exchange.SourceFile;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.sky.ElementSet;

/**
 * A file of element sets that was read as a whole.
 *
 * @param origin originators that the file names, separated by commas; may be empty
 * @param sets   in the order of the file, at least one
 */
public record ElementFile(SourceFile source, FileFormat format, String origin, List<ElementSet> sets) {

    public ElementFile {
        sets = List.copyOf(sets);
    }

    public String name() {
        return source.name();
    }
}
