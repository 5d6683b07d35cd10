package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.maps.LayerImport;
import org.straddle.exchange.maps.LayerRole;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.StraddlePackage;
import org.straddle.ui.places.PlaceBoard;
import org.straddle.ui.places.ShownPlace;

/** Places come into the event: as a table of sites through the wizard, and from roads through the line scout. */
class PlacesTest {

    private static final String SCOUT = "org.straddle.ui.scout.places";

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @BeforeEach
    void theDemo() throws IOException {
        // Places that were found stay on the board until an event is opened.
        if (!WINDOW.afresh()) {
            openAgain();
        }
    }

    private static void openAgain() throws IOException {
        WINDOW.ui(() -> WINDOW.session().close());
        WINDOW.open();
    }

    private final OpenWizard wizard = new OpenWizard(WINDOW, "Import sites");

    private static int sites() {
        return WINDOW.ask(() -> WINDOW.session().event().getSites().size());
    }

    @Test
    void sitesComeInThroughThreeStepsAndOneUndoTakesThemBack() throws IOException {
        Site known = WINDOW.ask(() -> WINDOW.session().event().getSites().get(0));
        double height = WINDOW.ask(known::getAltitudeM);
        String name = WINDOW.ask(known::getName);
        int before = sites();
        Path file = WINDOW.beside("places.csv");
        Files.writeString(file, "Site,Where,Height\n" + name + ",," + (height + 12) + "\nNew Gate,64°30'N 20°00'W,10\nBroken,91 -181,\n");
        WINDOW.ui(() -> DemoWindow.shown("org.straddle.ui.explorer"));
        WINDOW.command("org.straddle.ui.importSites");
        wizard.awaitOpen();
        wizard.type(WINDOW.beside("none.csv").toString());
        wizard.press("Next");
        assertFalse(wizard.enabled("Finish"));
        wizard.type(file.toString());
        wizard.press("Next");
        WINDOW.until("the columns are shown", () -> RunningWorkbench.below(wizard.shell(), org.eclipse.swt.widgets.Combo.class).stream()
                .filter(Control::isVisible).map(org.eclipse.swt.widgets.Combo::getText).toList().containsAll(
                        List.of("name", "position in any form", "altitude, m", "by name")));
        wizard.press("Next");
        WINDOW.until("the preview is shown", () -> RunningWorkbench.below(wizard.shell(), Table.class).stream()
                .anyMatch(table -> table.isVisible() && table.getItemCount() > 3));
        assertFalse(wizard.enabled("Finish"), "a line is refused");
        assertEquals(before, sites(), "nothing changes before the last step");
        wizard.press("Leave out the refused line");
        wizard.press("Finish");
        wizard.awaitClosed();
        assertEquals(before + 1, sites());
        assertEquals(height + 12, WINDOW.ask(known::getAltitudeM));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(before, sites());
        assertEquals(height, WINDOW.ask(known::getAltitudeM));
    }

    @Test
    void theScoutSaysWhatToDoWithoutRoads() throws IOException {
        assertFalse(words().contains("Add roads or tracks"), "the demo has roads");
        WINDOW.ui(() -> assertTrue(WINDOW.session().execute(RemoveCommand.create(WINDOW.session().editingDomain(),
                WINDOW.session().event(), StraddlePackage.Literals.EVENT__LAYERS, List.copyOf(WINDOW.session().event().getLayers())))));
        // The save takes their files away, which would else be layers that somebody put there by hand.
        WINDOW.save();
        openAgain();
        WINDOW.until("it says what to do", () -> words().contains("Add roads or tracks"));
    }

    /** What the scout shows in labels. */
    private static String words() {
        return WINDOW.ask(() -> String.join(" ", RunningWorkbench.below(DemoWindow.content(SCOUT), Label.class).stream()
                .filter(Control::isVisible).map(Label::getText).toList()));
    }

    @Test
    void placesAlongRoadsAreListedShownAndBecomeSites() throws IOException {
        Path roads = WINDOW.beside("crossing roads.geojson");
        Files.writeString(roads, """
                {"type":"FeatureCollection","features":[
                {"type":"Feature","properties":{"name":"Moor (demo)"},"geometry":{"type":"LineString","coordinates":[[-20.01,64.51],[-19.99,64.51]]}},
                {"type":"Feature","properties":{"name":"Fell (demo)"},"geometry":{"type":"LineString","coordinates":[[-20.01,64.41],[-19.99,64.41]]}}]}
                """);
        LayerImport layer = LayerImport.read(roads, CoordinateOrder.OF_THE_FORMAT, new NullProgressMonitor());
        WINDOW.ui(() -> {
            try {
                assertTrue(WINDOW.session().execute(layer.command(WINDOW.session().editingDomain(), WINDOW.session().folder(), LayerRole.ROADS, "")));
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
        WINDOW.ui(() -> RunningWorkbench.below(DemoWindow.content(SCOUT), Button.class).stream()
                .filter(button -> button.getText().replace("&", "").equals("Find places")).findFirst().orElseThrow()
                .notifyListeners(SWT.Selection, new Event()));
        WINDOW.until("places are found", () -> PlaceBoard.current().places().stream().map(PlacesTest::road).toList()
                .containsAll(List.of("Moor (demo)", "Fell (demo)")));
        Table list = WINDOW.ask(() -> RunningWorkbench.below(DemoWindow.content(SCOUT), Table.class).get(0));
        assertEquals(WINDOW.ask(() -> PlaceBoard.current().places().size()), WINDOW.ask(list::getItemCount));

        ShownPlace moor = WINDOW.ask(() -> PlaceBoard.current().places().stream().filter(place -> road(place).equals("Moor (demo)")).findFirst().orElseThrow());
        WINDOW.ui(() -> PlaceBoard.current().choose(moor));
        assertEquals(moor.rank() - 1, WINDOW.ask(list::getSelectionIndex), "the list follows what another view chooses");
        int before = sites();
        WINDOW.deed(SCOUT, "Make a site");
        WINDOW.until("the site is made", () -> WINDOW.session().event().getSites().size() == before + 1);
        Site made = WINDOW.ask(() -> WINDOW.session().event().getSites().get(before));
        assertEquals("20°W Moor (demo)", WINDOW.ask(made::getName));
        assertEquals(SiteKind.LINE, WINDOW.ask(made::getKind));
        assertEquals(-20, WINDOW.ask(made::getLongitudeDeg), 1e-6);
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(before, sites());

        WINDOW.save();
        assertTrue(WINDOW.files().containsKey("layers/crossing-roads.geojson"));
        WINDOW.ui(() -> WINDOW.session().undo());
        WINDOW.save();
        assertFalse(WINDOW.files().containsKey("layers/crossing-roads.geojson"), "the layer was taken back");
    }

    private static String road(ShownPlace place) {
        return place.candidate().candidate().road().name();
    }
}
