package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import org.straddle.words.Catalogue;

/**
 * The one way from a name to a file of an event: whatever is read, written, locked or removed in an event folder goes
 * through here. Folders come from other people, by archive or version control, and both carry links; so no link is
 * followed on the way to a file or at its end, and nothing but plain files and folders is opened, since a pipe would
 * never answer. The event folder itself may be reached by a link: the user chose it.
 *
 * <p>Folders are opened one in the other and files in the last of them (see {@link OpenFolder}), so nobody can put a
 * link in place of a folder between the look and the step where the system offers that. Any thread may use it.
 */
final class EventTree {

    private static final Catalogue TEXTS = Catalogue.of(EventTree.class);

    static final String PUT_IT_THERE = TEXTS.text("eventTree.putFileFolder");

    private static final Pattern NAME = Pattern.compile("(?!\\.{1,2}(/|$))[^/\\x00]+(/(?!\\.{1,2}(/|$))[^/\\x00]+)*");

    private final Path root;

    EventTree(Path root) {
        this.root = root;
    }

    Path root() {
        return root;
    }

    /** Is the event's own folder there, maybe by a link that the user chose? */
    boolean rootExists() {
        return Files.isDirectory(root);
    }

    boolean rootIsWritable() {
        return Files.isWritable(root);
    }

