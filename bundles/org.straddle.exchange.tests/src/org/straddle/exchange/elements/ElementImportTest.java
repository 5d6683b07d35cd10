package org.straddle.exchange.elements;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.exchange.elements.Published.KVN_23581;
import static org.straddle.exchange.elements.Published.L1_00005;
import static org.straddle.exchange.elements.Published.L1_23581;
import static org.straddle.exchange.elements.Published.L2_00005;
import static org.straddle.exchange.elements.Published.L2_23581;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.exchange.ReadException;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.StoredElements;
import org.straddle.sky.ElementSet;
import org.straddle.store.EventFolder;

class ElementImportTest {

    private static final Instant NOW = Instant.parse("2026-06-20T10:02:00Z");
    private static final String SET_00005 = L1_00005 + "\n" + L2_00005 + "\n";
    private static final String SET_23581 = L1_23581 + "\n" + L2_23581 + "\n";

    @TempDir
    Path temp;
    private EventFolder folder;
    private Event event;
    private Bird bird;
    private EditingDomain domain;

    @BeforeEach
    void openEvent() throws IOException {
        event = Fresh.event("Midsummer");
        bird = Fresh.bird();
        bird.setName("00005");
        bird.setCatalogueNumber(5);
        event.getBirds().add(bird);
        folder = EventFolder.create(temp.resolve("event"), event);
        domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack(),
                folder.resourceSet());
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(temp.resolve(name), text);
    }

    private ElementImport imported(boolean addBirds, Path... files) throws IOException {
        return ElementImport.into(event, SkyFiles.read(List.of(files), new NullProgressMonitor()).elements(),
                number -> addBirds);
    }

    private void execute(ElementImport result) throws IOException {
        Command command = result.command(domain, folder, NOW);
        assertTrue(command.canExecute());
        domain.getCommandStack().execute(command);
    }

    private static String later(int days) {
        ElementSet set = ElementSet.ofTle("", L1_00005, L2_00005);
        ElementSet moved = new ElementSet("", 5, "1958-002B", set.epoch().plusSeconds(86_400L * days), set.meanMotionRevPerDay(),
                set.eccentricity(), set.inclinationDeg(), set.raanDeg(), set.argumentOfPerigeeDeg(), set.meanAnomalyDeg(),
                set.bstar(), set.meanMotionDot(), set.meanMotionDdot(), 1, 1);
        return String.join("\n", moved.toTleLines()) + "\n";
    }

    @Test
    void oneStepForwardAndBack() throws IOException {
        Path week = file("Week.TLE", "A\r\n" + SET_00005 + SET_23581);
        ElementImport result = imported(false, week);
        assertEquals("1 element set for 1 bird. 1 element set belongs to a bird that the event does not have.", result.summary());
        assertEquals(23581, result.unmatched().get(0).catalogueNumber());
        assertTrue(bird.getElementSets().isEmpty());
        execute(result);
        BirdElements stored = bird.getElementSets().get(0);
        assertEquals(ElementSet.ofTle("A", L1_00005, L2_00005), StoredElements.toElementSet(stored));
        assertEquals("week.tle " + NOW, stored.getFile() + " " + stored.getImportedAt());
        domain.getCommandStack().undo();
        assertTrue(bird.getElementSets().isEmpty());
        folder.save();
        assertFalse(Files.exists(folder.path().resolve("elements")));
        domain.getCommandStack().redo();
        folder.save();
        assertArrayEquals(Files.readAllBytes(week), Files.readAllBytes(folder.path().resolve("elements").resolve("week.tle")));
        folder.close();
        try (EventFolder again = EventFolder.open(folder.path())) {
            assertEquals(ElementSet.ofTle("A", L1_00005, L2_00005),
                    StoredElements.toElementSet(again.event().getBirds().get(0).getElementSets().get(0)));
        }
    }

    @Test
    void knownSetsAreLeftOut() throws IOException {
        Path week = file("week.tle", SET_00005);
        execute(imported(false, week));
        ElementImport again = imported(false, week, file("copy.tle", SET_00005));
        assertTrue(again.isEmpty());
        assertEquals(2, again.known().size());
        assertTrue(again.known().get(0).same());
        assertFalse(again.command(domain, folder, NOW).canExecute());
        bird.getElementSets().get(0).setInclinationDeg(1);
        assertTrue(imported(false, week).summary().contains("with another orbit at the same epoch"));
    }

    @Test
    void theSameSetInBothFormsIsOne() throws IOException {
        ElementImport result = imported(true, file("a.tle", SET_23581), file("a.omm", KVN_23581));
        assertEquals(1, result.additions().size());
        assertTrue(result.known().get(0).same());
    }

    @Test
    void setsAreKeptByEpoch() throws IOException {
        execute(imported(false, file("a.tle", later(3) + later(1))));
        execute(imported(false, file("b.tle", later(2) + later(4) + SET_00005)));
        List<Instant> epochs = bird.getElementSets().stream().map(BirdElements::getEpoch).toList();
        assertEquals(epochs.stream().sorted().toList(), epochs);
        assertEquals(5, epochs.size());
        domain.getCommandStack().undo();
        assertEquals(2, bird.getElementSets().size());
    }

    @Test
    void unknownBirdsAreAddedOnDemand() throws IOException {
        ElementImport result = imported(true, file("a.omm", KVN_23581 + KVN_23581.replace("064T", "065T")));
        assertEquals("2 element sets for 1 bird (1 new).", result.summary());
        execute(result);
        Bird added = event.getBirds().get(1);
        assertEquals("23581 23581 " + BirdState.UNKNOWN + " 2",
                added.getName() + " " + added.getCatalogueNumber() + " " + added.getState() + " " + added.getElementSets().size());
        assertEquals("DEMO/A", added.getElementSets().get(0).getOrigin());
        domain.getCommandStack().undo();
        assertEquals(List.of(bird), event.getBirds());
    }

    @Test
    void oneBadFileStopsAll() throws IOException {
        Path bad = file("bad.tle", SET_00005 + SET_23581.replace("9250", "9251"));
        ReadException e = assertThrows(ReadException.class, () -> imported(false, file("good.tle", SET_00005), bad));
        assertEquals("bad.tle 3", e.file() + " " + e.line());
        folder.save();
        assertFalse(Files.exists(folder.path().resolve("elements")));
    }

    @Test
    void cancelStops() throws IOException {
        NullProgressMonitor monitor = new NullProgressMonitor();
        monitor.setCanceled(true);
        List<Path> files = List.of(file("a.tle", SET_00005));
        assertThrows(OperationCanceledException.class, () -> SkyFiles.read(files, monitor));
    }
}
