package org.straddle.exchange.elements;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.sky.ElementSet;

/** The messages of one file, each turned into an element set as soon as it is complete. */
final class OmmMessages {

    private final List<ElementSet> sets = new ArrayList<>();
    private final Set<String> originators = new LinkedHashSet<>();

    /** @throws ReadException when the message lacks something or is not for SGP4 */
    void add(OmmMessage message) throws ReadException {
        sets.add(message.toElementSet());
        if (!message.originator().isEmpty()) {
            originators.add(message.originator());
        }
    }

    ElementFile toFile(SourceFile source, FileFormat format) {
        return new ElementFile(source, format, String.join(", ", originators), sets);
    }
}
