package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** The files of an event as they lie on the disk, or as an interrupted save left them to be put in place. */
final class DiskFiles implements EventFiles {

    /** No file of an event comes near; above it, a file is damaged or not ours. Bytes. */
    static final int LARGEST = 64 << 20;

    private final Path folder;
    private final SaveJournal journal;

    DiskFiles(Path folder, SaveJournal journal) {
        this.folder = folder;
        this.journal = journal;
    }

    @Override
    public byte[] read(String name) throws EventFolderException {
        Path staged = journal.staged(name);
        Path file = journal.isRecorded() && Files.exists(staged) ? staged : folder.resolve(name);
        if (!Files.exists(file)) {
            return null;
        }
        try {
            if (!Files.isRegularFile(file) || !file.toRealPath().startsWith(folder.toRealPath())) {
                throw EventFolderException.of("this is not a plain file in the event folder.", name,
                        "Put the file itself in its place.");
            }
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = Files.size(file) > LARGEST ? null : in.readNBytes(LARGEST + 1);
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
