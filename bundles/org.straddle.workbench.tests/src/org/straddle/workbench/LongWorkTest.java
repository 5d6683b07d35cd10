package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Spinner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Stop;
import org.straddle.ui.session.Computed;

/** Work that goes on behind the window, and stops when somebody cancels it. */
class LongWorkTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @Test
    void aCancelledComputationLeavesTheLastResultsAndAnotherCanBeStarted() {
        Computed last = WINDOW.ask(() -> WINDOW.session().computed().orElseThrow());
        // The window takes over no result before this is done: the computation cannot be over for it.
        WINDOW.ui(() -> {
            WINDOW.session().computeNow();
            jobs("Passes and checks").forEach(Job::cancel);
        });
        WINDOW.until("the computation has stopped", () -> !WINDOW.session().computing());
        assertSame(last, WINDOW.ask(() -> WINDOW.session().computed().orElseThrow()));
        WINDOW.ui(() -> DemoWindow.shown("org.straddle.ui.findings"));
        WINDOW.command("org.straddle.ui.check");
        WINDOW.until("it was computed anew",
                () -> !WINDOW.session().computing() && WINDOW.session().computed().orElseThrow() != last);
        assertEquals(last.findings().size(), WINDOW.ask(() -> WINDOW.findings().size()));
    }

    @Test
    void aSearchedPlanIsOfferedPutInAndTakenBack() {
        List<Stop> draft = WINDOW.ask(() -> List.copyOf(WINDOW.session().event().getPlan().getStops()));
        WINDOW.ui(() -> DemoWindow.shown("org.straddle.ui.findings"));
        WINDOW.command("org.straddle.ui.propose");
        WINDOW.answer("Search for a plan", dialog -> RunningWorkbench.below(dialog, Spinner.class).get(0)
                .setSelection(1));
        WINDOW.answer("Plan");
        assertNotEquals(draft, WINDOW.ask(() -> List.copyOf(WINDOW.session().event().getPlan().getStops())));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(draft, WINDOW.ask(() -> List.copyOf(WINDOW.session().event().getPlan().getStops())));
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");
    }

    private static Stream<Job> jobs(String name) {
        return Stream.of(Job.getJobManager().find(null)).filter(job -> job.getName().equals(name));
    }
}
