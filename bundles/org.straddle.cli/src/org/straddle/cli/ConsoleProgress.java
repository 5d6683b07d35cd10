package org.straddle.cli;

import java.io.PrintWriter;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.straddle.words.Catalogue;

/**
 * Progress of long work as lines on standard error: nothing in the first second, then at most one line every two
 * seconds, so that short work stays silent and a log stays readable.
 */
final class ConsoleProgress extends NullProgressMonitor {

    private static final Catalogue TEXTS = Catalogue.of(ConsoleProgress.class);

    private static final long FIRST_AFTER_NANOS = 1_000_000_000L;
    private static final long EVERY_NANOS = 2_000_000_000L;

    private final PrintWriter err;
    private long next = System.nanoTime() + FIRST_AFTER_NANOS;
    /** What is told where the work does not name itself. */
    private final String ownName;
    private String task;
    private double total;
    private double done;

    ConsoleProgress(PrintWriter err) {
        this(err, TEXTS.text("consoleProgress.works"));
    }

    ConsoleProgress(PrintWriter err, String ownName) {
        this.err = err;
        this.ownName = ownName;
        task = ownName;
    }

    @Override
    public synchronized void beginTask(String name, int totalWork) {
        setTaskName(name);
        total = totalWork;
        done = 0;
    }

    @Override
    public synchronized void setTaskName(String name) {
        task = name == null || name.isBlank() ? ownName : name;
    }

    @Override
    public synchronized void worked(int work) {
        internalWorked(work);
    }

    @Override
    public synchronized void internalWorked(double work) {
        done += work;
        long now = System.nanoTime();
        if (now < next || total <= 0) {
            return;
        }
        next = now + EVERY_NANOS;
        err.println(TEXTS.text("consoleProgress.text", "task", task,
                "done", Math.min(100, Math.round(100 * done / total))));
        err.flush();
    }

    @Override
    public synchronized void subTask(String name) {
        long now = System.nanoTime();
        if (now >= next && name != null && !name.isBlank()) {
            next = now + EVERY_NANOS;
            err.println(TEXTS.text("consoleProgress.name", "name", name));
            err.flush();
        }
    }
}
