package org.straddle.exchange.maps;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.EventPlace;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Layer;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.words.Catalogue;

/**
 * A file with roads, power lines or other things that was read and found good, to become a layer of an event. The event
 * keeps the file untouched. Nothing changes until the {@link #command} is executed, and that is one step for undo.
 */
public final class LayerImport {

    private static final Catalogue TEXTS = Catalogue.of(LayerImport.class);

    /** The event keeps the file in memory until it is saved. */
    public static final int LARGEST_BYTES = 64 << 20;

    private final String name;
    private final byte[] bytes;
    private final CoordinateOrder order;
    private final MapFile map;

    private LayerImport(String name, byte[] bytes, CoordinateOrder order, MapFile map) {
        this.name = name;
        this.bytes = bytes;
        this.order = order;
        this.map = map;
    }

    /**
     * Reads a file; long work, without the event, for any thread. What is understood and what is kept are the same
     * bytes.
     *
     * @throws ReadException when the file is not there, unknown, damaged or too large, or holds nothing; its cause is
     *                       a {@link CoordinateOutOfRange} when another order may help
     */
    public static LayerImport read(Path path, CoordinateOrder order, IProgressMonitor monitor) throws ReadException {
        MapSource source = MapSource.of(path, MapSource.RIGHT_FILE);
        try {
            if (Files.size(path) > LARGEST_BYTES) {
                throw source.refuse(0, TEXTS.text("layerImport.fileLargerThan", "largestBytes", (LARGEST_BYTES >> 20)),
                        TEXTS.text("layerImport.cutRegionEvent"));
            }
            byte[] bytes = Files.readAllBytes(path);
            return new LayerImport(source.name(), bytes, order, MapReader.read(MapSource.of(source.name(), bytes), order, monitor));
        } catch (ReadException e) {
            throw e;
        } catch (IOException e) {
            throw MapSource.unreadable(source.name(), e);
        }
    }

    /** What was read, with remarks on what was left out. */
    public MapFile map() {
        return map;
    }

    /** Whether latitude and longitude seem to have changed places. */
    public boolean swapOffered(Event event) {
        return order == CoordinateOrder.OF_THE_FORMAT && EventPlace.of(event).filter(place -> SwapHint.seemsSwapped(map, place)).isPresent();
    }

    /**
     * The one step that adds the layer above all others. The file goes to the layers folder with the next save.
     *
     * @param title empty for the name of the file
     */
    public Command command(EditingDomain domain, EventFolder folder, LayerRole role, String title) throws EventFolderException {
        Layer layer = Fresh.layer();
        layer.setFile(folder.addLayer(name, bytes));
        layer.setTitle(Objects.requireNonNullElse(title, "").isBlank() ? null : title.strip());
        layer.setRole(role.word().isEmpty() ? null : role.word());
        layer.setSwapped(order == CoordinateOrder.SWAPPED);
        CompoundCommand command = new CompoundCommand(TEXTS.text("layerImport.addLayer",
                "title", layer.getTitle() == null ? layer.getFile() : layer.getTitle()));
        command.append(AddCommand.create(domain, folder.event(), Literals.EVENT__LAYERS, layer));
        return command;
    }
}
