package org.straddle.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;

/**
 * Keeps two programs from writing to one event folder. The system drops the lock when the program ends, however it
 * ends, so a left-over lock file never shuts anybody out.
 */
final class EventLock implements AutoCloseable {

    static final String FILE = ".straddle-lock";

    private final FileChannel channel;

    private EventLock(FileChannel channel) {
        this.channel = channel;
    }

    static EventLock on(EventTree tree) throws EventFolderException {
        Path folder = tree.root();
        FileChannel channel = null;
        try {
            channel = tree.openOrCreate(tree.at(FILE));
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return new EventLock(channel);
            }
        } catch (OverlappingFileLockException e) {
            // Held by this very program: the same refusal as for another one.
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            closeQuietly(channel);
            throw EventFolderException.causedBy(e, "the folder cannot be locked for writing (" + reason(e) + ").",
                    folder, tree.rootIsWritable() ? "Check the disk, then try again."
                            : "You may not write here: copy the event folder to a place of your own and open the copy.");
        }
        closeQuietly(channel);
        throw EventFolderException.of("the event is already open, in this or another Straddle window.", folder,
                "Close it there first; nothing was changed.");
    }

    static String reason(IOException e) {
        String name = e.getClass().getSimpleName().replace("Exception", "");
        return e.getMessage() == null ? name : name + ": " + e.getMessage();
    }

    @Override
    public void close() {
        // The file stays: removing it would let a third program lock a new one while a second waits on the old.
        closeQuietly(channel);
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
