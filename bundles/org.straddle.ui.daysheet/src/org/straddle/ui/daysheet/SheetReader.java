package org.straddle.ui.daysheet;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.LightMemory;
import org.straddle.model.Event;
import org.straddle.outlook.EarthSearch;
import org.straddle.outlook.Outlook;
import org.straddle.store.KeptFolder;
import org.straddle.ui.session.Computed;

/**
 * Reads sheets off the UI thread, because the light of many days takes a while; only the newest is of interest.
 *
 * <p>After an edit it can read ahead of the checks: the passes are remembered, so what was dragged stands in its new
 * place at once, with the findings from before until the new ones are there.
 */
final class SheetReader extends Job {

    /** What there is to read; a snapshot of its own when the computation is behind the event. */
    private record Wanted(Computed computed, Optional<Event> newer, KeptFolder elements) {
    }

    private final LightMemory light = new LightMemory();
    private final Consumer<Reading> done;
    private volatile Wanted wanted;

    /** @param done called on the job's thread */
    SheetReader(Consumer<Reading> done) {
        super("Day sheet");
        this.done = done;
        setSystem(true);
        setPriority(INTERACTIVE);
    }

    void read(Computed computed) {
        read(new Wanted(computed, Optional.empty(), null));
    }

    /** Reads a newer snapshot with the findings of the last computation. */
    void readAhead(Event newer, Computed last, KeptFolder elements) {
        read(new Wanted(last, Optional.of(newer), elements));
    }

    /** A reading that is under way will not be told. */
    void forget() {
        wanted = null;
    }

    private void read(Wanted next) {
        wanted = next;
        schedule();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Wanted now = wanted;
        if (now == null) {
            return Status.OK_STATUS;
        }
        try {
            Reading reading = reading(now, monitor);
            if (wanted == now) {
                done.accept(reading);
            }
        } catch (IOException failure) {
            // The computation meets the same file and tells the user.
            return Status.CANCEL_STATUS;
        }
        return Status.OK_STATUS;
    }

    private Reading reading(Wanted now, IProgressMonitor monitor) throws IOException {
        Computed computed = now.computed();
        if (now.newer().isPresent()) {
            Event newer = now.newer().get();
            computed = new Computed(newer, Outlook.of(newer, EarthSearch.in(now.elements()), monitor),
                    computed.findings());
        }
        return new Reading(computed, DaySheet.of(computed.outlook(), computed.findings(), light),
                now.newer().isPresent());
    }
}
