package org.straddle.workbench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.straddle.ui.workbench.StraddleWorkbench;

/** The real workbench on a thread of its own, so that tests can look at it from theirs. */
final class RunningWorkbench implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(90);
    /** Between two looks at what is waited for: short at first, then longer, or looking would keep the thread from working. */
    private static final long FIRST_PAUSE_MS = 2;
    private static final long LONGEST_PAUSE_MS = 50;

    private final CountDownLatch started = new CountDownLatch(1);
    private final AtomicReference<Throwable> failure = new AtomicReference<>();
    private final AtomicReference<Throwable> later = new AtomicReference<>();
    private final Thread thread = new Thread(this::run, "workbench");
    private Display display;

    static RunningWorkbench start() {
        RunningWorkbench running = new RunningWorkbench();
        running.thread.setDaemon(true);
        running.thread.start();
        try {
            if (running.started.await(PATIENCE.toSeconds(), TimeUnit.SECONDS) && running.failure.get() == null) {
                return running;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        throw new IllegalStateException("The workbench did not start", running.failure.get());
    }

    private void run() {
        try {
            display = PlatformUI.createDisplay();
            PlatformUI.createAndRunWorkbench(display, new WithoutArguments());
            display.dispose();
        } catch (Throwable e) {
            failure.set(e);
            started.countDown();
        }
    }

    void ui(Runnable action) {
        ask(() -> {
            action.run();
            return null;
        });
    }

    /** Asks on the UI thread; a failure there fails here. */
    <T> T ask(Supplier<T> question) {
        AtomicReference<T> answer = new AtomicReference<>();
        AtomicReference<Throwable> failed = new AtomicReference<>();
        display.syncExec(() -> {
            try {
                answer.set(question.get());
            } catch (Throwable e) {
                failed.set(e);
            }
        });
        if (failed.get() != null) {
            throw new AssertionError("on the UI thread: " + failed.get(), failed.get());
        }
        return answer.get();
    }

    /** Runs on the UI thread without waiting for it; a failure there fails the next {@link #until}. */
    void later(Runnable action) {
        display.asyncExec(() -> {
            try {
                action.run();
            } catch (Throwable e) {
                later.set(e);
            }
        });
    }

    /** Waits until something holds on the UI thread. */
    void until(String what, BooleanSupplier holds) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        long pauseMs = FIRST_PAUSE_MS;
        while (!ask(holds::getAsBoolean)) {
            Throwable failed = later.getAndSet(null);
            if (failed != null) {
                throw new AssertionError("on the UI thread: " + failed, failed);
            }
            if (System.nanoTime() > end) {
                throw new AssertionError("waited in vain until " + what);
            }
            try {
                Thread.sleep(pauseMs);
                pauseMs = Math.min(2 * pauseMs, LONGEST_PAUSE_MS);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    /** Every control of a kind below another; call it on the UI thread. */
    static <T extends Control> List<T> below(Control control, Class<T> kind) {
        List<T> found = new ArrayList<>();
        if (kind.isInstance(control)) {
            found.add(kind.cast(control));
        }
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                found.addAll(below(child, kind));
            }
        }
        return found;
    }

    @Override
    public void close() throws InterruptedException {
        display.syncExec(() -> PlatformUI.getWorkbench().close());
        thread.join(PATIENCE.toMillis());
    }

    /** The advisor of the product, except that arguments of the test runner are not taken for an event to open. */
    private final class WithoutArguments extends WorkbenchAdvisor {

        private final StraddleWorkbench product = new StraddleWorkbench();

        @Override
        public void initialize(IWorkbenchConfigurer configurer) {
            product.initialize(configurer);
            configurer.setSaveAndRestore(false);
        }

        @Override
        public String getInitialWindowPerspectiveId() {
            return product.getInitialWindowPerspectiveId();
        }

        @Override
        public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
            return product.createWorkbenchWindowAdvisor(configurer);
        }

        @Override
        public void postStartup() {
            started.countDown();
        }

        @Override
        public void postShutdown() {
            product.postShutdown();
        }
    }
}
