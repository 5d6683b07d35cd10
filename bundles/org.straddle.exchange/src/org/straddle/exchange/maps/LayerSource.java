package org.straddle.exchange.maps;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.model.Layer;
import org.straddle.store.EventFolder;
import org.straddle.store.KeptFile;
import org.straddle.words.Catalogue;

/**
 * One map of an event, to be read on any thread. Two are equal while reading them gives the same, so that what was
 * read may be kept by its source.
 *
 * @param id      of the {@link Layer}; empty for a file that somebody put into the layers folder by hand
 * @param title   what to call it; never empty
 * @param visible does the user want to see it on the map?
 */
public record LayerSource(Optional<String> id, String title, LayerRole role, boolean visible, CoordinateOrder order, KeptFile file) {

    private static final Catalogue TEXTS = Catalogue.of(LayerSource.class);

    public LayerSource {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(file, "file");
    }

    /**
     * All maps of an event, those at the bottom first: files put into the layers folder by hand, then the layers in
     * the order of the event. Call it on the thread that edits the event.
     *
     * @throws IOException when the layers folder cannot be read
     */
    public static List<LayerSource> of(EventFolder folder) throws IOException {
        List<LayerSource> layers = new ArrayList<>();
        Set<String> named = new HashSet<>();
        for (Layer layer : folder.event().getLayers()) {
            String file = Objects.toString(layer.getFile(), "");
            named.add(file);
            String title = Objects.toString(layer.getTitle(), "");
            layers.add(new LayerSource(Optional.of(layer.getId()), title.isBlank() ? named(file) : title, LayerRole.stored(layer.getRole()),
                    layer.isVisible(), layer.isSwapped() ? CoordinateOrder.SWAPPED : CoordinateOrder.OF_THE_FORMAT, folder.layer(file)));
        }
        List<LayerSource> byHand = new ArrayList<>();
        for (KeptFile found : folder.layers().files()) {
            String name = found.name();
            KeptFile file = folder.layer(name);
            if (MapLayers.isMap(name) && !named.contains(name) && file.exists()) {
                byHand.add(new LayerSource(Optional.empty(), name, LayerRole.BY_THEMSELVES, true, CoordinateOrder.OF_THE_FORMAT, file));
            }
        }
        byHand.addAll(layers);
        return byHand;
    }

    private static String named(String file) {
        return file.isBlank() ? TEXTS.text("layerSource.file") : file;
    }

    /**
     * Reads the map; long work.
     *
     * @param monitor may be null
     * @throws ReadException when the file is not there, unknown or damaged, or holds nothing; its cause is a
     *                       {@link CoordinateOutOfRange} when another order may help
     */
    public MapFile read(IProgressMonitor monitor) throws ReadException {
        return MapReader.read(MapSource.of(file), order, monitor);
    }
}
