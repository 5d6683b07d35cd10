package org.straddle.ui.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Needs a display, as the workbench does. */
class NewestJobTest {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final Display display = Display.getDefault();
    private final List<String> heard = new ArrayList<>();
    private final NewestJob<String> job = new NewestJob<>(display,
            new NewestJob.Kind("Trial", false, Job.SHORT, "The trial failed."));
    private final NewestJob.Heard<String> ear = new NewestJob.Heard<>() {
        @Override
        public void done(String answer) {
            hear("done " + answer);
        }

        @Override
        public void failed(Throwable failure) {
            hear("failed " + failure.getMessage());
        }

        @Override
        public void stopped() {
            hear("stopped");
        }
    };

    private void hear(String news) {
        assertEquals(display.getThread(), Thread.currentThread());
        heard.add(news);
    }

    @AfterEach
    void end() {
        job.stop();
    }

    @Test
    void onlyTheNewestIsHeardAndOneRunsAtATime() {
        AtomicInteger atOnce = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        AtomicInteger cancelled = new AtomicInteger();
        CountDownLatch begun = new CountDownLatch(1);
        job.run((monitor, news) -> {
            most.accumulateAndGet(atOnce.incrementAndGet(), Math::max);
            begun.countDown();
            while (!monitor.isCanceled()) {
                Thread.onSpinWait();
            }
            cancelled.incrementAndGet();
            atOnce.decrementAndGet();
            return "old";
        }, ear);
        await(begun);
        for (int i = 0; i < 5; i++) {
            String answer = "new " + i;
            job.run((monitor, news) -> {
                most.accumulateAndGet(atOnce.incrementAndGet(), Math::max);
                atOnce.decrementAndGet();
                return answer;
            }, ear);
        }
        assertTrue(job.isRunning());
        until(() -> !job.isRunning());
        settle();
        assertEquals(List.of("done new 4"), heard);
        assertEquals(1, cancelled.get(), "what was under way was asked to end");
        assertEquals(1, most.get());
    }

    @Test
    void everyWayToEndIsHeardOnce() {
        job.run((monitor, news) -> {
            throw new IOException("unreadable");
        }, ear);
        until(() -> !job.isRunning());
        job.run((monitor, news) -> {
            throw new IllegalStateException("a slip");
        }, ear);
        until(() -> !job.isRunning());
        job.run((monitor, news) -> {
            throw new StackOverflowError("too deep");
        }, ear);
        until(() -> !job.isRunning());
        job.run((monitor, news) -> {
            throw new OperationCanceledException();
        }, ear);
        until(() -> !job.isRunning());
        settle();
        assertEquals(List.of("failed unreadable", "failed a slip", "failed too deep", "stopped"), heard);
    }

    @Test
    void aFailureThatNobodyForesawIsLoggedAndAForeseenOneIsNot() {
        // Jobs of other tests may still be ending under the usual name.
        NewestJob<String> job = new NewestJob<>(display, new NewestJob.Kind("Trial of failures", false, Job.SHORT, "The trial failed."));
        List<String> results = new ArrayList<>();
        JobChangeAdapter listener = new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (event.getJob().getName().equals("Trial of failures")) {
                    synchronized (results) {
                        results.add(event.getResult().getSeverity() + " " + event.getResult().getMessage());
                    }
                }
            }
        };
        Job.getJobManager().addJobChangeListener(listener);
        try {
            job.run(monitor -> {
                throw new IllegalStateException("a slip");
            }, answer -> hear("done"), failure -> hear("failed"));
            until(() -> results.size() == 1);
            job.run(monitor -> {
                throw new IOException("unreadable");
            }, answer -> hear("done"), failure -> hear("failed"));
            until(() -> results.size() == 2);
        } finally {
            Job.getJobManager().removeJobChangeListener(listener);
        }
        // The job manager logs every result that is an error.
        assertEquals("4 The trial failed.", results.get(0));
        assertTrue(results.get(1).startsWith("0 "), results.get(1));
    }

    @Test
    void whoeverAsksForTheEndHearsHowItEndedAndWhoStopsHearsNoMore() {
        CountDownLatch begun = new CountDownLatch(1);
        job.run((monitor, news) -> {
            begun.countDown();
            while (!monitor.isCanceled()) {
                Thread.onSpinWait();
            }
            return "best so far";
        }, ear);
        await(begun);
        job.endSoon();
        until(() -> !job.isRunning());
        assertEquals(List.of("done best so far"), heard);
        job.run((monitor, news) -> "unwanted", ear);
        job.stop();
        assertFalse(job.isRunning());
        settle();
        assertEquals(List.of("done best so far"), heard);
    }

    @Test
    void oneThatIsStoppedBeforeItBeganIsToldOfToo() {
        Job.getJobManager().suspend();
        try {
            job.run((monitor, news) -> "never", ear);
            job.endSoon();
            until(() -> !job.isRunning());
        } finally {
            Job.getJobManager().resume();
        }
        assertEquals(List.of("stopped"), heard);
    }

    @Test
    void newsOfTheNewestAloneIsToldMeanwhile() {
        CountDownLatch told = new CountDownLatch(1);
        job.run((monitor, news) -> {
            news.accept(() -> hear("of the old"));
            told.countDown();
            while (!monitor.isCanceled()) {
                Thread.onSpinWait();
            }
            return "old";
        }, ear);
        await(told);
        job.run((monitor, news) -> {
            news.accept(() -> hear("half way"));
            return "new";
        }, ear);
        until(() -> !job.isRunning());
        assertEquals(List.of("half way", "done new"), heard);
    }

    private static void await(CountDownLatch latch) {
        assertTimeoutPreemptively(PATIENCE, () -> assertTrue(latch.await(PATIENCE.toSeconds(), TimeUnit.SECONDS)));
    }

    /** Lets the UI thread hear until something is so. */
    private void until(BooleanSupplier so) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!so.getAsBoolean()) {
            assertTrue(System.nanoTime() < end, () -> "heard only " + heard);
            if (!display.readAndDispatch()) {
                Thread.onSpinWait();
            }
        }
    }

    /** Waits for jobs that were cancelled, and hears what they still say. */
    private void settle() {
        until(() -> Job.getJobManager().find(null).length == 0
                || List.of(Job.getJobManager().find(null)).stream().noneMatch(each -> each.getName().equals("Trial")));
        while (display.readAndDispatch()) {
            continue;
        }
    }
}
