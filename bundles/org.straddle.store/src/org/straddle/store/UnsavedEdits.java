package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Edits of an event that nobody saved yet, kept in the user's own folder so that they outlive the program: a whole copy
 * of the event's files, with what the event was like on the disk when they were made. Several copies are kept for a
 * moment only: the new one is whole before the old one goes.
 */
public final class UnsavedEdits {

    /** Says that a copy is whole; its lines are the digests of the event's files on the disk. */
    private static final String BASE = "base";
    private static final String FILES = "event/";
    /** Has a file for each text that stood in a field and is not in the event. */
    private static final String TYPED = "typed";
    /** Names that sort as they count. */
    private static final int FIRST_TYPED = 1000;

    /**
     * A copy that was found.
     *
     * @param at           when it was made, UTC
     * @param changedSince whether the event on the disk has changed since
     * @param typed        what stood in fields, could not be read, and so is not among the edits
     */
    public record Found(Instant at, boolean changedSince, Path folder, Map<String, byte[]> files, Map<String, byte[]> brought,
            List<String> typed) {
    }

    private final Path event;
    private final EventTree tree;
    private final FileSteps steps = new DiskSteps();

    private UnsavedEdits(Path event) {
        this.event = event;
        String name = Digest.of(event.toString().getBytes(StandardCharsets.UTF_8)).substring(0, 16);
        tree = new EventTree(UserFolder.path().resolve("unsaved").resolve(name));
    }

    /** Those of the event in a folder, whether there are any or not. */
    public static UnsavedEdits of(Path folder) {
        return new UnsavedEdits(folder.toAbsolutePath().normalize());
    }

    /** Keeps the state of the event that the saving would write, in place of one kept before; any thread. */
    public synchronized void keep(Saving state, List<String> typed, Map<String, String> base) throws IOException {
        Place copy = tree.at("copy-" + System.currentTimeMillis() + "-" + System.nanoTime());
        try {
            for (Map<String, byte[]> files : List.of(state.files(), state.brought())) {
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    Place place = copy.resolve(FILES + file.getKey());
                    steps.createFolder(place.parent());
                    steps.write(place, file.getValue());
                }
            }
            for (int i = 0; i < typed.size(); i++) {
                Place place = copy.resolve(TYPED + "/" + (FIRST_TYPED + i));
                steps.createFolder(place.parent());
                steps.write(place, typed.get(i).getBytes(StandardCharsets.UTF_8));
            }
            String lines = base.entrySet().stream().map(file -> file.getValue() + " " + file.getKey() + "\n").collect(Collectors.joining());
            steps.write(copy.resolve(BASE + ".new"), lines.getBytes(StandardCharsets.UTF_8));
            steps.rename(copy.resolve(BASE + ".new"), copy.resolve(BASE));
            steps.forceFolder(copy);
        } catch (IOException e) {
            remove(copy);
            throw e;
        }
        for (Place each : tree.list(tree.at(""))) {
            if (!each.equals(copy)) {
                remove(each);
            }
        }
    }

    /** The edits that were kept last; empty when there are none, or none that can be read. */
    public synchronized Optional<Found> find() {
        try {
            Optional<Found> found = Optional.empty();
            for (Place copy : tree.rootExists() ? tree.list(tree.at("")) : List.<Place>of()) {
                if (tree.file(copy.resolve(BASE)).isPresent()) {
                    found = Optional.of(read(copy));
                }
            }
            return found;
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private Found read(Place copy) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Map<String, byte[]> brought = new LinkedHashMap<>();
        Place folder = copy.resolve(FILES.substring(0, FILES.length() - 1));
        for (Place file : tree.files(folder)) {
            String name = file.name().substring(folder.name().length() + 1);
            if (Layout.isModelFile(name)) {
                files.put(name, bytes(file));
            } else if (Layout.isEventFile(name)) {
                brought.put(name, bytes(file));
            }
        }
        Map<String, String> base = new String(bytes(copy.resolve(BASE)), StandardCharsets.UTF_8).lines()
                .collect(Collectors.toMap(line -> line.substring(line.indexOf(' ') + 1), line -> line.substring(0, line.indexOf(' '))));
        EventTree now = new EventTree(event);
        boolean changed = false;
        for (Map.Entry<String, String> file : base.entrySet()) {
            Place place = now.at(file.getKey());
            changed |= now.file(place).isEmpty() || !Digest.of(bytes(place)).equals(file.getValue());
        }
        Instant at = tree.look(copy.resolve(BASE)).orElseThrow().lastModifiedTime().toInstant();
        List<String> typed = new ArrayList<>();
        for (Place text : tree.files(copy.resolve(TYPED)).stream().sorted(Comparator.comparing(Place::name)).toList()) {
            typed.add(new String(bytes(text), StandardCharsets.UTF_8));
        }
        return new Found(at, changed, folder.path(), files, brought, List.copyOf(typed));
    }

    private static byte[] bytes(Place file) throws IOException {
        try (InputStream in = file.tree().read(file)) {
            return in.readNBytes(DiskFiles.LARGEST);
        }
    }

    /** Forgets them: they were saved, or the user let them go. */
    public synchronized void discard() throws IOException {
        if (tree.rootExists()) {
            for (Place each : tree.list(tree.at(""))) {
                remove(each);
            }
        }
    }

    private void remove(Place place) throws IOException {
        if (tree.look(place).filter(found -> found.isDirectory()).isPresent()) {
            for (Place each : tree.list(place)) {
                remove(each);
            }
        }
        tree.delete(place);
    }
}
