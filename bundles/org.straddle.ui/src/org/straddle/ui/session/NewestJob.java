package org.straddle.ui.session;

import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;

/**
 * One kind of work off the UI thread, of which only the newest matters. Whoever asks again cancels what is under way, and
 * hears no more of it; one runs at a time. Asked from the UI thread, and answers there. How a run ended is told exactly
 * once, also when the user stopped it; what nobody foresaw goes to the log besides.
 */
public final class NewestJob<T> {

    /**
     * @param isShown    whether the user sees it in the list of running work, and can stop it there; a failure that
     *                   nobody foresaw is then shown to the user too, not only logged
     * @param priority   of {@link Job}
     * @param whenFailed what is said of a failure that nobody foresaw
     */
    public record Kind(String name, boolean isShown, int priority, String whenFailed) {
    }

    /** What takes long; may stop with an {@link OperationCanceledException}. */
    @FunctionalInterface
    public interface Work<T> {

        /** @param news takes what is to be told on the UI thread meanwhile, while this is still the newest */
        T run(IProgressMonitor monitor, Consumer<Runnable> news) throws Exception;
    }

    /** Work that tells nothing before its end. */
    @FunctionalInterface
    public interface QuietWork<T> {
        T run(IProgressMonitor monitor) throws Exception;
    }

    /** Hears on the UI thread how a run ended. */
    public interface Heard<T> {

        void done(T answer);

        /** @param failure thrown by the work; it is logged already unless the work declares it */
        void failed(Throwable failure);

        /** The user stopped it. */
        default void stopped() {
        }
    }

    private final Display display;
    private final Kind kind;
    private final ISchedulingRule oneAtATime = new OneAtATime();
    private Run newest;

    public NewestJob(Display display, Kind kind) {
        this.display = display;
        this.kind = kind;
    }

    public void run(Work<T> work, Heard<T> heard) {
        stop();
        newest = new Run(work, heard);
        newest.schedule();
    }

    /** The same for work of which nothing is to be heard before its end, or when the user stops it. */
    public void run(QuietWork<T> work, Consumer<T> done, Consumer<Throwable> failed) {
        run((monitor, news) -> work.run(monitor), new Heard<>() {
            @Override
            public void done(T answer) {
                done.accept(answer);
            }

            @Override
            public void failed(Throwable failure) {
                failed.accept(failure);
            }
        });
    }

    public boolean isRunning() {
        return newest != null;
    }

    /** Ends what runs; nothing more is heard of it. */
    public void stop() {
        if (newest != null) {
            newest.cancel();
            newest = null;
        }
    }

    /** Asks what runs to end soon; how it ended is told. */
    public void endSoon() {
        if (newest != null) {
            newest.cancel();
        }
    }

    private final class Run extends Job {

        private final Work<T> work;
        private final Heard<T> heard;

        Run(Work<T> work, Heard<T> heard) {
            super(kind.name());
            this.work = work;
            this.heard = heard;
            setSystem(!kind.isShown());
            setPriority(kind.priority());
            setRule(oneAtATime);
            addJobChangeListener(new JobChangeAdapter() {
                @Override
                public void done(IJobChangeEvent event) {
                    // One that was stopped before it began has told nothing yet.
                    end(heard::stopped);
                }
            });
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            try {
                T answer = work.run(monitor, this::tell);
                end(() -> heard.done(answer));
                return Status.OK_STATUS;
            } catch (OperationCanceledException stopped) {
                end(heard::stopped);
                return Status.CANCEL_STATUS;
            } catch (RuntimeException | Error unforeseen) {
                end(() -> heard.failed(unforeseen));
                return Status.error(kind.whenFailed(), unforeseen);
            } catch (Exception foreseen) {
                end(() -> heard.failed(foreseen));
                return Status.OK_STATUS;
            }
        }

        private void end(Runnable news) {
            tell(() -> {
                newest = null;
                news.run();
            });
        }

        private void tell(Runnable news) {
            UiThread.later(display, () -> {
                if (newest == this) {
                    news.run();
                }
            });
        }
    }

    private static final class OneAtATime implements ISchedulingRule {
        @Override
        public boolean contains(ISchedulingRule rule) {
            return rule == this;
        }

        @Override
        public boolean isConflicting(ISchedulingRule rule) {
            return rule == this;
        }
    }
}
