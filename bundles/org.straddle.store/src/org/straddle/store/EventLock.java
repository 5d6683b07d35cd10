package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import org.straddle.words.Catalogue;

/**
 * Keeps two programs from writing to one event folder. The system drops the lock when the program ends, however it
 * ends, so a left-over lock file never shuts anybody out.
 */
final class EventLock implements AutoCloseable {

    private static final Catalogue TEXTS = Catalogue.of(EventLock.class);

    static final String FILE = ".straddle-lock";

    /**
     * The byte that is locked, far behind what is written: where a lock keeps others from reading, as on Windows, they
     * can still read who holds it.
     */
    private static final long LOCKED = Long.MAX_VALUE - 1;

    /** More is not read of a file that somebody else may have written. */
    private static final int LONGEST_HOLDER = 200;

    /**
     * Folders that this program holds. Asked first: on POSIX systems closing any channel to a file drops every lock
     * that the process has on it, so a second attempt here must not so much as open the file.
     */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final FileChannel channel;
    private final Path held;

    private EventLock(FileChannel channel, Path held) {
        this.channel = channel;
        this.held = held;
    }

    static EventLock on(EventTree tree) throws EventFolderException {
        Path real = real(tree.root());
        if (!HELD.add(real)) {
            throw refused(tree, "");
        }
        EventLock lock = null;
        try {
            lock = lock(tree, real);
            return lock;
        } finally {
            if (lock == null) {
                HELD.remove(real);
            }
        }
    }

    private static EventLock lock(EventTree tree, Path real) throws EventFolderException {
        FileChannel channel = null;
        try {
            channel = tree.openOrCreate(tree.at(FILE));
            FileLock lock = channel.tryLock(LOCKED, 1, false);
            if (lock != null) {
                writeHolder(channel);
                return new EventLock(channel, real);
            }
        } catch (OverlappingFileLockException e) {
            // Held by this very program, by way of another class loader: the same refusal as for another one.
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            closeQuietly(channel);
            throw EventFolderException.causedBy(e, TEXTS.text("eventLock.folderCannotLocked", "reason", reason(e)),
                    tree.root(), tree.rootIsWritable() ? TEXTS.text("eventLock.checkDiskThen")
                            : TEXTS.text("eventLock.youMayNot"));
        }
        closeQuietly(channel);
        throw refused(tree, holder(tree));
    }

    private static EventFolderException refused(EventTree tree, String holder) {
        return EventFolderException.of(TEXTS.text("eventLock.openElsewhere", "holder", holder), tree.root(),
                TEXTS.text("eventLock.closeThereFirst"));
    }

    private static Path real(Path folder) {
        try {
            return folder.toRealPath();
        } catch (IOException e) {
            return folder.toAbsolutePath().normalize();
        }
    }

    private static void writeHolder(FileChannel channel) {
        String holder = TEXTS.text("eventLock.processSince", "property", System.getProperty("user.name"),
                "hostName", hostName(), "pid", ProcessHandle.current().pid(),
                "truncatedTo", DateTimeFormatter.ISO_INSTANT.format(Instant.now().truncatedTo(ChronoUnit.SECONDS)));
        try {
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(holder.getBytes(StandardCharsets.UTF_8)));
        } catch (IOException e) {
            // Nobody will be told who holds it; the lock holds all the same.
        }
    }

    /** As the system's environment names it: asking the network for it may take seconds. */
    private static String hostName() {
        String name = System.getenv().getOrDefault("HOSTNAME", System.getenv("COMPUTERNAME"));
        return name == null || name.isBlank() ? "" : TEXTS.text("eventLock.on", "name", name);
    }

    /** Who holds the lock, in brackets; empty where that cannot be read. */
    private static String holder(EventTree tree) {
        try (InputStream in = tree.read(tree.at(FILE))) {
            String holder = new String(in.readNBytes(LONGEST_HOLDER), StandardCharsets.UTF_8).replaceAll("\\p{Cntrl}", " ").strip();
            return holder.isEmpty() ? "" : " (" + holder + ")";
        } catch (IOException e) {
            return "";
        }
    }

    static String reason(IOException e) {
        String name = e.getClass().getSimpleName().replace("Exception", "");
        // A plain one says all in its message; those of a kind mostly hold nothing but the file there.
        return e.getMessage() == null ? name : name.equals("IO") ? e.getMessage() : name + ": " + e.getMessage();
    }

    @Override
    public void close() {
        // The file stays, empty as it was: removing it would let a third program lock a new one while a second waits on the old.
        try {
            channel.truncate(0);
        } catch (IOException e) {
            // It names somebody who holds it no more, which nobody asks while it is free.
        }
        closeQuietly(channel);
        HELD.remove(held);
    }

    private static void closeQuietly(FileChannel channel) {
        if (channel != null) {
            try {
                channel.close();
            } catch (IOException e) {
                // The lock falls with the program at the latest.
            }
        }
    }
}
