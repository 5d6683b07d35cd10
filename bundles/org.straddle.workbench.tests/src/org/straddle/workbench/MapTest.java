package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.grid.Candidate;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.GridLine;
import org.straddle.grid.MapFeature;
import org.straddle.grid.RankedCandidate;
import org.straddle.grid.Square;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.ui.map.MapView;
import org.straddle.ui.places.PlaceBoard;
import org.straddle.ui.places.ShownPlace;

/** The map of the event in the window, worked by keys. */
class MapTest {

    private static final String MAP = "org.straddle.ui.map.view";

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @BeforeEach
    void theMapWithNothingSelected() throws IOException {
        WINDOW.afresh();
        WINDOW.ui(() -> DemoWindow.shown(MAP));
        key(SWT.ESC, 0);
        WINDOW.until("nothing is selected", () -> selected() == null);
    }

    /** Goes to the first site; a map that was opened just now has none yet. */
    private static Site first() {
        WINDOW.until("the sites are there", () -> {
            if (selected() == null) {
                tab();
            }
            return selected() != null;
        });
        return (Site) selected();
    }

    private static Canvas canvas() {
        return RunningWorkbench.below(DemoWindow.content(MAP), Canvas.class).stream()
                .filter(canvas -> canvas.getClass() == Canvas.class && canvas.getSize().x > 100).findFirst()
                .orElseThrow(() -> new AssertionError("no map"));
    }

    private static void key(int keyCode, int stateMask) {
        WINDOW.ui(() -> {
            Event press = new Event();
            press.type = SWT.KeyDown;
            press.keyCode = keyCode;
            press.character = keyCode < 128 ? (char) keyCode : 0;
            press.stateMask = stateMask;
            canvas().notifyListeners(SWT.KeyDown, press);
        });
    }

    private static void tab() {
        WINDOW.ui(() -> {
            Event step = new Event();
            step.detail = SWT.TRAVERSE_TAB_NEXT;
            step.doit = true;
            canvas().notifyListeners(SWT.Traverse, step);
        });
    }

    private static Object selected() {
        return WINDOW.ask(() -> ((IStructuredSelection) DemoWindow.shown(MAP).getSite().getSelectionProvider().getSelection())
                .getFirstElement());
    }

    private static int colours() {
        return WINDOW.ask(() -> {
            Canvas canvas = canvas();
            Image image = new Image(PlatformUI.getWorkbench().getDisplay(), canvas.getSize().x, canvas.getSize().y);
            GC gc = new GC(image);
            canvas.print(gc);
            gc.dispose();
            ImageData data = image.getImageData();
            image.dispose();
            Set<Integer> found = new HashSet<>();
            for (int y = 0; y < data.height; y += 2) {
                for (int x = 0; x < data.width; x += 2) {
                    found.add(data.getPixel(x, y));
                }
            }
            return found.size();
        });
    }

    @Test
    void theEventIsDrawn() {
        WINDOW.until("the map is drawn", () -> colours() > 40);
        WINDOW.ui(() -> {
            Table list = RunningWorkbench.below(DemoWindow.content(MAP), Table.class).get(0);
            assertTrue(list.getItemCount() >= 12, "parts and layers");
            assertEquals("Base map", list.getItem(0).getText());
        });
    }

