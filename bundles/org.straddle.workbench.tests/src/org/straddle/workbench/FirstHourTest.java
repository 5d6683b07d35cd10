package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.demo.DemoEvent;
import org.straddle.exchange.elements.ElementFile;
import org.straddle.exchange.elements.SkyFiles;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.store.EventFolder;
import org.straddle.ui.importing.ImportElements;
import org.straddle.ui.workbench.OpenRecent;
import org.straddle.ui.workbench.PlanPerspective;
import org.straddle.ui.workbench.ShowViews;
import org.straddle.ui.workbench.StartPerspective;

/** What stood in the way of somebody who uses the window for the first time. */
class FirstHourTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    private static final String DAY_SHEET = "org.straddle.ui.daysheet.view";

    @Test
    void anOpenFormHasHalfTheHeightOfTheWindow() {
        WINDOW.ui(() -> WINDOW.session().reveal(WINDOW.session().event().getTeams().get(0)));
        WINDOW.until("the form is laid out", () -> form().getSize().y > 0);
        int part = WINDOW.ask(() -> form().getSize().y);
        int whole = WINDOW.ask(() -> form().getShell().getClientArea().height);
        assertTrue(part > 0.36 * whole, part + " of " + whole);
    }

    private static ScrolledForm form() {
        return RunningWorkbench.below(DemoWindow.page().getActiveEditor().getSite().getShell(), ScrolledForm.class).stream()
                .filter(Control::isVisible).findFirst().orElseThrow();
    }

    @Test
    void withoutAnEventTheStartPageStandsAlone() throws Exception {
        WINDOW.ui(() -> WINDOW.session().close());
        assertEquals(StartPerspective.ID, WINDOW.ask(() -> DemoWindow.page().getPerspective().getId()));
        assertEquals(List.of("org.straddle.ui.welcome"), WINDOW.ask(() -> Stream.of(DemoWindow.page().getEditorReferences())
                .map(reference -> reference.getId()).toList()));
        assertEquals(0, WINDOW.ask(() -> DemoWindow.page().getViewReferences().length));
        WINDOW.open();
        assertEquals(PlanPerspective.ID, WINDOW.ask(() -> DemoWindow.page().getPerspective().getId()));
        assertFalse(WINDOW.ask(() -> DemoWindow.page().isEditorAreaVisible()), "a planned event begins with its day sheet");
    }

    @Test
    void anotherEventTakesThePlaceOfTheOneBeforeWithoutTheStartPageInBetween() throws Exception {
        Path second = WINDOW.beside("second");
        DemoEvent.write(second);
        EventFolder opened = EventFolder.open(second);
        List<String> seen = new ArrayList<>();
        PerspectiveAdapter listener = new PerspectiveAdapter() {
            @Override
            public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
                seen.add(perspective.getId());
            }
        };
        WINDOW.ui(() -> {
            WINDOW.session().reveal(WINDOW.session().event());
            DemoWindow.page().getWorkbenchWindow().addPerspectiveListener(listener);
            WINDOW.session().open(opened);
            DemoWindow.page().getWorkbenchWindow().removePerspectiveListener(listener);
        });
        assertEquals(List.of(), seen);
        assertEquals(PlanPerspective.ID, WINDOW.ask(() -> DemoWindow.page().getPerspective().getId()));
        assertEquals(0, WINDOW.ask(() -> DemoWindow.page().getEditorReferences().length), "the form of the event before is gone");
        assertEquals(second, WINDOW.ask(() -> WINDOW.session().folder().path()));
        WINDOW.open();
    }

    @Test
    void everyViewHasALetterInItsMenuAndRecentEventsHaveDigits() {
        List<String> views = WINDOW.ask(() -> texts(new ShowViews()));
        assertTrue(views.size() > 8, views.toString());
        List<Character> letters = views.stream().filter(text -> text.contains("&"))
                .map(text -> Character.toLowerCase(text.charAt(text.indexOf('&') + 1))).toList();
        assertEquals(views.size(), letters.stream().distinct().count(), views.toString());
        assertFalse(letters.contains('r'), "that is Reset");
        assertTrue(WINDOW.ask(() -> texts(new OpenRecent())).stream().allMatch(text -> text.startsWith("&1  ")
                || text.equals("No event was opened yet")));
    }

    /** What a menu shows that holds the item alone. */
    private static List<String> texts(IContributionItem item) {
        Shell shell = new Shell(PlatformUI.getWorkbench().getDisplay());
        MenuManager manager = new MenuManager();
        manager.add(item);
        Menu menu = manager.createContextMenu(shell);
        item.fill(menu, 0);
        List<String> texts = Stream.of(menu.getItems()).map(MenuItem::getText).toList();
        shell.dispose();
        return texts;
    }

    /** Leaving a field writes it into the event before the click on the list arrives: the row must outlive that. */
    @Test
    void rowsOfAListOutliveTheEditOfAnotherField() {
        Team team = WINDOW.ask(() -> WINDOW.session().event().getTeams().get(0));
        WINDOW.ui(() -> WINDOW.session().reveal(team));
        Table operators = WINDOW.ask(() -> RunningWorkbench.below(form(), Table.class).stream()
                .filter(table -> (table.getStyle() & SWT.CHECK) != 0).findFirst().orElseThrow());
        int[] written = {0};
        WINDOW.ui(() -> {
            operators.getItem(3).addListener(SWT.Dispose, gone -> written[0]++);
            boolean before = operators.getItem(3).getChecked();
            Text name = RunningWorkbench.below(form(), Text.class).stream()
                    .filter(text -> text.getText().equals(team.getName())).findFirst().orElseThrow();
            name.setText("Other Lanterns");
            WINDOW.session().commitPendingEdits();
            assertEquals("Other Lanterns", team.getName());
            assertEquals(before, operators.getItem(3).getChecked());
            WINDOW.session().undo();
        });
        assertEquals(0, written[0], "rows made anew");
    }

    @Test
    void unknownNumbersAreEmptyAndTabSelectsWhatIsInAField() {
        Bird bird = WINDOW.ask(() -> WINDOW.session().event().getBirds().get(0));
        WINDOW.ui(() -> WINDOW.session().reveal(bird));
        List<Text> fields = WINDOW.ask(() -> RunningWorkbench.below(form(), Text.class));
        assertTrue(WINDOW.ask(() -> fields.stream().noneMatch(field -> field.getText().equals("0"))));
        WINDOW.ui(() -> {
            fields.get(0).setFocus();
            fields.get(0).setSelection(0);
            fields.get(0).traverse(SWT.TRAVERSE_TAB_NEXT);
        });
        WINDOW.until("the next field is selected", () -> PlatformUI.getWorkbench().getDisplay().getFocusControl() instanceof Text next
                && next != fields.get(0) && next.getSelectionText().equals(next.getText()) && !next.getText().isEmpty());
    }

    @Test
    void whoeverChecksSeesWhatIsFound() {
        WINDOW.ui(() -> DemoWindow.shown("org.straddle.ui.passes"));
        assertFalse(WINDOW.ask(() -> DemoWindow.page().isPartVisible(DemoWindow.page().findView("org.straddle.ui.findings"))));
        WINDOW.command("org.straddle.ui.check");
        WINDOW.until("the findings are in front", () -> DemoWindow.page().isPartVisible(DemoWindow.page().findView("org.straddle.ui.findings")));
        WINDOW.computed();
    }

    /** What the day sheet says of an edit is true no more once the edit is undone. */
    @Test
    void theMessageOfTheDaySheetGoesWithTheUndo() {
        Stop stop = WINDOW.ask(() -> WINDOW.session().event().getPlan().getStops().get(0));
        WINDOW.computed();
        WINDOW.choose("org.straddle.ui.explorer", List.of(stop));
        WINDOW.ui(() -> sheet().setFocus());
        WINDOW.until("the day sheet is the active part",
                () -> DemoWindow.page().getActivePart().getSite().getId().equals(DAY_SHEET));
        WINDOW.command("org.straddle.ui.daysheet.endLater");
        WINDOW.until("it is said", () -> !said().isEmpty());
        WINDOW.computed();
        WINDOW.until("it is still said", () -> !said().isEmpty());
        WINDOW.ui(() -> WINDOW.session().undo());
        WINDOW.until("it is said no more", () -> said().isEmpty());
        WINDOW.computed();
        assertEquals("", WINDOW.ask(FirstHourTest::said));
    }

    private static Canvas sheet() {
        return RunningWorkbench.below(DemoWindow.content(DAY_SHEET), Canvas.class).stream()
                .filter(canvas -> (canvas.getStyle() & SWT.H_SCROLL) != 0).findFirst().orElseThrow();
    }

    /** The words are painted, so the sheet itself is asked. */
    private static String said() {
        try {
            Object view = DemoWindow.page().findView(DAY_SHEET);
            Field sheet = view.getClass().getDeclaredField("sheet");
            sheet.setAccessible(true);
            Method said = sheet.getType().getDeclaredMethod("said");
            said.setAccessible(true);
            return (String) said.invoke(sheet.get(view));
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    /** An event without birds takes those of the element sets: one button does what is wanted. */
    @Test
    void elementSetsBringTheirBirdsIntoAnEventWithoutAny() throws Exception {
        List<ElementFile> files = SkyFiles.read(List.of(WINDOW.event().resolve("elements/demo.tle")), new NullProgressMonitor()).elements();
        WINDOW.ui(() -> {
            org.straddle.model.Event event = WINDOW.session().event();
            assertTrue(WINDOW.session().execute(DeleteCommand.create(WINDOW.session().editingDomain(), List.copyOf(event.getBirds()))));
            assertTrue(event.getBirds().isEmpty());
        });
        WINDOW.later(() -> ImportElements.offer(DemoWindow.page().getWorkbenchWindow().getShell(), files));
        WINDOW.until("it asks", () -> shell("Import element sets") != null);
        assertEquals(List.of("Add these birds", "Cancel"), WINDOW.ask(() -> RunningWorkbench.below(shell("Import element sets"), Button.class)
                .stream().map(button -> button.getText().replace("&", "")).sorted().toList()));
        press("Add these birds");
        WINDOW.until("the birds are there", () -> WINDOW.session().event().getBirds().size() == 5);
        WINDOW.ui(() -> {
            String undo = WINDOW.session().undoLabel();
            WINDOW.session().undo();
            assertEquals(List.of(), WINDOW.session().event().getBirds().stream().map(Bird::getName).toList(), undo);
            WINDOW.session().undo();
            assertEquals(6, WINDOW.session().event().getBirds().size());
        });
        WINDOW.computed();
    }

    /** The wheel over a box of several lines moves the form, and a form is found again where it was left. */
    @Test
    void theWheelTurnsTheFormAndAFormIsLeftWhereItWas() {
        Team team = WINDOW.ask(() -> WINDOW.session().event().getTeams().get(0));
        WINDOW.ui(() -> WINDOW.session().reveal(WINDOW.session().event()));
        WINDOW.until("the form is longer than its place", () -> form().getBody().getSize().y > form().getClientArea().height + 200);
        WINDOW.ui(() -> form().setOrigin(0, 0));
        int turned = WINDOW.ask(() -> {
            Text lines = RunningWorkbench.below(form(), Text.class).stream()
                    .filter(text -> (text.getStyle() & SWT.MULTI) != 0 && (text.getStyle() & SWT.READ_ONLY) == 0).findFirst().orElseThrow();
            // At its end it cannot scroll any farther, however long it is.
            lines.setTopIndex(lines.getLineCount());
            Event wheel = new Event();
            wheel.count = -3;
            wheel.doit = true;
            lines.notifyListeners(SWT.MouseVerticalWheel, wheel);
            return form().getOrigin().y;
        });
        assertTrue(turned > 0, "the form has moved");
        WINDOW.ui(() -> WINDOW.session().reveal(team));
        WINDOW.until("another form is in front", () -> DemoWindow.page().getActiveEditor().getTitle().contains(team.getName()));
        WINDOW.ui(() -> WINDOW.session().reveal(WINDOW.session().event()));
        WINDOW.until("the form is back", () -> DemoWindow.page().getActiveEditor().getTitle().contains("Skerry"));
        WINDOW.until("it stands where it was left", () -> form().getOrigin().y == turned);
    }

    /** A base that teams use is not deleted in silence, and its loss is a finding. */
    @Test
    void aSharedBaseIsDeletedOnlyAfterAQuestion() {
        Base base = WINDOW.ask(() -> WINDOW.session().event().getTeams().get(0).getDays().get(0).getStart());
        WINDOW.choose("org.straddle.ui.explorer", List.of(base));
        WINDOW.command("org.eclipse.ui.edit.delete");
        WINDOW.answer("Delete " + WINDOW.ask(base::getName));
        WINDOW.until("the base is gone", () -> base.eContainer() == null);
        WINDOW.computed();
        WINDOW.until("its loss is found", () -> WINDOW.session().computed().map(computed -> computed.findings().stream()
                .anyMatch(finding -> finding.rule().equals("day-without-base"))).orElse(false));
        WINDOW.ui(() -> WINDOW.session().undo());
        WINDOW.computed();
    }

    @Test
    void publishOffersAFolderBesideTheEventAndTakesATypedOne() {
        Path typed = WINDOW.beside("typed by hand");
        WINDOW.computed();
        WINDOW.command("org.straddle.ui.publish");
        WINDOW.until("it asks about blockers", () -> shell("Publish") != null);
        press("Publish anyway");
        WINDOW.until("it asks where to", () -> text("demo-published") != null);
        WINDOW.ui(() -> {
            Text folder = text("demo-published");
            folder.setText("not a whole path");
            assertFalse(shell("Publish").getDefaultButton().isEnabled());
            folder.setText(typed.toString());
            assertTrue(shell("Publish").getDefaultButton().isEnabled());
        });
        press("Cancel");
        WINDOW.until("it is closed", () -> shell("Publish") == null);
        assertFalse(Files.exists(typed), "nothing was written");
    }

    private static Shell shell(String title) {
        return Stream.of(PlatformUI.getWorkbench().getDisplay().getShells()).filter(shell -> shell.isVisible()
                && shell.getText().equals(title)).findFirst().orElse(null);
    }

    private static Text text(String ending) {
        Shell shell = shell("Publish");
        return shell == null ? null : RunningWorkbench.below(shell, Text.class).stream()
                .filter(text -> text.getText().endsWith(ending)).findFirst().orElse(null);
    }

    /** Does not wait for dialogs that the button opens. */
    private static void press(String text) {
        Button button = WINDOW.ask(() -> Stream.of(PlatformUI.getWorkbench().getDisplay().getShells()).filter(Composite::isVisible)
                .flatMap(shell -> RunningWorkbench.below(shell, Button.class).stream())
                .filter(one -> one.getText().replace("&", "").equals(text)).findFirst()
                .orElseThrow(() -> new AssertionError("no button " + text)));
        button.getDisplay().asyncExec(() -> button.notifyListeners(SWT.Selection, new Event()));
    }

    /** From nothing to an event with a base, written in lines; a cancelled one leaves nothing behind. */
    @Test
    void aNewEventIsMadeStepByStepAndACancelledOneLeavesNothing() throws Exception {
        Path folder = WINDOW.beside("fen");
        WINDOW.command("org.straddle.ui.newEvent");
        WINDOW.until("the first step is there", () -> shell("New event") != null);
        WINDOW.ui(() -> fields().get(0).setText("Fen rove"));
        WINDOW.ui(() -> fields().get(fields().size() - 1).setText(folder.toString()));
        press("Next >");
        WINDOW.until("the second step is there", () -> fields().size() == 1);
        WINDOW.ui(() -> fields().get(0).setText("Old Mill, 38.7"));
        assertFalse(WINDOW.ask(() -> button("Make the event").isEnabled()), "a line that cannot be read is not lost");
        WINDOW.ui(() -> fields().get(0).setText("Old Mill, 38.7 -9.1"));
        assertTrue(WINDOW.ask(() -> button("Make the event").isEnabled()), "all else may be left for later");
        press("Cancel");
        WINDOW.until("it asks", () -> Stream.of(PlatformUI.getWorkbench().getDisplay().getShells()).anyMatch(shell -> shell.isVisible()
                && RunningWorkbench.below(shell, Button.class).stream().anyMatch(one -> one.getText().replace("&", "").equals("Drop it"))));
        press("Drop it");
        WINDOW.until("it is dropped", () -> shell("New event") == null);
        assertFalse(Files.exists(folder));

        WINDOW.command("org.straddle.ui.newEvent");
        WINDOW.until("the first step is there", () -> shell("New event") != null);
        WINDOW.ui(() -> fields().get(0).setText("Fen rove"));
        WINDOW.ui(() -> fields().get(fields().size() - 1).setText(folder.toString()));
        press("Next >");
        WINDOW.until("the second step is there", () -> fields().size() == 1);
        WINDOW.ui(() -> fields().get(0).setText("Old Mill, 38.7 -9.1"));
        for (int step = 0; step < 6; step++) {
            press("Next >");
        }
        WINDOW.until("what is missing is listed", () -> RunningWorkbench.below(shell("New event"), Text.class).stream()
                .anyMatch(text -> text.isVisible() && text.getText().contains("Operators.")));
        press("Make the event");
        WINDOW.until("it is open", () -> WINDOW.session().isOpen() && WINDOW.session().event().getName().equals("Fen rove"));
        assertEquals("Old Mill", WINDOW.ask(() -> WINDOW.session().event().getBases().get(0).getName()));
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo() || WINDOW.session().dirty()));
        WINDOW.ui(() -> WINDOW.session().close());
        WINDOW.open();
    }

    private static Button button(String text) {
        return RunningWorkbench.below(shell("New event"), Button.class).stream()
                .filter(one -> one.getText().replace("&", "").equals(text)).findFirst().orElseThrow();
    }

    /** Those of the step that is shown, in which somebody can write. */
    private static List<Text> fields() {
        return RunningWorkbench.below(shell("New event"), Text.class).stream()
                .filter(text -> text.isVisible() && (text.getStyle() & SWT.READ_ONLY) == 0).toList();
    }
}
