package org.straddle.ui.map;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.atlas.layer.UserLayer;
import org.straddle.atlas.plane.Projector;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.MapLayers;
import org.straddle.exchange.MapReader;

/**
 * The map files in an event's folder of layers. What was read once is kept until the file changes. One thread at a
 * time.
 */
final class LayerFiles {

    /** What came of a folder: layers that could be read, and what there is to say about those that could not. */
    record Answer(List<UserLayer.Laid> layers, Map<String, String> refused) {
    }

    private record Known(FileTime modified, long size, UserLayer layer) {
    }

    private final Map<Path, Known> known = new HashMap<>();

    /** @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled */
    synchronized Answer read(Path folder, Projector projector, IProgressMonitor monitor) {
        List<UserLayer.Laid> layers = new ArrayList<>();
        Map<String, String> refused = new HashMap<>();
        List<Path> files;
        try {
            files = MapLayers.in(folder);
        } catch (IOException e) {
            refused.put(folder.getFileName().toString(), "The folder of layers cannot be read (" + e.getMessage() + ").");
            return new Answer(layers, refused);
        }
        known.keySet().retainAll(files);
        SubMonitor progress = SubMonitor.convert(monitor, "Map layers", 2 * files.size());
        for (Path file : files) {
            progress.subTask(file.getFileName().toString());
            try {
                UserLayer layer = layer(file, progress.split(1));
                layers.add(layer.lay(projector, progress.split(1)));
            } catch (IOException e) {
                refused.put(file.getFileName().toString(), e.getMessage());
            }
        }
        return new Answer(layers, refused);
    }

    private UserLayer layer(Path file, IProgressMonitor monitor) throws IOException {
        FileTime modified = Files.getLastModifiedTime(file);
        long size = Files.size(file);
        Known before = known.get(file);
        if (before != null && before.modified.equals(modified) && before.size == size) {
            return before.layer;
        }
        UserLayer layer = UserLayer.of(MapReader.read(file, CoordinateOrder.OF_THE_FORMAT, monitor),
                UserLayer.roleOf(file.getFileName().toString()));
        known.put(file, new Known(modified, size, layer));
        return layer;
    }
}
