package org.straddle.ui.session;

import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;

/** Runs once a job is over, however it ended. */
final class WhenEnded extends JobChangeAdapter {

    private final Runnable then;

    WhenEnded(Runnable then) {
        this.then = then;
    }

    @Override
    public void done(IJobChangeEvent event) {
        then.run();
    }
}
