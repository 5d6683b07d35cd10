package org.straddle.ui.sky;

import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import org.straddle.ui.session.UiThread;

/** Works out answers off the UI thread; only the answer to the newest question is of interest. */
final class Latest<Q, A> extends Job {

    private final Display display;
    private final Function<Q, A> work;
    private final Consumer<A> done;
    private final BiConsumer<Q, RuntimeException> failed;
    private volatile Q wanted;

    /**
     * @param done   called on the UI thread
     * @param failed called on the UI thread
     */
    Latest(String name, Display display, Function<Q, A> work, Consumer<A> done,
            BiConsumer<Q, RuntimeException> failed) {
        super(name);
        this.display = display;
        this.work = work;
        this.done = done;
        this.failed = failed;
        setSystem(true);
        setPriority(SHORT);
    }

    void ask(Q question) {
        wanted = question;
        schedule();
    }

    /** An answer that is under way will not be told. */
    void forget() {
        wanted = null;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Q question = wanted;
        if (question == null) {
            return Status.OK_STATUS;
        }
        try {
            A answer = work.apply(question);
            tell(question, () -> done.accept(answer));
        } catch (RuntimeException failure) {
            tell(question, () -> failed.accept(question, failure));
        }
        return Status.OK_STATUS;
    }

    private void tell(Q question, Runnable news) {
        if (!display.isDisposed()) {
            UiThread.later(display, () -> {
                if (wanted == question) {
                    news.run();
                }
            });
        }
    }
}
