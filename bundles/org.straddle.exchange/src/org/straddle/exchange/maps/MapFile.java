package org.straddle.exchange.maps;

import java.util.List;

import org.straddle.exchange.formats.FileFormat;
import org.straddle.grid.MapFeature;

/**
 * A file of roads and other things on a map that was read as a whole.
 *
 * @param name     of the file
 * @param features in the order of the file, at least one
 * @param remarks  sentences on what was left out or taken otherwise than written, with lines; at most
 *                 {@link #MOST_REMARKS} and one that counts the rest
 */
public record MapFile(String name, FileFormat format, List<MapFeature> features, List<String> remarks) {

    public static final int MOST_REMARKS = 20;

    public MapFile {
        features = List.copyOf(features);
        remarks = List.copyOf(remarks);
    }
}
