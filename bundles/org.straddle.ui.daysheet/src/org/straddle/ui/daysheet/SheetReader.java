package org.straddle.ui.daysheet;

import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.straddle.ui.daysheet.sheet.DaySheet;
import org.straddle.ui.daysheet.sheet.LightMemory;
import org.straddle.ui.session.Computed;

/** Reads sheets off the UI thread, because the light of many days takes a while; only the newest is of interest. */
final class SheetReader extends Job {

    private final LightMemory light = new LightMemory();
    private final Consumer<Reading> done;
    private volatile Computed wanted;

    /** @param done called on the job's thread */
    SheetReader(Consumer<Reading> done) {
        super("Day sheet");
        this.done = done;
        setSystem(true);
        setPriority(SHORT);
    }

    void read(Computed computed) {
        wanted = computed;
        schedule();
    }

    /** A reading that is under way will not be told. */
    void forget() {
        wanted = null;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Computed computed = wanted;
        if (computed == null) {
            return Status.OK_STATUS;
        }
        Reading reading = new Reading(computed, DaySheet.of(computed.outlook(), computed.findings(), light));
        if (wanted == computed) {
            done.accept(reading);
        }
        return Status.OK_STATUS;
    }
}
