package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.exchange.elements.ElementFile;
import org.straddle.exchange.elements.ElementImport;
import org.straddle.exchange.elements.SkyFiles;
import org.straddle.model.Site;
import org.straddle.publish.Publication;
import org.straddle.publish.PublicationSettings;
import org.straddle.sky.ElementSet;
import org.straddle.ui.session.Computed;
import org.straddle.ui.things.ThingActions;

/** What the window does to files: the event's own, imported ones, published ones. */
class FilesTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @Test
    void aDeletedSiteLosesItsFileWithTheNextSaveAndUndoBringsItBack() throws IOException {
        Site idle = WINDOW.ask(() -> WINDOW.session().event().getSites().stream().filter(site -> WINDOW.session().event()
                .getPlan().getStops().stream().noneMatch(stop -> stop.getSite() == site)).findFirst().orElseThrow());
        Set<String> before = WINDOW.files().keySet();
        WINDOW.ui(() -> ThingActions.delete(null, WINDOW.session(), List.of(idle)));
        assertEquals(before, WINDOW.files().keySet(), "nothing happens on the disk before the save");
        WINDOW.save();
        Set<String> gone = new TreeSet<>(before);
        gone.removeAll(WINDOW.files().keySet());
        assertEquals(1, gone.size(), gone.toString());
        assertTrue(gone.iterator().next().startsWith("sites/"), gone.toString());

        WINDOW.ui(() -> WINDOW.session().undo());
        WINDOW.save();
        assertEquals(before, WINDOW.files().keySet());
    }

    @Test
    void anImportedFileOfElementSetsIsOneStepAndComesWithTheNextSave() throws IOException {
        List<String> lines = Files.readAllLines(WINDOW.event().resolve("elements/demo.tle"));
        ElementSet known = ElementSet.ofTle("", lines.get(1), lines.get(2));
        Path stranger = WINDOW.beside("stranger.tle");
        Files.write(stranger, List.of("Wren-7 (demo)", renumbered(lines.get(1)), renumbered(lines.get(2))));
        Set<String> files = WINDOW.files().keySet();
        List<ElementFile> read = SkyFiles.read(List.of(stranger), new NullProgressMonitor()).elements();
        int birds = WINDOW.ask(() -> WINDOW.session().event().getBirds().size());

        WINDOW.ui(() -> {
            try {
                ElementImport chosen = ElementImport.into(WINDOW.session().event(), read, number -> true);
                assertTrue(WINDOW.session().execute(chosen.command(WINDOW.session().editingDomain(),
                        WINDOW.session().folder(), Instant.parse("2027-06-01T00:00:00Z"))));
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
        assertEquals(birds + 1, WINDOW.ask(() -> WINDOW.session().event().getBirds().size()));
        assertEquals(known.epoch(), WINDOW.ask(() -> WINDOW.session().event().getBirds().get(birds).getElementSets()
                .get(0).getEpoch()));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(birds, WINDOW.ask(() -> WINDOW.session().event().getBirds().size()));
        WINDOW.save();
        assertEquals(files, WINDOW.files().keySet(), "what was taken back leaves no file");

        WINDOW.ui(() -> WINDOW.session().redo());
        WINDOW.save();
        assertTrue(WINDOW.files().keySet().contains("elements/stranger.tle"), WINDOW.files().keySet().toString());
        WINDOW.ui(() -> WINDOW.session().undo());
        WINDOW.save();
    }

    /** The line of another object: its number in columns 3 to 7, the checksum (digits, and 1 for minus) in 69. */
    private static String renumbered(String line) {
        String body = line.substring(0, 2) + "99907" + line.substring(7, 68);
        int sum = body.chars().map(c -> Character.isDigit(c) ? c - '0' : c == '-' ? 1 : 0).sum();
        return body + sum % 10;
    }

    @Test
    void whatTheWindowComputedIsPublishedIntoAFolder() throws IOException {
        WINDOW.computed();
        Computed computed = WINDOW.ask(() -> WINDOW.session().computed().orElseThrow());
        Path folder = WINDOW.beside("published");
        List<Path> written = Publication.of(computed.outlook(), computed.findings(),
                new PublicationSettings(1, Instant.parse("2027-06-01T00:00:00Z"))).prepare(folder).putInPlace();
        int teams = WINDOW.ask(() -> WINDOW.session().event().getTeams().size());
        assertTrue(written.size() > teams, written.toString());
        for (Path file : written) {
            assertTrue(Files.size(file) > 0, file.toString());
        }
        assertEquals(1, written.stream().filter(file -> file.getFileName().toString().equals("announcement.html"))
                .count(), written.toString());
    }
}
