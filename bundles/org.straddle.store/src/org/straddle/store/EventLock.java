package org.straddle.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;

import org.straddle.words.Catalogue;

/**
 * Keeps two programs from writing to one event folder. The system drops the lock when the program ends, however it
 * ends, so a left-over lock file never shuts anybody out.
 */
final class EventLock implements AutoCloseable {

    private static final Catalogue TEXTS = Catalogue.of(EventLock.class);

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
            throw EventFolderException.causedBy(e, TEXTS.text("eventLock.folderCannotLocked", "reason", reason(e)),
                    folder, tree.rootIsWritable() ? TEXTS.text("eventLock.checkDiskThen")
                            : TEXTS.text("eventLock.youMayNot"));
        }
        closeQuietly(channel);
        throw EventFolderException.of(TEXTS.text("eventLock.eventAlreadyOpen"), folder,
                TEXTS.text("eventLock.closeThereFirst"));
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
