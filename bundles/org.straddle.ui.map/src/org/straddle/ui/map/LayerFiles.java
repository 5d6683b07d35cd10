package org.straddle.ui.map;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.atlas.layer.UserLayer;
import org.straddle.atlas.plane.Projector;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.maps.LayerSource;
import org.straddle.words.Catalogue;

/** Reads the maps of an event for its map. What was read once is kept while its source is the same. */
final class LayerFiles {

    private static final Catalogue TEXTS = Catalogue.of(LayerFiles.class);

    /** What came of the maps: layers that could be read, and what there is to say about those that could not. */
    record Answer(List<UserLayer.Laid> layers, Map<String, String> refused) {
    }

    private final Map<LayerSource, UserLayer> known = new HashMap<>();

    /** The maps by the names they bear on the map; a second one of the same title gets a number. */
    static Map<String, LayerSource> named(List<LayerSource> sources) {
        Map<String, LayerSource> named = new LinkedHashMap<>();
        Set<String> titles = new HashSet<>();
        for (LayerSource source : sources) {
            String name = source.title();
            for (int number = 2; !titles.add(name); number++) {
                name = source.title() + " (" + number + ")";
            }
            named.put(name, source);
        }
        return named;
    }

    /** What is to be read, whether it is wanted on the map or not. */
    static Map<String, LayerSource> contents(Map<String, LayerSource> sources) {
        Map<String, LayerSource> contents = new LinkedHashMap<>();
        sources.forEach((name, source) -> contents.put(name, content(source)));
        return contents;
    }

    private static LayerSource content(LayerSource source) {
        return new LayerSource(source.id(), source.title(), source.role(), true, source.order(), source.file());
    }

    /** @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled */
    synchronized Answer read(Map<String, LayerSource> sources, Projector projector, IProgressMonitor monitor) {
        List<UserLayer.Laid> layers = new ArrayList<>();
        Map<String, String> refused = new HashMap<>();
        known.keySet().retainAll(contents(sources).values());
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("layerFiles.mapLayers"), 2 * sources.size());
        sources.forEach((name, source) -> {
            progress.subTask(name);
            try {
                layers.add(layer(name, source, progress.split(1)).lay(projector, progress.split(1)));
            } catch (ReadException e) {
                refused.put(name, e.getMessage());
            }
        });
        return new Answer(layers, refused);
    }

    private UserLayer layer(String name, LayerSource source, IProgressMonitor monitor) throws ReadException {
        UserLayer before = known.get(content(source));
        if (before != null && before.name().equals(name)) {
            return before;
        }
        UserLayer layer = UserLayer.of(source.read(monitor), name, source.role());
        known.put(content(source), layer);
        return layer;
    }
}
