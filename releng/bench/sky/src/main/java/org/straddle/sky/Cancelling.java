package org.straddle.sky;

import java.util.concurrent.CountDownLatch;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.straddle.sky.prediction.PassSearch;

/** How long a large search goes on after it was cancelled, at various times after its start. */
final class Cancelling {

    static final int TIMES = 20;

    private Cancelling() {
    }

    static double worstMs() throws InterruptedException {
        Rove rove = SkyBench.MASKED;
        double worst = 0;
        for (int i = 0; i < TIMES; i++) {
            PassSearch fresh = new PassSearch();
            NullProgressMonitor monitor = new NullProgressMonitor();
            CountDownLatch begun = new CountDownLatch(1);
            Thread search = new Thread(() -> {
                begun.countDown();
                try {
                    fresh.find(rove.window(), rove.birds(), rove.sites(), monitor);
                    throw new IllegalStateException("The search was over before it was cancelled");
                } catch (OperationCanceledException e) {
                    // As it should be.
                }
            });
            search.start();
            begun.await();
            Thread.sleep(20 + 25 * i);
            long cancelled = System.nanoTime();
            monitor.setCanceled(true);
            search.join();
            worst = Math.max(worst, (System.nanoTime() - cancelled) / 1e6);
        }
        return worst;
    }
}
