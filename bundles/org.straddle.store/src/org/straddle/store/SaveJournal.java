package org.straddle.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Changes several files of a folder as if they were one. A single file is replaced safely by writing a new one and
 * renaming it; an event is many files that must fit each other. So all new files are first written to the folder
 * {@value #FOLDER} and forced to the medium; then one rename puts a list of them in place, which is the moment at
 * which the save counts; then the files are renamed into their places. Power may fail at any step: without the list
 * the new files are thrown away, with it the renames are finished by {@link #recover}.
 *
 * <p>It is as strong as two promises of the disk: to keep what it said it had written, and to rename a file as one
 * step, which every file system with a journal does. On one without, such as FAT, a power failure within a rename can
 * lose that one file; it is then named, and nothing else is touched.
 */
final class SaveJournal {

    static final String FOLDER = ".straddle-save";

    private static final String LIST = "commit";
    private static final String FIRST_LINE = "straddle save 1";

    /** One line of the list: a new file with its digest, or, without one, a file to remove. */
    private record Entry(String name, String digest) {

        boolean isDeletion() {
            return digest == null;
        }
    }

    private final Path event;
    private final Path folder;
    private final Path list;
    private final FileSteps steps;

    SaveJournal(Path event, FileSteps steps) {
        this.event = event;
        this.folder = event.resolve(FOLDER);
        this.list = folder.resolve(LIST);
        this.steps = steps;
    }

    /** Is there a save that counts and has not been put in place yet? */
    boolean isRecorded() {
        return Files.exists(list, LinkOption.NOFOLLOW_LINKS);
    }

    /** Where a recorded save keeps the new content of a file until it is in place. */
    Path staged(String name) {
        return folder.resolve("new").resolve(name);
    }

    /** Writes the changes beside the event. When this returns, they count; when it fails, nothing has changed. */
    void record(List<? extends Change> changes) throws IOException {
        try {
            tryToRecord(changes);
        } catch (IOException e) {
            try {
                discard();
            } catch (IOException second) {
                e.addSuppressed(second);
            }
            throw e;
        }
    }

    private void tryToRecord(List<? extends Change> changes) throws IOException {
        Set<Path> folders = new LinkedHashSet<>();
        StringBuilder lines = new StringBuilder(FIRST_LINE).append('\n');
        for (Change change : changes) {
            if (change instanceof Change.Delete) {
                lines.append("delete ").append(change.name()).append('\n');
                continue;
            }
            Path place = staged(change.name());
            steps.createFolder(place.getParent());
            folders.add(place.getParent());
            Change.stage(change, place, steps);
            lines.append("put ").append(Digest.of(place)).append(' ').append(change.name()).append('\n');
        }
        lines.append("end ").append(changes.size()).append('\n');
        steps.createFolder(folder);
        Path fresh = folder.resolve(LIST + ".new");
        steps.write(fresh, lines.toString().getBytes(StandardCharsets.UTF_8));
        for (Path each : folders) {
            steps.forceFolder(each);
        }
        steps.rename(fresh, list);
        steps.forceFolder(folder);
    }

    /**
     * Finishes a save that counts, throws away one that does not.
     *
     * @throws EventFolderException when the journal is damaged; then nothing has been touched
     */
    void recover() throws IOException {
        if (isRecorded()) {
            finish();
        } else if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            discard();
        }
    }

    /** Puts a recorded save in place. May be repeated after a failure, and picks up where it was. */
    void finish() throws IOException {
        List<Entry> entries = readList();
        for (Entry entry : entries) {
            refuseDamage(entry);
        }
        Set<Path> folders = new LinkedHashSet<>();
        for (Entry entry : entries) {
            Path place = event.resolve(entry.name());
            if (entry.isDeletion()) {
                steps.deleteIfExists(place);
            } else if (Files.exists(staged(entry.name()))) {
                steps.createFolder(place.getParent());
                steps.rename(staged(entry.name()), place);
            }
            folders.add(place.getParent());
        }
        for (Path each : folders) {
            if (Files.isDirectory(each)) {
                steps.forceFolder(each);
            }
        }
        discard();
    }

    private void refuseDamage(Entry entry) throws IOException {
        if (entry.isDeletion()) {
            return;
        }
        Path staged = staged(entry.name());
        Path content = Files.exists(staged) ? staged : event.resolve(entry.name());
        if (!Files.isRegularFile(content) || !Digest.of(content).equals(entry.digest())) {
            throw EventFolderException.of("a save was interrupted, and its new version of this file is lost or damaged.",
                    entry.name(), "Copy the whole event folder first. Then remove the folder " + FOLDER
                            + " in it to go on with the files as they are, or restore the event from an older copy.");
        }
    }

    private List<Entry> readList() throws IOException {
        List<String> lines = Files.readAllLines(list, StandardCharsets.UTF_8);
        List<Entry> entries = new ArrayList<>();
        boolean whole = lines.size() >= 2 && lines.get(0).equals(FIRST_LINE)
                && lines.get(lines.size() - 1).equals("end " + (lines.size() - 2));
        for (int i = 1; whole && i < lines.size() - 1; i++) {
            String[] words = lines.get(i).split(" ", lines.get(i).startsWith("put ") ? 3 : 2);
            Entry entry = new Entry(words[words.length - 1], words[0].equals("put") ? words[1] : null);
            entries.add(entry);
            whole = (words[0].equals("put") || words[0].equals("delete")) && Layout.isEventFile(entry.name());
        }
        if (!whole) {
            throw EventFolderException.of("the list of an interrupted save is damaged.", FOLDER + "/" + LIST,
                    "Copy the whole event folder first. Then remove the folder " + FOLDER
                            + " in it to go on with the files as they are.");
        }
        return entries;
    }

    /** The list goes first: from then on the rest is rubbish. */
    private void discard() throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        steps.deleteIfExists(list);
        steps.forceFolder(folder);
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                steps.deleteIfExists(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path each, IOException failure) throws IOException {
                if (failure != null) {
                    throw failure;
                }
                steps.deleteIfExists(each);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
