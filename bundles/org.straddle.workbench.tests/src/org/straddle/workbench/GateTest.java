package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableCursor;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.check.gate.DepartureGate;
import org.straddle.check.gate.GateItem;
import org.straddle.check.gate.GateKind;
import org.straddle.model.GateWord;

/** The departure gates of all teams in their view, worked by keys. */
class GateTest {

    private static final String VIEW = "org.straddle.ui.safety.gate";

    /** Rows of the table above the items. */
    private static final int HEAD_ROWS = 2;

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @AfterEach
    void takeAllBack() {
        WINDOW.undoAll();
        WINDOW.ui(() -> WINDOW.session().computeNow());
        WINDOW.computed();
    }

    private static DepartureGate gate() {
        return WINDOW.session().computed().orElseThrow().gates().all().get(0);
    }

    private static GateItem.State state(GateKind kind) {
        return gate().item(kind).state();
    }

    private static TableCursor cursor() {
        return RunningWorkbench.below(DemoWindow.content(VIEW), TableCursor.class).get(0);
    }

    private static String cell(GateKind kind) {
        return RunningWorkbench.below(DemoWindow.content(VIEW), Table.class).get(0).getItem(HEAD_ROWS + kind.ordinal()).getText(1);
    }

    /** Goes to the cell of the first gate and presses a key there; does not wait for a dialog. */
    private static void press(GateKind kind, int type, char key) {
        WINDOW.ui(() -> {
            cursor().setSelection(HEAD_ROWS + kind.ordinal(), 1);
            cursor().notifyListeners(SWT.Selection, new Event());
        });
        Event pressed = new Event();
        pressed.character = key;
        pressed.keyCode = key;
        WINDOW.later(() -> cursor().notifyListeners(type, pressed));
    }

    private static void sign(String name, String reason) {
        WINDOW.answer("Team 1: " + WINDOW.ask(() -> gate().item(GateKind.BRIEFED).name()), name, reason);
    }

    @Test
    void everyGateHasAColumnAndEveryItemARowWithItsState() {
        Table table = WINDOW.ask(() -> RunningWorkbench.below(DemoWindow.content(VIEW), Table.class).get(0));
        WINDOW.ui(() -> {
            var gates = WINDOW.session().computed().orElseThrow().gates().all();
            assertEquals(gates.size() + 1, table.getColumnCount());
            assertEquals(HEAD_ROWS + GateKind.values().length, table.getItemCount());
            for (int at = 0; at < gates.size(); at++) {
                for (GateItem item : gates.get(at).items()) {
                    assertEquals(item.stateWord(), table.getItem(HEAD_ROWS + item.kind().ordinal()).getText(at + 1));
                    assertTrue(table.getItem(HEAD_ROWS + item.kind().ordinal()).getImage(at + 1) != null, "a symbol beside the word");
                }
            }
        });
    }

    @Test
    void spaceSettlesAnItemByNameAndUndoOpensItAgain() {
        press(GateKind.BRIEFED, SWT.KeyDown, ' ');
        sign("Q0AAR", "");
        WINDOW.until("it is settled", () -> state(GateKind.BRIEFED) == GateItem.State.SETTLED);
        assertEquals("settled", WINDOW.ask(() -> cell(GateKind.BRIEFED)));
        WINDOW.ui(() -> WINDOW.session().undo());
        WINDOW.until("it is open again", () -> state(GateKind.BRIEFED) == GateItem.State.OPEN);
        assertEquals("open", WINDOW.ask(() -> cell(GateKind.BRIEFED)));
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()));
    }

    @Test
    void anOverrideKeepsItsNameAndReasonAndIsTakenBackByDelete() {
        press(GateKind.BRIEFED, SWT.Selection, '\0');
        WINDOW.deed(VIEW, "Override with a reason");
        sign("Q5GLM", "They were briefed at home");
        WINDOW.until("it is overridden", () -> state(GateKind.BRIEFED) == GateItem.State.OVERRIDDEN);
        GateWord word = WINDOW.ask(() -> gate().teamDay(WINDOW.session().event()).orElseThrow().getGateWords().get(0));
        assertEquals("Q5GLM: They were briefed at home", word.getBy() + ": " + word.getReason());
        press(GateKind.BRIEFED, SWT.KeyDown, SWT.DEL);
        WINDOW.until("it is open again", () -> state(GateKind.BRIEFED) == GateItem.State.OPEN);
    }

    @Test
    void theTextSaysWhyAndWhoAndEnterOpensTheThing() {
        press(GateKind.PACKED, SWT.Selection, '\0');
        WINDOW.until("it says who settles it", () -> RunningWorkbench.below(DemoWindow.content(VIEW), Text.class).stream()
                .anyMatch(text -> text.getText().contains(gate().item(GateKind.PACKED).sentence())
                        && text.getText().contains(gate().item(GateKind.PACKED).settledBy())));
        WINDOW.ui(() -> DemoWindow.page().closeAllEditors(false));
        press(GateKind.PACKED, SWT.DefaultSelection, '\0');
        WINDOW.until("the kit is open", () -> DemoWindow.page().getActiveEditor() != null);
    }
}
