package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.straddle.words.Catalogue;

/**
 * Changes several files of a folder as if they were one. A single file is replaced safely by writing a new one and
 * renaming it; an event is many files that must fit each other. So all new files are first written to the folder
 * {@value #FOLDER} and forced to the medium; then one rename puts a list of them in place, which is the moment at
 * which the save counts; then the files are renamed into their places. Power may fail at any step: without the list
 * the new files are thrown away, with it the renames are finished by {@link #recover}.
 *
 * <p>A list that came with the folder, from somebody else, would change files that were looked at before: it is
 * refused (see {@link SaveSeal}), and so is a list that would reach out of the folder (see {@link EventTree}).
 *
 * <p>It is as strong as two promises of the disk: to keep what it said it had written, and to rename a file as one
 * step, which every file system with a journal does. On one without, such as FAT, a power failure within a rename can
 * lose that one file; it is then named, and nothing else is touched.
 */
final class SaveJournal {

    private static final Catalogue TEXTS = Catalogue.of(SaveJournal.class);

    static final String FOLDER = ".straddle-save";

    private static final String LIST = "commit";
    private static final String FIRST_LINE = "straddle save 2";
    /** More would be no list of an event's files. Bytes. */
    private static final int LONGEST_LIST = 64 << 20;

    /** One line of the list: a new file with its digest, or, without one, a file to remove. */
    private record Entry(String name, String digest) {

        boolean isDeletion() {
            return digest == null;
        }
    }

    private final EventTree event;
    private final Place folder;
    private final Place list;
    private final FileSteps steps;

    SaveJournal(EventTree event, FileSteps steps) {
        this.event = event;
        this.folder = event.at(FOLDER);
        this.list = folder.resolve(LIST);
        this.steps = steps;
    }

    /** Is there a save that counts and has not been put in place yet? */
    boolean isRecorded() throws IOException {
        return event.look(list).isPresent();
    }

    /** Refuses a recorded save of somebody else, or a damaged one, and changes nothing. */
    void require() throws IOException {
        if (isRecorded()) {
            readList();
        }
    }

    /** Where a recorded save keeps the new content of a file until it is in place. */
    Place staged(String name) {
        return folder.resolve("new/" + name);
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
        for (Change change : changes) {
            // Found only after the save counts, a link in the way would leave it half done.
            event.file(event.at(change.name()));
        }
        Set<Place> folders = new LinkedHashSet<>();
        StringBuilder lines = new StringBuilder(FIRST_LINE).append('\n');
        for (Change change : changes) {
            if (change instanceof Change.Delete) {
                lines.append("delete ").append(change.name()).append('\n');
                continue;
            }
            Place place = staged(change.name());
            steps.createFolder(place.parent());
            folders.add(place.parent());
            Change.stage(change, place, steps);
            lines.append("put ").append(digest(place)).append(' ').append(change.name()).append('\n');
        }
        lines.append("end ").append(changes.size()).append('\n');
        steps.createFolder(folder);
        String seal = SaveSeal.of(lines.toString(), folder.path());
        lines.append("seal ").append(seal).append('\n');
        Place fresh = folder.resolve(LIST + ".new");
        steps.write(fresh, lines.toString().getBytes(StandardCharsets.UTF_8));
        for (Place each : folders) {
            steps.forceFolder(each);
        }
        steps.rename(fresh, list);
        steps.forceFolder(folder);
    }

    private String digest(Place file) throws IOException {
        try (InputStream in = event.read(file)) {
            return Digest.of(in);
        }
    }

    /**
     * Finishes a save that counts, throws away one that does not.
     *
     * @throws EventFolderException when the journal is damaged; then nothing has been touched
     */
    void recover() throws IOException {
        if (isRecorded()) {
            finish();
        } else {
            discard();
        }
    }

    /** Puts a recorded save in place. May be repeated after a failure, and picks up where it was. */
    void finish() throws IOException {
        List<Entry> entries = readList();
        for (Entry entry : entries) {
            refuseDamage(entry);
        }
        Set<Place> folders = new LinkedHashSet<>();
        for (Entry entry : entries) {
            Place place = event.at(entry.name());
            if (entry.isDeletion()) {
                steps.deleteIfExists(place);
            } else if (event.file(staged(entry.name())).isPresent()) {
                steps.createFolder(place.parent());
                steps.rename(staged(entry.name()), place);
            }
            folders.add(place.parent());
        }
        for (Place each : folders) {
            if (event.isFolder(each)) {
                steps.forceFolder(each);
            }
        }
        discard();
    }

    private void refuseDamage(Entry entry) throws IOException {
        Place place = event.at(entry.name());
        event.file(place);
        if (entry.isDeletion()) {
            return;
        }
        Place staged = staged(entry.name());
        Place content = event.file(staged).isPresent() ? staged : place;
        if (event.file(content).isEmpty() || !digest(content).equals(entry.digest())) {
            throw EventFolderException.of(TEXTS.text("journal.lost"), entry.name(),
                    TEXTS.text("journal.lost.do", "folder", FOLDER));
        }
    }

    private List<Entry> readList() throws IOException {
        String text;
        event.file(list);
        try (InputStream in = event.read(list)) {
            text = new String(in.readNBytes(LONGEST_LIST), StandardCharsets.UTF_8);
        }
        int seal = text.lastIndexOf("\nseal ") + 1;
        List<String> lines = text.substring(0, seal).lines().toList();
        List<Entry> entries = new ArrayList<>();
        boolean whole = text.indexOf('\n', seal) == text.length() - 1 && lines.size() >= 2 && lines.get(0).equals(FIRST_LINE)
                && lines.get(lines.size() - 1).equals("end " + (lines.size() - 2));
        for (int i = 1; whole && i < lines.size() - 1; i++) {
            String[] words = lines.get(i).split(" ", lines.get(i).startsWith("put ") ? 3 : 2);
            Entry entry = new Entry(words[words.length - 1], words[0].equals("put") ? words[1] : null);
            entries.add(entry);
            whole = (words[0].equals("put") || words[0].equals("delete")) && Layout.isEventFile(entry.name());
        }
        if (!whole) {
            throw EventFolderException.of(TEXTS.text("journal.damaged"), FOLDER + "/" + LIST,
                    TEXTS.text("journal.damaged.do", "folder", FOLDER));
        }
        if (!SaveSeal.fits(text.substring(seal + "seal ".length()).strip(), text.substring(0, seal), folder.path())) {
            throw EventFolderException.of(TEXTS.text("journal.foreign"), FOLDER + "/" + LIST,
                    TEXTS.text("journal.foreign.do", "folder", FOLDER));
        }
        return entries;
    }

    /** The list goes first: from then on the rest is rubbish. */
    private void discard() throws IOException {
        if (event.look(folder).isPresent()) {
            if (event.isFolder(folder)) {
                steps.deleteIfExists(list);
                steps.forceFolder(folder);
            }
            remove(folder);
        }
    }

    private void remove(Place place) throws IOException {
        BasicFileAttributes found = event.look(place).orElse(null);
        if (found != null && found.isDirectory() && !found.isOther()) {
            for (Place each : event.list(place)) {
                remove(each);
            }
        }
        steps.deleteIfExists(place);
    }
}