    /** Makes the event's own folder with those around it; what was made, outermost first. */
    List<Path> createRoot() throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path each = root.toAbsolutePath(); !Files.isDirectory(each); each = each.getParent()) {
            missing.push(each);
        }
        for (Path each : missing) {
            Files.createDirectory(each);
        }
        return List.copyOf(missing);
    }

    /** A file or folder by its name with {@code /}, whether it is there or not; empty means the folder of the event. */
    Place at(String name) {
        if (!name.isEmpty() && !NAME.matcher(name).matches()) {
            throw new IllegalArgumentException(TEXTS.text("eventTree.nameWithinEvent", "name", name));
        }
        return new Place(this, name);
    }

    private interface Step<T> {
        T take(OpenFolder folder, String last) throws IOException;
    }

    /** Takes a step in the folder that holds the place. */
    private <T> T in(Place place, Step<T> step) throws IOException {
        if (place.isRoot()) {
            throw new IllegalArgumentException(TEXTS.text("eventTree.folderEventItself", "root", root));
        }
        String[] names = place.name().split("/");
        OpenFolder folder = OpenFolder.of(root);
        try {
            StringBuilder way = new StringBuilder();
            for (int i = 0; i < names.length - 1; i++) {
                way.append(i == 0 ? "" : "/").append(names[i]);
                refuseUnlessFolder(folder.attributes(names[i]), way.toString());
                OpenFolder next = folder.enter(names[i]);
                folder.close();
                folder = next;
            }
            return step.take(folder, names[names.length - 1]);
        } finally {
            folder.close();
        }
    }

    private static void refuseUnlessFolder(BasicFileAttributes found, String name) throws EventFolderException {
        refuseLink(found, name);
        if (!found.isDirectory()) {
            throw EventFolderException.of(TEXTS.text("eventTree.notFolder"), name, PUT_IT_THERE);
        }
    }

    private static void refuseUnlessFile(BasicFileAttributes found, String name) throws EventFolderException {
        refuseLink(found, name);
        if (!found.isRegularFile()) {
            throw EventFolderException.of(TEXTS.text("diskFiles.notPlainFile"), name, PUT_IT_THERE);
        }
    }

    /** Some systems have more kinds of links than one; they call the others neither file nor folder. */
    private static void refuseLink(BasicFileAttributes found, String name) throws EventFolderException {
        if (found.isSymbolicLink() || found.isDirectory() && found.isOther()) {
            throw EventFolderException.of(TEXTS.text("eventTree.linkAllBelongs"), name,
                    PUT_IT_THERE);
        }
    }

    /**
     * What is there, a link itself and not where it leads; empty for nothing.
     *
     * @throws EventFolderException when the way to it leads over a link
     */
    Optional<BasicFileAttributes> look(Place place) throws IOException {
        try {
            return Optional.of(place.isRoot() ? Files.readAttributes(root, BasicFileAttributes.class)
                    : in(place, OpenFolder::attributes));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /** A plain file; empty when nothing is there. @throws EventFolderException for anything else */
    Optional<BasicFileAttributes> file(Place place) throws IOException {
        Optional<BasicFileAttributes> found = look(place);
        if (found.isPresent()) {
            refuseUnlessFile(found.get(), place.name());
        }
        return found;
    }

    /** Is it a folder? @throws EventFolderException when something else is there */
    boolean isFolder(Place place) throws IOException {
        Optional<BasicFileAttributes> found = look(place);
        if (found.isPresent()) {
            refuseUnlessFolder(found.get(), place.name());
        }
        return found.isPresent();
    }

    /** Opens a plain file for reading. */
    InputStream read(Place place) throws IOException {
        return Channels.newInputStream(open(place, Set.of(StandardOpenOption.READ)));
    }

    /** Makes a file that was not there. */
    FileChannel create(Place place) throws IOException {
        return in(place, (folder, last) -> folder.open(last, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)));
    }

    /** Opens a plain file for writing, and makes it when it is not there. */
    FileChannel openOrCreate(Place place) throws IOException {
        if (file(place).isPresent() && hasOtherNames(place)) {
            // What is written here would be written to a file elsewhere.
            throw EventFolderException.of(
                    TEXTS.text("eventTree.fileHasSecond"), place.name(), TEXTS.text("eventTree.remove"));
        }
        if (file(place).isEmpty()) {
            return in(place, (folder, last) -> folder.open(last, Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE)));
        }
        return open(place, Set.of(StandardOpenOption.WRITE));
    }

    private static boolean hasOtherNames(Place place) {
        try {
            return (Integer) Files.getAttribute(place.path(), "unix:nlink", LinkOption.NOFOLLOW_LINKS) > 1;
        } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
            return false;
        }
    }

    private FileChannel open(Place place, Set<OpenOption> how) throws IOException {
        return in(place, (folder, last) -> {
            refuseUnlessFile(folder.attributes(last), place.name());
            return folder.open(last, how);
        });
    }

    /** Makes a folder with those around it, below the event's own; what was made, outermost first. */
    List<Place> createFolders(Place place) throws IOException {
        List<Place> fresh = new ArrayList<>();
        if (!place.isRoot()) {
            fresh.addAll(createFolders(place.parent()));
            if (!isFolder(place)) {
                in(place, (folder, last) -> {
                    folder.createFolder(last);
                    return null;
                });
                fresh.add(place);
            }
        }
        return fresh;
    }

    /** Puts a file in place of another, or where there was none, in one step. */
    void rename(Place from, Place to) throws IOException {
        in(from, (source, name) -> in(to, (target, last) -> {
            refuseUnlessFile(source.attributes(name), from.name());
            source.move(name, target, last);
            return null;
        }));
    }

    /** Removes a file, a link or an empty folder, if it is there; never what a link leads to. */
    void delete(Place place) throws IOException {
        Optional<BasicFileAttributes> found = look(place);
        if (found.isPresent()) {
            in(place, (folder, last) -> {
                folder.delete(last, found.get().isDirectory());
                return null;
            });
        }
    }

    /** Forces the entries of a folder to the medium. */
    void force(Place place) throws IOException {
        if (place.isRoot()) {
            OpenFolder.force(root);
        } else {
            in(place, (folder, last) -> {
                folder.forceFolder(last);
                return null;
            });
        }
    }

    /** What lies in a folder, by name; none when there is no such folder. */
    List<Place> list(Place place) throws IOException {
        if (!isFolder(place)) {
            return List.of();
        }
        List<String> names;
        if (place.isRoot()) {
            try (OpenFolder folder = OpenFolder.of(root)) {
                names = folder.list();
            }
        } else {
            names = in(place, (folder, last) -> {
                try (OpenFolder inner = folder.enter(last)) {
                    return inner.list();
                }
            });
        }
        return names.stream().sorted().filter(name -> NAME.matcher(name).matches())
                .map(name -> at(place.isRoot() ? name : place.name() + "/" + name)).toList();
    }

    /** All plain files in a folder and the folders in it, by name; links and other things are left out. */
    List<Place> files(Place folder) throws IOException {
        List<Place> files = new ArrayList<>();
        for (Place each : list(folder)) {
            BasicFileAttributes found = look(each).orElse(null);
            if (found != null && found.isDirectory() && !found.isOther()) {
                files.addAll(files(each));
            } else if (found != null && found.isRegularFile()) {
                files.add(each);
            }
        }
        return files;
    }

    /** Two are the same when they stand for one folder. */
    @Override
    public boolean equals(Object other) {
        return other instanceof EventTree that && root.equals(that.root);
    }

    @Override
    public int hashCode() {
        return root.hashCode();
    }
}
