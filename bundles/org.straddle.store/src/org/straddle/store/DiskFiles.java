package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

import org.straddle.words.Catalogue;

/** The files of an event as they lie on the disk, or as an interrupted save left them to be put in place. */
final class DiskFiles implements EventFiles {

    private static final Catalogue TEXTS = Catalogue.of(DiskFiles.class);

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
                    throw EventFolderException.of(TEXTS.text("diskFiles.fileLargerThan",
                            "largest", (LARGEST >> 20)), name, TEXTS.text("diskFiles.restoreFileFrom"));
                }
                return bytes;
            }
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            throw EventFolderException.causedBy(e, TEXTS.text("diskFiles.fileCannotRead",
                    "reason", EventLock.reason(e)), name,
                    TEXTS.text("diskFiles.checkDiskYour"));
        }
    }
}
