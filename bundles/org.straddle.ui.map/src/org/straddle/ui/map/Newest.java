package org.straddle.ui.map;

import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import org.straddle.ui.session.UiThread;

/**
 * One kind of work off the UI thread, of which only the newest matters: asking again cancels what is under way. Called
 * and answering on the UI thread.
 */
final class Newest<T> {

    /** What takes long; may stop with an {@link OperationCanceledException}. */
    interface Work<T> {
        T run(IProgressMonitor monitor) throws Exception;
    }

    private final String name;
    private final Display display;
    private final boolean told;
    private Job job;

    /** @param told whether the user sees it in the list of running work, and can stop it there */
    Newest(String name, Display display, boolean told) {
        this.name = name;
        this.display = display;
        this.told = told;
    }

    void run(Work<T> work, Consumer<T> done, BiConsumer<String, Throwable> failed) {
        stop();
        Job[] own = new Job[1];
        own[0] = new Job(name) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    T answer = work.run(monitor);
                    tell(own[0], () -> done.accept(answer));
                } catch (OperationCanceledException stopped) {
                    tell(own[0], () -> { });
                    return Status.CANCEL_STATUS;
                } catch (Exception failure) {
                    tell(own[0], () -> failed.accept(name, failure));
                }
                return Status.OK_STATUS;
            }
        };
        job = own[0];
        job.setSystem(!told);
        job.setPriority(Job.SHORT);
        job.schedule();
    }

    boolean isRunning() {
        return job != null;
    }

    void stop() {
        if (job != null) {
            job.cancel();
            job = null;
        }
    }

    private void tell(Job from, Runnable news) {
        if (!display.isDisposed()) {
            UiThread.later(display, () -> {
                if (job == from) {
                    job = null;
                    news.run();
                }
            });
        }
    }
}
