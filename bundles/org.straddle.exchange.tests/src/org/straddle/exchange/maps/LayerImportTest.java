package org.straddle.exchange.maps;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.ReadException;
import org.straddle.model.Fresh;
import org.straddle.model.Layer;
import org.straddle.model.Site;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.store.EventFolder;

class LayerImportTest {

    @TempDir
    private Path temp;

    private LayerImport read(String text, CoordinateOrder order) throws IOException {
        return LayerImport.read(Files.writeString(temp.resolve("Moor roads.geojson"), text), order, null);
    }

    @Test
    void theFileIsKeptUntouchedAndComesWithOneStep() throws IOException {
        String text = "{\"type\":\"LineString\",\r\n\"coordinates\":[[-20,64],[-20,65]]}";
        AdapterFactoryEditingDomain domain =
                new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
        try (EventFolder folder = EventFolder.create(temp.resolve("event"), Fresh.event("Demo"))) {
            LayerImport found = read(text, CoordinateOrder.OF_THE_FORMAT);
            assertFalse(found.swapOffered(folder.event()));
            domain.getCommandStack().execute(found.command(domain, folder, LayerRole.ROADS, " Moor "));
            Layer layer = folder.event().getLayers().get(0);
            assertEquals("Moor road true false", layer.getTitle() + " " + layer.getRole() + " " + layer.isVisible() + " " + layer.isSwapped());
            assertEquals(1, LayerSource.of(folder).get(0).read(null).features().size(), "can be read before it is saved");
            domain.getCommandStack().undo();
            folder.save();
            assertFalse(Files.exists(folder.path().resolve("layers")));
            domain.getCommandStack().redo();
            folder.save();
            assertArrayEquals(text.getBytes(), Files.readAllBytes(folder.path().resolve("layers").resolve("moor-roads.geojson")));
        }
    }

    @Test
    void theSwapIsOffered() throws IOException {
        var event = Fresh.event("Demo");
        Site site = Fresh.site();
        site.setLatitudeDeg(64);
        site.setLongitudeDeg(-20);
        event.getSites().add(site);
        String swapped = "{\"type\":\"LineString\",\"coordinates\":[[64,-20],[65,-20]]}";
        assertTrue(read(swapped, CoordinateOrder.OF_THE_FORMAT).swapOffered(event));
        assertFalse(read(swapped, CoordinateOrder.SWAPPED).swapOffered(event));
    }

    @Test
    void tooLargeForAnEvent() throws IOException {
        Path large = temp.resolve("large.geojson");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(LayerImport.LARGEST_BYTES + 1L);
        }
        ReadException e = assertThrows(ReadException.class, () -> LayerImport.read(large, CoordinateOrder.OF_THE_FORMAT, null));
        assertTrue(e.getMessage().contains("64 MB") && e.whatToDo().contains("layers"), e.getMessage());
    }
}
