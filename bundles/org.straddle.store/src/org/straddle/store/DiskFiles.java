package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/** The files of an event as they lie on the disk, or as an interrupted save left them to be put in place. */
final class DiskFiles implements EventFiles {

    /** No file of an event comes near; above it, a file is damaged or not ours. Bytes. */
    static final int LARGEST = 64 << 20;

    private final EventTree tree;
    private final SaveJournal journal;

    DiskFiles(EventTree tree, SaveJournal journal) {
        this.tree = tree;
        this.journal = journal;
    }

    @Override
    public byte[] read(String name) throws EventFolderException {
        try {
            Place staged = journal.staged(name);
            Place file = journal.isRecorded() && tree.file(staged).isPresent() ? staged : tree.at(name);
            Optional<BasicFileAttributes> found = tree.file(file);
            if (found.isEmpty()) {
                return null;
            }
            try (InputStream in = tree.read(file)) {
                byte[] bytes = found.get().size() > LARGEST ? null : in.readNBytes(LARGEST + 1);
                if (bytes == null || bytes.length > LARGEST) {
                    throw EventFolderException.of("the file is larger than " + (LARGEST >> 20)
                            + " MB; no file of an event is.", name, "Restore the file from a copy.");
                }
                return bytes;
            }
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            throw EventFolderException.causedBy(e, "the file cannot be read (" + EventLock.reason(e) + ").", name,
                    "Check the disk and your permission to read, then try again.");
        }
    }
}
