package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Chaser;

/** A list of who needs what comes in through the wizard, and the event's form shows it. */
class ChasersTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    private final OpenWizard wizard = new OpenWizard(WINDOW, "Import chasers");

    @AfterEach
    void takeBack() {
        WINDOW.undoAll();
    }

    private void open() {
        WINDOW.ui(() -> DemoWindow.shown("org.straddle.ui.explorer"));
        WINDOW.command("org.straddle.ui.importChasers");
        wizard.awaitOpen();
    }

    private static Map<String, String> chasers() {
        return WINDOW.ask(() -> WINDOW.session().event().getChaserList().stream().collect(Collectors.toMap(Chaser::getCallSign,
                chaser -> chaser.getLocator() + " " + String.join(" ", chaser.getSquares()))));
    }

    private List<String> preview() {
        return WINDOW.ask(() -> IntStream.range(0, wizard.table().getItemCount()).mapToObj(i -> words(wizard.table(), i)).toList());
    }

    private static String words(Table table, int row) {
        TableItem item = table.getItem(row);
        return IntStream.range(0, table.getColumnCount()).mapToObj(item::getText).filter(text -> !text.isEmpty())
                .collect(Collectors.joining("|"));
    }

    @Test
    void aListComesInOnceInOneStep() throws IOException {
        Map<String, String> before = chasers();
        Path file = WINDOW.beside("mails.txt");
        Files.writeString(file, """
                Hello, please work these:
                NEED Q7ZZA JO22ab HP94 IP04
                > need: q7zza JO22ab HP95
                NEED Q7ZZB
                NEED Q7ZZC IO91 HP94
                """);
        open();
        wizard.type(WINDOW.beside("none.txt").toString());
        wizard.press("Next");
        assertFalse(wizard.enabled("Finish"), "there is no such file");
        wizard.type(file.toString());
        wizard.press("Next");
        WINDOW.until("the preview is shown", () -> wizard.table() != null);
        assertEquals(List.of("4|refused|A request needs a call sign, a locator and at least one square.",
                "new|Q7ZZA|needs|HP94 HP95 IP04 (lives in JO22ab)", "new|Q7ZZC|needs|HP94 (lives in IO91)"), preview());
        String told = WINDOW.ask(() -> RunningWorkbench.below(wizard.shell(), Label.class).stream().map(Label::getText)
                .filter(text -> text.contains("new chasers")).findFirst().orElseThrow());
        assertTrue(told.startsWith("2 new chasers, 0 with new wishes, 0 known already; 1 repeated line counted once, 1 line refused"), told);
        assertFalse(wizard.enabled("Finish"), "a line is refused");
        assertEquals(before, chasers(), "nothing changes before the last step");

        wizard.press("Leave out the refused line");
        wizard.press("Finish");
        wizard.awaitClosed();
        assertEquals("JO22ab HP94 HP95 IP04", chasers().get("Q7ZZA"));
        assertEquals(before.size() + 2, chasers().size());
        assertTrue(neededMost().contains("HP94 by"), neededMost());
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(before, chasers(), "one step");
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()));
    }

    /** What the event's form says of who needs what. */
    private static String neededMost() {
        WINDOW.ui(() -> WINDOW.session().reveal(WINDOW.session().event()));
        return WINDOW.ask(() -> RunningWorkbench.below(DemoWindow.page().getWorkbenchWindow().getShell(), Label.class).stream()
                .map(Label::getText).filter(text -> text.contains(" by ") && text.contains("Q7ZZ")).collect(Collectors.joining()));
    }

    @Test
    void wishesAreAddedToThoseThatTheEventKnows() throws IOException {
        Path file = WINDOW.beside("table.csv");
        Files.writeString(file, "call,locator,squares\nQ7ZZA,JO22,HP94\nQ7ZZB,IO91,HP95\n");
        open();
        wizard.type(file.toString());
        wizard.press("Next");
        wizard.press("Finish");
        wizard.awaitClosed();
        Files.writeString(file, "Q7ZZA,JO23,IP04\nQ7ZZB,IO91,HP95\n");
        open();
        wizard.type(file.toString());
        wizard.press("Next");
        WINDOW.until("the preview is shown", () -> wizard.table() != null);
        assertEquals(List.of("changed|Q7ZZA|needs|HP94 (lives in JO22)|HP94 IP04 (lives in JO23)", "unchanged|Q7ZZB"), preview());
        wizard.press("Finish");
        wizard.awaitClosed();
        assertEquals("JO23 HP94 IP04", chasers().get("Q7ZZA"));
        assertEquals("IO91 HP95", chasers().get("Q7ZZB"));
    }

    @Test
    void aFileWithoutARequestGoesNoFurther() throws IOException {
        Map<String, String> before = chasers();
        Path file = WINDOW.beside("letter.txt");
        Files.writeString(file, "NEED everything\n");
        open();
        wizard.type(file.toString());
        wizard.press("Next");
        assertFalse(wizard.enabled("Finish"));
        String told = WINDOW.ask(() -> RunningWorkbench.below(wizard.shell(), Label.class).stream().map(Label::getText)
                .collect(Collectors.joining(" ")));
        assertTrue(told.contains("NEED Q0ABC"), "says what a request looks like: " + told);
        wizard.press("Cancel");
        wizard.awaitClosed();
        assertEquals(before, chasers());
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()));
    }
}
