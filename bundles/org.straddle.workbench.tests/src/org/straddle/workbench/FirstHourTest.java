package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Team;
import org.straddle.ui.workbench.OpenRecent;
import org.straddle.ui.workbench.PlanPerspective;
import org.straddle.ui.workbench.ShowViews;
import org.straddle.ui.workbench.StartPerspective;

/** What stood in the way of somebody who uses the window for the first time. */
class FirstHourTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

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
