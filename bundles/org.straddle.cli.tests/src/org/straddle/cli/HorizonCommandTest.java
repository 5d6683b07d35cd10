package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.store.EventFolder;

class HorizonCommandTest {

    @TempDir
    private Path folder;
    private Path event;

    @BeforeEach
    void anEventWithASite() throws IOException {
        Event made = Fresh.event("Demo");
        Site site = Fresh.site();
        site.setName("Cairn");
        site.setLatitudeDeg(0.05);
        site.setLongitudeDeg(0.05);
        made.getSites().add(site);
        event = folder.resolve("event");
        EventFolder.create(event, made).close();
    }

    /** A step of 500 m, 3 km east of the mark: atan(498 / 2960) is about 9.5°. */
    private Path raster() throws IOException {
        StringBuilder text = new StringBuilder("ncols 100\nnrows 100\nxllcorner 0\nyllcorner 0\ncellsize 0.001\n");
        for (int row = 0; row < 100; row++) {
            for (int column = 0; column < 100; column++) {
                text.append(column > 76 ? "500 " : "0 ");
            }
        }
        return Files.writeString(folder.resolve("dem.asc"), text);
    }

    private Site stored() throws IOException {
        try (EventFolder opened = EventFolder.openReadOnly(event)) {
            return opened.event().getSites().get(0);
        }
    }

    @Test
    void computesStoresAndTells() throws IOException {
        Path raster = raster();
        Console dry = Console.run("horizon", event, "--site", "cairn", "--raster", raster, "--wgs84", "--far", "5", "--dry-run");
        assertEquals(0, dry.code(), dry.err());
        assertTrue(dry.out().contains("Nothing was changed"), dry.out());
        assertEquals(0, stored().getHorizon().size());
        Console run = Console.run("horizon", event, "--site", "Cairn", "--raster", raster, "--wgs84", "--far", "5");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("refraction k = 0.13"), run.out());
        Site site = stored();
        assertTrue(site.getHorizon().stream().anyMatch(point -> Math.abs(point.getAzimuthDeg() - 90) < 2
                && Math.abs(point.getElevationDeg() - 9.6) < 0.3), run.out());
        assertTrue(site.getHorizonOrigin().startsWith("Computed from dem.asc"), site.getHorizonOrigin());
    }

    @Test
    void aRasterThatDoesNotSayWhereItLiesChangesNothing() throws IOException {
        Console run = Console.run("horizon", event, "--site", "Cairn", "--raster", raster());
        assertEquals(2, run.code());
        assertTrue(run.err().contains("coordinate reference system") && run.err().contains(".prj"), run.err());
        assertEquals(0, stored().getHorizon().size());
        assertEquals(2, Console.run("horizon", event, "--site", "Cairn", "--raster", raster(), "--k", "7").code());
    }
}