    /** Twice as fine as the screen, and as full of colours. */
    @Test
    void thePictureIsWritten(@TempDir Path folder) throws IOException {
        WINDOW.until("the map is drawn", () -> colours() > 40);
        Path file = folder.resolve("map.png");
        assertTrue(WINDOW.ask(() -> ((MapView) DemoWindow.shown(MAP)).writePicture(file)));
        ImageData picture = new ImageData(file.toString());
        int width = WINDOW.ask(() -> canvas().getSize().x);
        assertEquals(2 * width, picture.width);
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < picture.width; x += 3) {
            for (int y = 0; y < picture.height; y += 3) {
                colours.add(picture.getPixel(x, y));
            }
        }
        assertTrue(colours.size() > 40, colours.size() + " colours");
    }

    @Test
    void tabGoesFromSiteToSite() {
        assertEquals("Basalt Mark", first().getName());
        tab();
        assertEquals("Four Winds Corner", ((Site) selected()).getName());
        key(SWT.ESC, 0);
        assertEquals(null, selected());
    }

    @Test
    void aSiteIsMovedByKeysInOneStep() {
        Site site = first();
        key('m', 0);
        key(SWT.ARROW_UP, SWT.SHIFT);
        key(SWT.ARROW_UP, SWT.SHIFT);
        key(SWT.ARROW_RIGHT, SWT.MOD1);
        assertEquals(63.61, WINDOW.ask(site::getLatitudeDeg), "nothing changes before it is put down");
        key(SWT.CR, 0);
        assertEquals(63.61 + 20 / 111_500.0, WINDOW.ask(site::getLatitudeDeg), 1e-6);
        assertEquals(-20 + 0.1 / 49_600, WINDOW.ask(site::getLongitudeDeg), 1e-7);
        assertEquals("Move site Basalt Mark", WINDOW.ask(WINDOW.session()::undoLabel));
        WINDOW.ui(WINDOW.session()::undo);
        assertEquals(63.61, WINDOW.ask(site::getLatitudeDeg));
        assertFalse(WINDOW.ask(WINDOW.session()::canUndo));
    }

    @Test
    void escapeLeavesASiteWhereItWas() {
        Site site = first();
        double latitude = WINDOW.ask(site::getLatitudeDeg);
        key('m', 0);
        key(SWT.ARROW_UP, 0);
        key(SWT.ESC, 0);
        assertFalse(WINDOW.ask(WINDOW.session()::canUndo));
        assertEquals(latitude, WINDOW.ask(site::getLatitudeDeg));
    }

    @Test
    void aNewSiteSnapsToALineAndClaimsIt() {
        first();
        int before = WINDOW.ask(() -> WINDOW.session().event().getSites().size());
        key('n', 0);
        key('l', 0);
        key(SWT.CR, 0);
        List<Site> sites = WINDOW.ask(() -> List.copyOf(WINDOW.session().event().getSites()));
        assertEquals(before + 1, sites.size());
        Site fresh = sites.get(before);
        assertEquals(SiteKind.LINE, WINDOW.ask(fresh::getKind));
        assertEquals(2, WINDOW.ask(() -> fresh.getSquares().size()));
        double latitude = WINDOW.ask(fresh::getLatitudeDeg);
        double longitude = WINDOW.ask(fresh::getLongitudeDeg);
        assertTrue(latitude == Math.rint(latitude) || longitude / 2 == Math.rint(longitude / 2), latitude + ", " + longitude);
        WINDOW.ui(WINDOW.session()::undo);
        assertEquals(before, WINDOW.ask(() -> WINDOW.session().event().getSites().size()));
    }

    @Test
    void withoutAnEventItSaysWhatToDo() throws Exception {
        WINDOW.ui(() -> WINDOW.session().close());
        assertFalse(WINDOW.ask(() -> canvasIsVisible()));
        WINDOW.open();
        WINDOW.until("the map is back", () -> WINDOW.ask(() -> canvasIsVisible()));
    }

    private static boolean canvasIsVisible() {
        return RunningWorkbench.below(DemoWindow.content(MAP), Canvas.class).stream()
                .anyMatch(canvas -> canvas.getClass() == Canvas.class && canvas.isVisible() && canvas.getSize().x > 100);
    }

    @Test
    void placesOfTheLineScoutAreDrawnAndChosenByKeys() {
        List<ShownPlace> found = List.of(place(1, new GeoPosition(64.5, -20)), place(2, new GeoPosition(65, -20.1)));
        WINDOW.ui(() -> PlaceBoard.current().show(found));
        try {
            key('p', 0);
            assertEquals(found.get(0), WINDOW.ask(() -> PlaceBoard.current().chosen().orElse(null)));
            key('p', 0);
            assertEquals(found.get(1), WINDOW.ask(() -> PlaceBoard.current().chosen().orElse(null)));
            key('p', SWT.SHIFT);
            assertEquals(found.get(0), WINDOW.ask(() -> PlaceBoard.current().chosen().orElse(null)));
        } finally {
            WINDOW.ui(() -> PlaceBoard.current().clear());
        }
    }

    private static ShownPlace place(int rank, GeoPosition at) {
        Candidate candidate = new Candidate(Candidate.Kind.CROSSING, GridLine.meridian(-20), at, 0,
                List.of(Square.parse("HP94"), Square.parse("IP04")),
                new MapFeature("Moor (demo)", Optional.empty(), MapFeature.Shape.LINES, List.of()), 90, 90, 10);
        return new ShownPlace(rank, new RankedCandidate(candidate, 0.5, List.of(), 0.5));
    }
}
