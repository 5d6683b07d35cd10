package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.ui.session.EventSession;

/** The day sheet as hands use it: with the mouse and with keys, each edit one step of undo. */
class DaySheetEditTest {

    private static final String VIEW = "org.straddle.ui.daysheet.view";

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    private Stop stop;
    private Instant arrival;
    private Instant departure;

    private static EventSession session() {
        return WINDOW.session();
    }

    @BeforeEach
    void chooseAStop() {
        WINDOW.undoAll();
        WINDOW.computed();
        stop = WINDOW.ask(() -> session().event().getPlan().getStops().stream().filter(s -> s.getTeam().getNumber() == 2)
                .findFirst().orElseThrow());
        arrival = stop.getArrival();
        departure = stop.getDeparture();
        WINDOW.choose("org.straddle.ui.explorer", List.of(stop));
        WINDOW.ui(() -> canvas().setFocus());
        WINDOW.until("the day sheet is the active part",
                () -> DemoWindow.page().getActivePart().getSite().getId().equals(VIEW));
    }

    private static Canvas canvas() {
        return RunningWorkbench.below(DemoWindow.content(VIEW), Canvas.class).stream()
                .filter(canvas -> (canvas.getStyle() & SWT.H_SCROLL) != 0).findFirst().orElseThrow();
    }

    private static void mouse(int type, int x, int y) {
        mouse(canvas(), type, x, y);
    }

    private static void mouse(Canvas canvas, int type, int x, int y) {
        Event event = new Event();
        event.button = type == SWT.MouseMove ? 0 : 1;
        event.x = x;
        event.y = y;
        canvas.notifyListeners(type, event);
    }

    private static void key(String name) {
        WINDOW.command("org.straddle.ui.daysheet." + name);
    }

    private void undoOnceBringsItBack() {
        WINDOW.ui(() -> session().undo());
        assertEquals(arrival, stop.getArrival());
        assertEquals(departure, stop.getDeparture());
        assertFalse(WINDOW.ask(() -> session().canUndo()), "one step");
    }

    @Test
    void keysMoveAndStretch() {
        key("later");
        WINDOW.until("it is moved", () -> stop.getArrival().equals(arrival.plusSeconds(60)));
        assertEquals(departure.plusSeconds(60), stop.getDeparture());
        undoOnceBringsItBack();
        key("endLater");
        WINDOW.until("it is stretched", () -> stop.getDeparture().equals(departure.plusSeconds(60)));
        assertEquals(arrival, stop.getArrival());
        undoOnceBringsItBack();
    }

    /** Each press counts, though the sheet is read anew after each. */
    @Test
    void keysThatFollowFastAreNotLost() {
        for (int i = 0; i < 5; i++) {
            key("muchEarlier");
        }
        WINDOW.until("it is moved five times", () -> stop.getArrival().equals(arrival.minus(Duration.ofMinutes(25))));
    }

    @Test
    void aStopIsHandedOverAndBack() {
        key("nextTeam");
        WINDOW.until("team 3 has it", () -> stop.getTeam().getNumber() == 3);
        key("previousTeam");
        WINDOW.until("team 2 has it", () -> stop.getTeam().getNumber() == 2);
    }

    @Test
    void whatIsPinnedStaysUntilItIsLetGo() {
        key("pin");
        WINDOW.until("it is pinned", () -> stop.isPinned());
        key("later");
        key("pin");
        WINDOW.until("it is let go", () -> !stop.isPinned());
        assertEquals(arrival, stop.getArrival());
        key("later");
        WINDOW.until("it is moved", () -> stop.getArrival().isAfter(arrival));
    }

    @Test
    void aStopIsSplitAndDeleted() {
        int before = WINDOW.ask(() -> session().event().getPlan().getStops().size());
        key("split");
        WINDOW.until("it is split", () -> session().event().getPlan().getStops().size() == before + 1);
        assertTrue(stop.getDeparture().isBefore(departure));
        WINDOW.command("org.eclipse.ui.edit.delete");
        WINDOW.until("it is gone", () -> session().event().getPlan().getStops().size() == before
                && !session().event().getPlan().getStops().contains(stop));
    }

    @Test
    void aTurnIsAddedFromTheListOfWhatCanBeWorked() {
        List<Turn> before = WINDOW.ask(() -> List.copyOf(stop.getTurns()));
        key("addTurn");
        WINDOW.answer("Add a turn", dialog -> { });
        WINDOW.until("there is one more", () -> stop.getTurns().size() == before.size() + 1);
        WINDOW.ui(() -> session().undo());
        assertEquals(before, WINDOW.ask(() -> List.copyOf(stop.getTurns())));
    }

    @Test
    void aBanIsOneStepWithWhatItTakesOut() {
        key("ban");
        WINDOW.answer("Ban", "the road is closed");
        WINDOW.until("there is a ban", () -> session().event().getPlan().getBans().size() == 1);
        assertEquals("the road is closed", WINDOW.ask(() -> session().event().getPlan().getBans().get(0).getReason()));
        assertFalse(WINDOW.ask(() -> session().event().getPlan().getStops().contains(stop)));
        WINDOW.ui(() -> session().undo());
        assertTrue(WINDOW.ask(() -> session().event().getPlan().getStops().contains(stop)));
        assertEquals(0, WINDOW.ask(() -> session().event().getPlan().getBans().size()));
    }

    /** The mouse finds the stop by its tooltip. */
    @Test
    void theMouseDragsAndEscapePutsBack() {
        int[] place = WINDOW.ask(this::place);
        WINDOW.ui(() -> drag(place, 60));
        WINDOW.ui(() -> {
            Event escape = new Event();
            escape.keyCode = SWT.ESC;
            canvas().notifyListeners(SWT.KeyDown, escape);
            mouse(SWT.MouseUp, place[0] + 60, place[1]);
        });
        assertFalse(WINDOW.ask(() -> session().canUndo()), "nothing was changed");
        WINDOW.ui(() -> {
            drag(place, 60);
            mouse(SWT.MouseUp, place[0] + 60, place[1]);
        });
        assertNotEquals(arrival, WINDOW.ask(() -> stop.getArrival()));
        assertEquals(Duration.between(arrival, departure),
                WINDOW.ask(() -> Duration.between(stop.getArrival(), stop.getDeparture())));
        undoOnceBringsItBack();
    }

    private static void drag(int[] place, int by) {
        mouse(SWT.MouseDown, place[0], place[1]);
        for (int x = 0; x <= by; x += 10) {
            mouse(SWT.MouseMove, place[0] + x, place[1]);
        }
    }

    /** A point in the middle of the selected stop, above its turns. */
    private int[] place() {
        Canvas canvas = canvas();
        int width = canvas.getClientArea().width;
        for (int y = 0; y < canvas.getClientArea().height; y += 4) {
            for (int x = 0; x < width; x += 4) {
                mouse(canvas, SWT.MouseMove, x, y);
                String words = canvas.getToolTipText();
                if (words != null && words.lines().findFirst().orElse("").contains(" at " + stop.getSite().getName() + ",")
                        && canvas.getCursor() == null) {
                    return new int[] {x + 4, y};
                }
            }
        }
        throw new AssertionError("the stop is not on the sheet");
    }
}
