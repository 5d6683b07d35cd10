package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer.OrderAnnotation;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.check.Severity;
import org.straddle.demo.DemoEvent;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.plan.ApplyProposal;
import org.straddle.plan.NeighbourhoodPlanner;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.store.EventFolder;
import org.straddle.ui.session.EventSession;

/** The main job in the window: open the demo, read it, plan it, take the plan back, edit, save. */
@TestMethodOrder(OrderAnnotation.class)
class WorkbenchTest {

    @TempDir
    static Path folder;

    private static RunningWorkbench workbench;
    private static Path event;

    @BeforeAll
    static void openTheDemo() throws Exception {
        event = folder.resolve("demo");
        DemoEvent.write(event);
        workbench = RunningWorkbench.start();
        EventFolder opened = EventFolder.open(event);
        workbench.ui(() -> EventSession.current().open(opened));
        awaitComputation();
    }

    @AfterAll
    static void close() throws Exception {
        if (workbench != null) {
            workbench.ui(() -> EventSession.current().close());
            workbench.close();
        }
    }

    private static void awaitComputation() {
        workbench.until("the event is computed",
                () -> !session().computing() && session().computed().isPresent());
    }

    private static EventSession session() {
        return EventSession.current();
    }

    private static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    private static long blockers() {
        return workbench.ask(() -> session().computed().orElseThrow().findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER).count());
    }

    private static IViewPart shown(String id) {
        try {
            return page().showView(id);
        } catch (PartInitException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @Order(1)
    @ValueSource(strings = { "org.straddle.ui.explorer", "org.straddle.ui.findings", "org.straddle.ui.passes",
        "org.straddle.ui.daysheet.view", "org.straddle.ui.kit.packing", "org.straddle.ui.safety.notes" })
    void everyViewShowsAndPaintsSomething(String id) {
        String type = workbench.ask(() -> shown(id).getClass().getName());
        assertTrue(type.startsWith("org.straddle."), id + " is shown by " + type);
        workbench.until(id + " has colours", () -> coloursOf(shown(id)) > 3);
    }

    private static int coloursOf(IViewPart view) {
        Shell shell = view.getSite().getShell();
        Rectangle area = shell.getClientArea();
        Image picture = new Image(shell.getDisplay(), area.width, area.height);
        GC gc = new GC(shell);
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
    @Order(2)
    void theExplorerHoldsTheEventAndTheFindingsHoldEachFinding() {
        int roots = workbench.ask(() -> RunningWorkbench.below(content("org.straddle.ui.explorer"), Tree.class).stream()
                .mapToInt(Tree::getItemCount).sum());
        assertTrue(roots > 0);
        int rows = workbench.ask(() -> RunningWorkbench.below(content("org.straddle.ui.findings"), Table.class).stream()
                .mapToInt(Table::getItemCount).max().orElse(0));
        int findings = workbench.ask(() -> session().computed().orElseThrow().findings().size());
        assertEquals(findings, rows);
    }

    private static org.eclipse.swt.widgets.Control content(String viewId) {
        IViewPart view = shown(viewId);
        // The root of a part's own controls hangs on its site.
        return (org.eclipse.swt.widgets.Control) view.getSite().getService(
                org.eclipse.e4.ui.model.application.ui.basic.MPart.class).getWidget();
    }

    @Test
    @Order(3)
    void aPlanIsOneStepAndUndoBringsTheDraftBack() {
        assertTrue(blockers() > 0, "the draft has blockers");
        int draft = workbench.ask(() -> session().event().getPlan().getStops().size());
        Proposal proposal = new NeighbourhoodPlanner().propose(
                workbench.ask(() -> session().computed().orElseThrow().outlook()), PlanSettings.ofIterations(100, 1), null);
        workbench.ui(() -> session().execute(
                ApplyProposal.command(session().editingDomain(), session().event(), proposal)));
        awaitComputation();
        workbench.until("the plan is checked", () -> blockersNow() == 0);
        assertTrue(workbench.ask(() -> session().dirty()));

        workbench.ui(() -> session().undo());
        awaitComputation();
        workbench.until("the draft is checked", () -> blockersNow() > 0);
        assertEquals(draft, workbench.ask(() -> session().event().getPlan().getStops().size()));

        workbench.ui(() -> session().redo());
        workbench.until("the plan is checked again", () -> blockersNow() == 0);
    }

    private static long blockersNow() {
        return session().computed().map(computed -> computed.findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER).count()).orElse(-1L);
    }

    @Test
    @Order(4)
    void everyKindOfThingOpensItsEditor() {
        Event live = workbench.ask(() -> session().event());
        List<Identified> things = workbench.ask(() -> List.of(live, live.getBases().get(0), live.getOperators().get(0),
                live.getTeams().get(0), live.getKits().get(0), live.getSites().get(0), live.getBirds().get(0),
                live.getPlan().getStops().get(0), live.getPlan().getStops().get(0).getTurns().get(0)));
        Set<String> editors = new HashSet<>();
        for (Identified thing : things) {
            workbench.ui(() -> session().reveal(thing));
            IEditorPart editor = workbench.ask(() -> page().getActiveEditor());
            editors.add(workbench.ask(() -> editor.getSite().getId()));
            assertTrue(editor.getClass().getName().startsWith("org.straddle."), editor.getClass().getName());
        }
        assertEquals(things.size(), editors.size(), editors.toString());
    }

    @Test
    @Order(5)
    void typingChangesTheModelUndoTakesItBackAndSaveWritesOneFile() throws IOException {
        Site site = workbench.ask(() -> session().event().getSites().get(0));
        String name = workbench.ask(site::getName);
        workbench.ui(() -> session().reveal(site));
        workbench.ui(() -> typeInto(name, "Renamed Mark"));
        assertEquals("Renamed Mark", workbench.ask(site::getName));
        workbench.ui(() -> session().undo());
        assertEquals(name, workbench.ask(site::getName));
        workbench.ui(() -> session().redo());

        TreeMap<String, String> before = contents();
        workbench.ask(() -> {
            try {
                session().write();
                session().saved();
                return null;
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
        TreeMap<String, String> after = contents();
        assertNotEquals(before, after);
        List<String> changed = after.keySet().stream().filter(file -> !after.get(file).equals(before.get(file))).toList();
        assertTrue(changed.stream().allMatch(file -> file.equals("plan.xmi") || file.startsWith("sites/")), changed.toString());
        assertFalse(workbench.ask(() -> session().dirty()));
    }

    private static void typeInto(String shown, String typed) {
        IEditorPart editor = page().getActiveEditor();
        Shell shell = editor.getSite().getShell();
        Text field = RunningWorkbench.below(shell, Text.class).stream()
                .filter(text -> text.isVisible() && text.getText().equals(shown)).findFirst().orElseThrow();
        field.setFocus();
        field.setText(typed);
        field.notifyListeners(SWT.DefaultSelection, new org.eclipse.swt.widgets.Event());
        session().commitPendingEdits();
    }

    private static TreeMap<String, String> contents() throws IOException {
        TreeMap<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(event)) {
            for (Path file : files.filter(Files::isRegularFile).filter(f -> !f.getFileName().toString().startsWith("."))
                    .toList()) {
                contents.put(event.relativize(file).toString(), Files.readString(file));
            }
        }
        return contents;
    }

    @Test
    @Order(6)
    void withoutAnEventEveryViewStaysCalm() throws Exception {
        workbench.ui(() -> session().close());
        for (String id : List.of("org.straddle.ui.explorer", "org.straddle.ui.findings", "org.straddle.ui.passes",
                "org.straddle.ui.daysheet.view", "org.straddle.ui.kit.packing", "org.straddle.ui.safety.notes")) {
            assertTrue(workbench.ask(() -> shown(id).getClass().getName()).startsWith("org.straddle."), id);
        }
        EventFolder again = EventFolder.open(event);
        workbench.ui(() -> session().open(again));
        awaitComputation();
        assertEquals("Renamed Mark", workbench.ask(() -> session().event().getSites().get(0).getName()));
    }
}
