package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.check.Severity;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.event.ApplyProposal;
import org.straddle.plan.event.NeighbourhoodPlanner;
import org.straddle.ui.session.EventSession;

/** The main job in the window: open the demo, read it, plan it, take the plan back, edit, save. */
class WorkbenchTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @BeforeEach
    void theDemo() throws IOException {
        WINDOW.afresh();
    }

    private static EventSession session() {
        return EventSession.current();
    }

    private static long blockers() {
        return WINDOW.ask(() -> session().computed().orElseThrow().findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER).count());
    }

    @ParameterizedTest
    @ValueSource(strings = { "org.straddle.ui.explorer", "org.straddle.ui.findings", "org.straddle.ui.passes",
        "org.straddle.ui.daysheet.view", "org.straddle.ui.kit.packing", "org.straddle.ui.kit.resilience", "org.straddle.ui.kit.energy", "org.straddle.ui.safety.notes", "org.straddle.ui.safety.calls",
        "org.straddle.ui.sky.pass", "org.straddle.ui.sky.reach", "org.straddle.ui.scout.places" })
    void everyViewShowsAndPaintsSomething(String id) {
        String type = WINDOW.ask(() -> DemoWindow.shown(id).getClass().getName());
        assertTrue(type.startsWith("org.straddle."), id + " is shown by " + type);
        WINDOW.until(id + " has colours", () -> coloursOf(DemoWindow.content(id)) > 3);
    }

    /** The count above says something only if an empty view fails it. */
    @Test
    void aBlankViewHasNoColours() {
        int blank = WINDOW.ask(() -> {
            Shell shell = new Shell(DemoWindow.content("org.straddle.ui.explorer").getShell(), SWT.NO_TRIM);
            shell.setSize(300, 200);
            shell.open();
            while (shell.getDisplay().readAndDispatch()) {
                // until it is drawn
            }
            int colours = coloursOf(shell);
            shell.dispose();
            return colours;
        });
        assertTrue(blank <= 1, blank + " colours");
    }

    /** Of what one control and those in it show, not the window around it. */
    private static int coloursOf(Control content) {
        Point size = content.getSize();
        if (size.x < 1 || size.y < 1) {
            return 0;
        }
        Image picture = new Image(content.getDisplay(), size.x, size.y);
        GC gc = new GC(content);
        gc.copyArea(picture, 0, 0);
        gc.dispose();
        ImageData data = picture.getImageData();
        picture.dispose();
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < data.width; x += 3) {
            for (int y = 0; y < data.height; y += 3) {
                colours.add(data.getPixel(x, y));
            }
        }
        return colours.size();
    }

    @Test
    void theExplorerHoldsTheEventAndTheFindingsHoldEachFinding() {
        int roots = WINDOW.ask(() -> RunningWorkbench.below(DemoWindow.content("org.straddle.ui.explorer"), Tree.class).stream()
                .mapToInt(Tree::getItemCount).sum());
        assertTrue(roots > 0);
        // At one moment: an undo of the test before may still be worked out.
        WINDOW.ui(() -> {
            int rows = RunningWorkbench.below(DemoWindow.content("org.straddle.ui.findings"), Table.class).stream()
                    .mapToInt(Table::getItemCount).max().orElse(0);
            assertEquals(session().computed().orElseThrow().findings().size(), rows);
        });
    }

    @Test
    void aPlanIsOneStepAndUndoBringsTheDraftBack() {
        assertTrue(blockers() > 0, "the draft has blockers");
        int draft = WINDOW.ask(() -> session().event().getPlan().getStops().size());
        Proposal proposal = new NeighbourhoodPlanner().propose(
                WINDOW.ask(() -> session().computed().orElseThrow().outlook()), PlanSettings.ofIterations(100, 1), null);
        WINDOW.ui(() -> session().execute(
                ApplyProposal.command(session().editingDomain(), session().event(), proposal)));
        WINDOW.computed();
        WINDOW.until("the plan is checked", () -> blockersNow() == 0);
        assertTrue(WINDOW.ask(() -> session().dirty()));

        WINDOW.ui(() -> session().undo());
        WINDOW.computed();
        WINDOW.until("the draft is checked", () -> blockersNow() > 0);
        assertEquals(draft, WINDOW.ask(() -> session().event().getPlan().getStops().size()));

        WINDOW.ui(() -> session().redo());
        WINDOW.until("the plan is checked again", () -> blockersNow() == 0);
    }

    /** What a plan can settle; reviews, visits and permissions follow a plan. */
    private static long blockersNow() {
        return session().computed().map(computed -> computed.findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER)
                .filter(finding -> !finding.rule().matches("(?:review|visit)-.*|permission-lapsed")).count()).orElse(-1L);
    }

    @Test
    void everyKindOfThingOpensItsEditor() {
        Event live = WINDOW.ask(() -> session().event());
        List<Identified> things = WINDOW.ask(() -> List.of(live, live.getBases().get(0), live.getOperators().get(0),
                live.getTeams().get(0), live.getKits().get(0), live.getSites().get(0), live.getBirds().get(0),
                live.getPlan().getStops().get(0), live.getPlan().getStops().get(0).getTurns().get(0)));
        Set<String> editors = new HashSet<>();
        for (Identified thing : things) {
            WINDOW.ui(() -> session().reveal(thing));
            IEditorPart editor = WINDOW.ask(() -> DemoWindow.page().getActiveEditor());
            editors.add(WINDOW.ask(() -> editor.getSite().getId()));
            assertTrue(editor.getClass().getName().startsWith("org.straddle."), editor.getClass().getName());
        }
        assertEquals(things.size(), editors.size(), editors.toString());
    }

    @Test
    void typingChangesTheModelUndoTakesItBackAndSaveWritesOneFile() throws IOException {
        Site site = WINDOW.ask(() -> session().event().getSites().get(0));
        String name = WINDOW.ask(site::getName);
        WINDOW.ui(() -> session().reveal(site));
        WINDOW.ui(() -> typeInto(name, "Renamed Mark"));
        assertEquals("Renamed Mark", WINDOW.ask(site::getName));
        WINDOW.ui(() -> session().undo());
        assertEquals(name, WINDOW.ask(site::getName));
        WINDOW.ui(() -> session().redo());

        Map<String, String> before = WINDOW.files();
        WINDOW.save();
        Map<String, String> after = WINDOW.files();
        assertNotEquals(before, after);
        List<String> changed = after.keySet().stream().filter(file -> !after.get(file).equals(before.get(file))).toList();
        assertTrue(changed.size() == 1 && changed.get(0).startsWith("sites/"), changed.toString());
        assertFalse(WINDOW.ask(() -> session().dirty()));
    }

    private static void typeInto(String shown, String typed) {
        IEditorPart editor = DemoWindow.page().getActiveEditor();
        Shell shell = editor.getSite().getShell();
        Text field = RunningWorkbench.below(shell, Text.class).stream()
                .filter(text -> text.isVisible() && text.getText().equals(shown)).findFirst().orElseThrow();
        field.setFocus();
        field.setText(typed);
        field.notifyListeners(SWT.DefaultSelection, new org.eclipse.swt.widgets.Event());
        session().commitPendingEdits();
    }

    @Test
    void withoutAnEventEveryViewStaysCalm() throws Exception {
        String name = WINDOW.ask(() -> session().event().getSites().get(0).getName());
        WINDOW.ui(() -> session().close());
        for (String id : List.of("org.straddle.ui.explorer", "org.straddle.ui.findings", "org.straddle.ui.passes",
                "org.straddle.ui.daysheet.view", "org.straddle.ui.kit.packing", "org.straddle.ui.safety.notes", "org.straddle.ui.safety.calls",
                "org.straddle.ui.sky.pass", "org.straddle.ui.sky.reach")) {
            assertTrue(WINDOW.ask(() -> DemoWindow.shown(id).getClass().getName()).startsWith("org.straddle."), id);
        }
        WINDOW.ui(() -> Stream.of(DemoWindow.page().getViewReferences()).forEach(DemoWindow.page()::hideView));
        WINDOW.open();
        assertEquals(name, WINDOW.ask(() -> session().event().getSites().get(0).getName()));
    }
}
