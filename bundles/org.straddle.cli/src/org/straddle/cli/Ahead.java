package org.straddle.cli;

import java.util.Set;
import java.util.concurrent.CompletableFuture;

import org.straddle.check.gate.Gates;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.outlook.Outlook;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

/**
 * Whatever a program does first takes several times as long as the next time. So an event without anything is read and
 * checked on another processor, while this one describes the command line and then reads its own event. Nothing comes of
 * it but classes that are loaded.
 */
final class Ahead {

    private static final Set<String> WITHOUT_EVENT = Set.of("demo", "guide");
    private static final Set<String> WITH_FINDINGS = Set.of("check", "publish");

    private static volatile CompletableFuture<Event> read = CompletableFuture.completedFuture(null);

    private Ahead() {
    }

    static void begin(String... arguments) {
        if (arguments.length < 2 || WITHOUT_EVENT.contains(arguments[0]) || Runtime.getRuntime().availableProcessors() < 2) {
            return;
        }
        CompletableFuture<Event> reading = new CompletableFuture<>();
        read = reading;
        Thread thread = new Thread(() -> {
            try {
                reading.complete(EventFolder.rehearsed());
            } catch (EventFolderException | RuntimeException | Error e) {
                reading.completeExceptionally(e);
            }
            if (WITH_FINDINGS.contains(arguments[0])) {
                reading.thenAccept(Ahead::check);
            }
        }, "ahead");
        thread.setDaemon(true);
        thread.start();
    }

    /** Two threads that read for the first time would wait for each other. */
    static void awaitReading() {
        read.exceptionally(failure -> null).join();
    }

    private static void check(Event event) {
        Outlook outlook = Outlook.of(event, null);
        Gates.of(outlook, Checks.standard().run(outlook, null)).summary();
    }
}
