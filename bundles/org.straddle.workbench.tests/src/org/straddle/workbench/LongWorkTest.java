package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Stop;
import org.straddle.ui.session.Computed;

/** Work that goes on behind the window, and stops when somebody cancels it. */
class LongWorkTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    private static final String PLANNING = "org.straddle.ui.planning";

    @Test
    void aCancelledComputationLeavesTheLastResultsAndAnotherCanBeStarted() {
        Computed last = WINDOW.ask(() -> WINDOW.session().computed().orElseThrow());
        // With no job beginning meanwhile, the computation cannot be over before it is cancelled.
        Job.getJobManager().suspend();
        try {
            WINDOW.ui(() -> {
                WINDOW.session().computeNow();
                jobs("Passes and checks").forEach(Job::cancel);
            });
        } finally {
            Job.getJobManager().resume();
        }
        WINDOW.until("the computation has stopped", () -> !WINDOW.session().computing());
        assertTrue(last == WINDOW.ask(() -> WINDOW.session().computed().orElseThrow()), "the results of before");
        WINDOW.ui(() -> DemoWindow.shown("org.straddle.ui.findings"));
        WINDOW.command("org.straddle.ui.check");
        WINDOW.until("it was computed anew",
                () -> !WINDOW.session().computing() && WINDOW.session().computed().orElseThrow() != last);
        assertEquals(last.findings().size(), WINDOW.ask(() -> WINDOW.findings().size()));
    }

    @Test
    void aSearchedPlanIsOfferedPutInAndTakenBack() {
        List<Stop> draft = WINDOW.ask(() -> List.copyOf(WINDOW.session().event().getPlan().getStops()));
        WINDOW.ui(() -> RunningWorkbench.below(DemoWindow.content(PLANNING), Spinner.class).get(0).setSelection(1));
        WINDOW.ui(() -> DemoWindow.shown("org.straddle.ui.findings"));
        WINDOW.command("org.straddle.ui.propose"); // shows the view and searches
        WINDOW.until("a plan is offered", () -> button("Use this plan").isEnabled());
        assertEquals(draft, WINDOW.ask(() -> List.copyOf(WINDOW.session().event().getPlan().getStops())), "not yet in");
        press("Use this plan");
        assertNotEquals(draft, WINDOW.ask(() -> List.copyOf(WINDOW.session().event().getPlan().getStops())));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(draft, WINDOW.ask(() -> List.copyOf(WINDOW.session().event().getPlan().getStops())));
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");
    }

    /** A search without an end in sight hands over its best plan when it is stopped. */
    @Test
    void aStoppedSearchOffersTheBestSoFar() {
        WINDOW.ui(() -> RunningWorkbench.below(DemoWindow.content(PLANNING), Spinner.class).get(0).setSelection(3600));
        WINDOW.command("org.straddle.ui.propose");
        WINDOW.until("there is a plan", () -> RunningWorkbench.below(DemoWindow.content(PLANNING), Label.class).stream()
                .anyMatch(label -> label.getText().startsWith("Worth")));
        press("Stop");
        WINDOW.until("it is offered", () -> button("Use this plan").isEnabled());
        press("Discard it");
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "nothing was changed");
    }

    private static Button button(String text) {
        return RunningWorkbench.below(DemoWindow.content(PLANNING), Button.class).stream()
                .filter(button -> button.getText().replace("&", "").equals(text)).findFirst().orElseThrow();
    }

    private static void press(String text) {
        WINDOW.ui(() -> button(text).notifyListeners(SWT.Selection, new Event()));
    }

    private static Stream<Job> jobs(String name) {
        return Stream.of(Job.getJobManager().find(null)).filter(job -> job.getName().equals(name));
    }
}
