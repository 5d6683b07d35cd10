package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IViewReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Call;
import org.straddle.model.TeamDay;
import org.straddle.safety.CallLog;

/** The log of calls: it stands in the layout, lists the calls of the demo, and notes one as one step. */
class CallsTest {

    private static final String VIEW = "org.straddle.ui.safety.calls";

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    private static Table rows() {
        return RunningWorkbench.below(DemoWindow.content(VIEW), Table.class).get(0);
    }

    private static long calls() {
        return WINDOW.ask(() -> WINDOW.session().event().getTeams().stream().flatMap(team -> team.getDays().stream())
                .mapToLong(day -> day.getCalls().size()).sum());
    }

    @Test
    void itStandsInTheLayoutFromTheStart() {
        WINDOW.ui(() -> DemoWindow.page().resetPerspective());
        assertTrue(WINDOW.ask(() -> Stream.of(DemoWindow.page().getViewReferences()).map(IViewReference::getId).anyMatch(VIEW::equals)));
    }

    @Test
    void everyCallOfTheDemoHasARow() {
        WINDOW.ui(() -> DemoWindow.shown(VIEW));
        WINDOW.ui(() -> {
            int planned = CallLog.of(WINDOW.session().event(), Instant.now()).entries().size();
            assertTrue(planned > 10);
            assertEquals(planned, rows().getItemCount());
        });
    }

    @Test
    void aCallIsNotedAsOneStep() {
        WINDOW.ui(() -> DemoWindow.shown(VIEW));
        long before = calls();
        WINDOW.ui(() -> {
            rows().setSelection(0);
            rows().notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
        });
        String team = WINDOW.ask(() -> org.straddle.model.naming.Naming.name(CallLog.of(WINDOW.session().event(), Instant.now()).entries().get(0).team()));
        WINDOW.deed(VIEW, "Note a call");
        WINDOW.answer("A call of " + team, "Marlo", "2027-06-18 10:00", "Ines", "all well");
        WINDOW.until("the call is there", () -> calls() == before + 1);
        Call call = WINDOW.ask(() -> WINDOW.session().event().getTeams().stream().flatMap(each -> each.getDays().stream())
                .map(TeamDay::getCalls).filter(all -> !all.isEmpty()).findFirst().orElseThrow().get(0));
        assertEquals("Marlo to Ines: all well", call.getBy() + " to " + call.getTakenBy() + ": " + call.getNote());
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(before, calls());
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");
    }

    @Test
    void withoutAnEventItSaysWhatIsMissing() throws Exception {
        WINDOW.ui(() -> WINDOW.session().close());
        try {
            assertTrue(WINDOW.ask(() -> RunningWorkbench.below(DemoWindow.content(VIEW), Label.class).stream()
                    .map(Label::getText).anyMatch(text -> text.contains("The check-in calls of its teams are then shown here."))));
        } finally {
            WINDOW.ui(() -> Stream.of(DemoWindow.page().getViewReferences()).forEach(DemoWindow.page()::hideView));
            WINDOW.open();
        }
    }
}
