package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.straddle.model.Event;
import org.straddle.words.Catalogue;

/**
 * An event on disk: a folder with one file for each thing that one person edits.
 *
 * <p>A save changes all files of the folder or none, whenever power fails (see {@link SaveJournal}); it writes only
 * files whose content changed, and refuses to overwrite what another program wrote meanwhile. Everything here belongs to
 * the thread that edits the event; only a {@link Saving} may be written on another one.
 */
public final class EventFolder implements AutoCloseable {

    private static final Catalogue TEXTS = Catalogue.of(EventFolder.class);

    /** How often, and after how many ms, a save of another computer is looked at again. */
    private static final int PATIENCE = 10;
    private static final int PAUSE_MS = 50;

    /** Held by whoever changes the folder: a save may run while the event is edited. */
    private final Object disk = new Object();
    private volatile EventTree tree;
    private volatile EventLock lock;
    private volatile SaveJournal journal;
    private final FileSteps steps;
    private final EventResourceSet resources;
    private final Event event;
    private final StagedFiles staged = new StagedFiles();
    /** Digests of the event's own files as last read or written, by name. */
    private Migration migration;
    private volatile Map<String, String> known;
    /** Files of the layers that the event had when it was last read or written, by name. */
    private volatile Set<String> knownLayers;

    private EventFolder(EventTree tree, EventLock lock, FileSteps steps, EventResourceSet resources, Event event,
            Map<String, byte[]> files) {
        this.tree = tree;
        this.lock = lock;
        this.steps = steps;
        this.journal = new SaveJournal(tree, steps);
        this.resources = resources;
        this.event = event;
        this.known = digests(files);
        this.knownLayers = layerNames(event);
    }

    /**
     * Opens an event for editing: no other program can until {@link #close}. A save that was interrupted is finished
     * or thrown away first.
     */
    public static EventFolder open(Path folder) throws EventFolderException {
        return open(folder, new DiskSteps());
    }

    static EventFolder open(Path folder, FileSteps steps) throws EventFolderException {
        EventTree tree = existing(folder);
        EventLock lock = EventLock.on(tree);
        try {
            SaveJournal journal = new SaveJournal(tree, steps);
            recover(journal, tree);
            Map<String, byte[]> files = EventScan.scan(new DiskFiles(tree, journal));
            EventFolder opened = read(tree, lock, steps, files);
            if (opened.migration == null) {
                opened.resources.keep(files);
            }
            return opened;
        } catch (EventFolderException | RuntimeException | Error e) {
            lock.close();
            throw e;
        }
    }

    /**
     * Opens an event for editing as somebody left it without saving; on the disk it stays as it is until the next save.
     *
     * @param unsaved of this folder
     */
    public static EventFolder openUnsaved(Path folder, UnsavedEdits.Found unsaved) throws EventFolderException {
        EventFolder saved = open(folder);
        try {
            Map<String, byte[]> files = EventScan.scan(unsaved.files()::get);
            EventFolder edited = read(saved.tree, saved.lock, saved.steps, files);
            if (edited.migration == null) {
                edited.resources.keep(files);
            }
            edited.known = saved.known;
            edited.knownLayers = saved.knownLayers;
            unsaved.brought().forEach(edited.staged::put);
            return edited;
        } catch (EventFolderException | RuntimeException | Error e) {
            saved.close();
            throw e;
        }
    }

    /**
     * Opens an event to look at it, also while somebody else edits it; nothing on the disk is changed.
     * {@link #saveAs} makes an editable copy.
     */
    public static EventFolder openReadOnly(Path folder) throws EventFolderException {
        EventTree tree = existing(folder);
        SaveJournal journal = new SaveJournal(tree, new DiskSteps());
        // Somebody may be saving right now: read until two readings agree.
        requireOwn(journal, tree);
        EventFiles disk = new DiskFiles(tree, journal);
        for (int i = 0; i < 5; i++) {
            Map<String, byte[]> files = EventScan.scan(disk);
            boolean recorded = isRecorded(journal, tree);
            if (isStill(files, disk) && recorded == isRecorded(journal, tree)) {
                return read(tree, null, new DiskSteps(), files);
            }
        }
        throw EventFolderException.of(
                TEXTS.text("eventFolder.eventBeingChanged"), tree.root(), TEXTS.text("eventFolder.tryAgainMoment"));
    }

    /**
     * An event that has next to nothing, read as any other. The first reading of a program takes several times as long as
     * the next, so a program may do this while it waits for something else; until it is over, no other thread may read.
     */
    public static Event rehearsed() throws EventFolderException {
        try (InputStream in = EventFolder.class.getResourceAsStream("smallest.straddle")) {
            Map<String, byte[]> files = Map.of(Layout.EVENT, in.readAllBytes());
            EventResourceSet resources = EventResourceSet.of(EventScan.scan(files::get));
            Limits.require(resources.event());
            digests(files);
            return resources.event();
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Equal files name equal files, so none can have come or gone. */
    private static boolean isStill(Map<String, byte[]> files, EventFiles disk) throws EventFolderException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (!Arrays.equals(file.getValue(), disk.read(file.getKey()))) {
                return false;
            }
        }
        return true;
    }

    /** A save that somebody makes right now, on another computer, is soon over; what stays came with the folder. */
    private static void requireOwn(SaveJournal journal, EventTree tree) throws EventFolderException {
        for (int tries = 1;; tries++) {
            try {
                journal.require();
                return;
            } catch (EventFolderException e) {
                if (tries == PATIENCE) {
                    throw e;
                }
            } catch (IOException e) {
                if (tries == PATIENCE) {
                    throw unreadable(e, tree);
                }
            }
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw EventFolderException.of(
                        TEXTS.text("eventFolder.eventNotOpened"), tree.root(), TEXTS.text("eventFolder.tryAgain"));
            }
        }
    }

    private static boolean isRecorded(SaveJournal journal, EventTree tree) throws EventFolderException {
        try {
            return journal.isRecorded();
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            throw unreadable(e, tree);
        }
    }

    private static EventFolderException unreadable(IOException e, EventTree tree) {
        return EventFolderException.causedBy(e, TEXTS.text("eventFolder.folderCannotRead",
                "reason", EventLock.reason(e)), tree.root(),
                TEXTS.text("diskFiles.checkDiskYour"));
    }

    /**
     * Makes a new event folder and saves the event into it.
     *
     * @param folder does not exist yet, or is empty
     */
    public static EventFolder create(Path folder, Event event) throws EventFolderException {
        return create(folder, event, new DiskSteps());
    }

    static EventFolder create(Path folder, Event event, FileSteps steps) throws EventFolderException {
        if (event.eResource() != null) {
            throw new IllegalArgumentException(TEXTS.text("eventFolder.eventAlreadyLies"));
        }
        EventTree tree = new EventTree(folder.toAbsolutePath().normalize());
        EventLock lock = lockEmpty(tree, steps);
        EventFolder created = new EventFolder(tree, lock, steps, new EventResourceSet(), event, Map.of());
        try {
            created.save();
            return created;
        } catch (EventFolderException | RuntimeException | Error e) {
            created.resources.getResources().forEach(resource -> resource.getContents().clear());
            lock.close();
            throw e;
        }
    }

    private static EventFolder read(EventTree tree, EventLock lock, FileSteps steps, Map<String, byte[]> files)
            throws EventFolderException {
        EventResourceSet resources = EventResourceSet.of(files);
        Migration migration = Migration.of(files.get(Layout.EVENT), resources.event());
        Limits.require(resources.event());
        EventFolder read = new EventFolder(tree, lock, steps, resources, resources.event(), files);
        read.migration = migration;
        return read;
    }

    /** What became of an event that an older Straddle wrote; empty when this one did. */
    public Optional<Migration> migration() {
        return Optional.ofNullable(migration);
    }

    /** The live event. */
    public Event event() {
        return event;
    }

    /** The files of the event as objects; base the editing domain on it. */
    public ResourceSet resourceSet() {
        return resources;
    }

    public Path path() {
        return tree.root();
    }

    public boolean isReadOnly() {
        return lock == null;
    }

    /** Element sets as they were imported. May be empty. */
    public KeptFolder elements() {
        return new KeptFolder(tree.at(Layout.ELEMENTS));
    }

    /** Roads, power lines and other map layers. May be empty. */
    public KeptFolder layers() {
        return new KeptFolder(tree.at(Layout.LAYERS));
    }

    /** The file that holds an object of the event, relative to the folder; empty for one never saved. */
    public String fileOf(EObject object) {
        return object.eResource() instanceof EventResource resource && resource.getResourceSet() == resources
                ? resource.name() : "";
    }

    /**
     * Brings in a file of element sets. It is written to the elements folder by the next save that finds an element
     * set naming it, so undoing the import, or never saving, leaves nothing behind.
     *
     * @param suggestedName file name; only its last part is used, in a form fit for every system
     * @return the name to put into {@code BirdElements.file}
     */
    public String addElementsFile(String suggestedName, byte[] bytes) throws EventFolderException {
        return stage(Layout.ELEMENTS, suggestedName, bytes);
    }

    /**
     * Writes a file that no element set names, such as one of Earth orientation, to the elements folder now, in place
     * of one of the same name. All of it is there afterwards, or nothing has changed. Undo does not take it back.
     *
     * @param suggestedName file name; only its last part is used, in a form fit for every system
     * @return the name it has got
     */
    public String putElementsFile(String suggestedName, byte[] bytes) throws EventFolderException {
        refuseReadOnly();
        refuseTooLarge(suggestedName, bytes);
        String name = KeptName.candidates(suggestedName).iterator().next();
        synchronized (disk) {
            recover(journal, tree);
            commit(List.of(new Change.Put(Layout.ELEMENTS + "/" + name, bytes.clone())), known, tree, journal);
        }
        return name;
    }

    /**
     * Brings in a map. It is written to the layers folder by the next save that finds a layer naming it. A save that
     * finds the layer gone removes the file, and keeps it in memory for an undo.
     *
     * @return the name to put into {@code Layer.file}
     */
    public String addLayer(String suggestedName, byte[] bytes) throws EventFolderException {
        return stage(Layout.LAYERS, suggestedName, bytes);
    }

    /**
     * A file of the layers folder as it is now, to be read on any thread.
     *
     * @param name as in {@code Layer.file}; one that leads out of the folder counts as a file that is not there
     */
    public KeptFile layer(String name) {
        return kept(Layout.LAYERS, name);
    }

    /**
     * A photo as it is now, to be read on any thread.
     *
     * @param name as in {@code Photo.file}; one that leads out of the folder counts as a file that is not there
     */
    public KeptFile photo(String name) {
        return kept(Layout.PHOTOS, name);
    }

    private KeptFile kept(String folder, String name) {
        String whole = folder + "/" + name;
        if (!Layout.isEventFile(whole)) {
            return KeptFile.missing(name, tree.at(folder).path());
        }
        Place place = tree.at(whole);
        KeptFile there = KeptFile.onDisk(name, place);
        byte[] waiting = staged.get(whole);
        return waiting != null && !there.exists() ? KeptFile.inMemory(name, place.path(), waiting) : there;
    }

    /**
     * Brings in a photo. It is written to the photos folder by the next save that finds a visit naming it.
     *
     * @param suggestedName gives the extension
     * @return the name to put into {@code Photo.file}: the hash of the content
     */
    public String addPhoto(String suggestedName, byte[] bytes) throws EventFolderException {
        return stage(Layout.PHOTOS, Digest.of(bytes) + KeptName.extension(suggestedName), bytes);
    }

    private String stage(String folder, String suggestedName, byte[] bytes) throws EventFolderException {
        refuseTooLarge(suggestedName, bytes);
        DiskFiles disk = new DiskFiles(tree, journal);
        for (String candidate : KeptName.candidates(suggestedName)) {
            String name = folder + "/" + candidate;
            byte[] onDisk = disk.read(name);
            if (staged.holds(name, bytes) || onDisk != null && Arrays.equals(onDisk, bytes)) {
                return candidate;
            }
            if (onDisk == null && staged.get(name) == null) {
                staged.put(name, bytes.clone());
                return candidate;
            }
        }
        throw EventFolderException.of(TEXTS.text("eventFolder.thereTooMany"), folder + "/" + suggestedName,
                TEXTS.text("eventFolder.giveFileName"));
    }

    /** {@link #saving} and writes it, at once. */
    public void save() throws EventFolderException {
        saving().write();
    }

    /**
     * Takes from the event what a save will write, on the thread that edits the event. What it returns may be written on
     * another one while editing goes on.
     */
    public Saving saving() throws EventFolderException {
        refuseReadOnly();
        Map<String, byte[]> files = written();
        Map<String, byte[]> brought = staged.namedBy(event);
        Set<String> layers = layerNames(event);
        return new Saving(files, brought, () -> write(files, brought, layers));
    }

    private void write(Map<String, byte[]> files, Map<String, byte[]> brought, Set<String> layers) throws EventFolderException {
        requireReadable(files);
        synchronized (disk) {
            refuseGone();
            recover(journal, tree);
            List<Change> changes = changes(files);
            refuseForeignChanges(changes);
            changes.addAll(missing(brought));
            changes.addAll(droppedLayers(layers));
            if (!changes.isEmpty()) {
                commit(changes, digests(files), tree, journal);
            }
            known = digests(files);
            knownLayers = layers;
            staged.remove(brought);
        }
    }

    /**
     * Keeps what is not saved yet where a crash of the program leaves it, for {@link #openUnsaved}. Call it on the thread
     * that edits the event; what it returns does the writing, on any thread.
     *
     * @param typed what stands in fields and is not in the event, to be told to the user
     */
    public Saving keepingUnsaved(List<String> typed) throws EventFolderException {
        Map<String, byte[]> files = written();
        Saving state = new Saving(files, staged.namedBy(event), () -> { });
        UnsavedEdits place = UnsavedEdits.of(path());
        Map<String, String> base = known;
        return new Saving(files, state.brought(), () -> {
            requireReadable(files);
            try {
                place.keep(state, typed, base);
            } catch (IOException e) {
                throw EventFolderException.causedBy(e, TEXTS.text("eventFolder.unsavedEditsCannot",
                        "reason", EventLock.reason(e)),
                        UserFolder.path(), TEXTS.text("eventFolder.saveEventOften"));
            }
        });
    }

    /** A new folder in its place would lack the element sets, layers and photos as they were brought in, and look saved. */
    private void refuseGone() throws EventFolderException {
        if (!tree.rootExists()) {
            throw EventFolderException.of(TEXTS.text("eventFolder.folderGone"), tree.root(), TEXTS.text("eventFolder.putFolderBack"));
        }
    }

    private void refuseReadOnly() throws EventFolderException {
        if (isReadOnly()) {
            throw EventFolderException.of(TEXTS.text("eventFolder.eventOpenedOnly"), tree.root(),
                    TEXTS.text("eventFolder.saveFolderEdit"));
        }
    }

    private static void refuseTooLarge(String name, byte[] bytes) throws EventFolderException {
        if (bytes.length > DiskFiles.LARGEST) {
            throw EventFolderException.of(TEXTS.text("eventFolder.fileLargerThan",
                    "largest", (DiskFiles.LARGEST >> 20)), name,
                    TEXTS.text("eventFolder.bringSmallerFile"));
        }
    }

    /** Files of layers that the event no longer has, taken into memory first: the removal may yet be undone. */
    private List<Change> droppedLayers(Set<String> layers) throws EventFolderException {
        List<Change> deletions = new ArrayList<>();
        DiskFiles disk = new DiskFiles(tree, journal);
        Set<String> dropped = new LinkedHashSet<>(knownLayers);
        dropped.removeAll(layers);
        for (String name : dropped) {
            KeptFile file = KeptFile.onDisk(name, tree.at(name));
            // What does not fit into memory stays where it is.
            if (file.exists() && file.size() <= DiskFiles.LARGEST) {
                byte[] bytes = disk.read(name);
                if (bytes != null) {
                    staged.put(name, bytes);
                    deletions.add(new Change.Delete(name));
                }
            }
        }
        return deletions;
    }

    private static Set<String> layerNames(Event event) {
        return event.getLayers().stream().filter(layer -> layer.getFile() != null)
                .map(layer -> Layout.LAYERS + "/" + layer.getFile()).filter(Layout::isEventFile)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /**
     * Writes the whole event with its elements, layers and photos to another folder, and goes on with that one; the
     * old folder stays as last saved.
     *
     * @param folder does not exist yet, or is empty; the folder itself means a plain {@link #save}
     */
    public void saveAs(Path folder) throws EventFolderException {
        savingAs(folder).write();
    }

    /** As {@link #saving}, for {@link #saveAs}. */
    public Saving savingAs(Path folder) throws EventFolderException {
        EventTree target = new EventTree(folder.toAbsolutePath().normalize());
        if (target.equals(tree) && !isReadOnly()) {
            return saving();
        }
        if (target.root().startsWith(tree.root())) {
            throw EventFolderException.of(
                    TEXTS.text("eventFolder.eventCannotLie"), target.root(), TEXTS.text("eventFolder.chooseFolderElsewhere"));
        }
        Map<String, byte[]> files = written();
        Map<String, byte[]> brought = staged.namedBy(event);
        Set<String> layers = layerNames(event);
        return new Saving(files, brought, () -> writeTo(target, files, brought, layers));
    }

    private void writeTo(EventTree target, Map<String, byte[]> files, Map<String, byte[]> brought, Set<String> layers)
            throws EventFolderException {
        requireReadable(files);
        synchronized (disk) {
            Map<String, Change> changes = new LinkedHashMap<>();
            files.forEach((name, bytes) -> changes.put(name, new Change.Put(name, bytes)));
            Set<String> dropped = droppedLayers(layers).stream().map(Change::name).collect(Collectors.toSet());
            for (Change.Copy copy : keptFiles()) {
                if (!dropped.contains(copy.name())) {
                    changes.put(copy.name(), copy);
                }
            }
            brought.forEach((name, bytes) -> changes.put(name, new Change.Put(name, bytes)));
            EventLock targetLock = lockEmpty(target, steps);
            SaveJournal targetJournal = new SaveJournal(target, steps);
            try {
                recover(targetJournal, target);
                commit(List.copyOf(changes.values()), digests(files), target, targetJournal);
            } catch (EventFolderException | RuntimeException | Error e) {
                targetLock.close();
                throw e;
            }
            close();
            tree = target;
            lock = targetLock;
            journal = targetJournal;
            known = digests(files);
            knownLayers = layers;
            staged.remove(brought);
        }
    }

    /** Lets other programs edit the event. */
    @Override
    public void close() {
        if (lock != null) {
            lock.close();
            lock = null;
        }
    }

    /** The event as files. Those that nobody changed since they were read or taken are not made again. */
    private Map<String, byte[]> written() throws EventFolderException {
        resources.forgetOldNames(FitToWrite.require(event), event);
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (Map.Entry<String, EventResource> file : Filing.file(resources, event, this::isOnDisk).entrySet()) {
            byte[] bytes = file.getValue().bytes();
            if (bytes.length > DiskFiles.LARGEST) {
                throw EventFolderException.of(TEXTS.text("eventFolder.fileWouldLarger",
                        "largest", (DiskFiles.LARGEST >> 20)), file.getKey(), TEXTS.text("eventFolder.removeWhatEvent"));
            }
            files.put(file.getKey(), bytes);
        }
        return files;
    }

    /** What could not be opened again must never replace what can. Takes its time: not for the thread of the edits. */
    private static void requireReadable(Map<String, byte[]> files) throws EventFolderException {
        EventScan.scan(files::get);
    }

    private List<Change> changes(Map<String, byte[]> files) {
        List<Change> changes = new ArrayList<>();
        files.forEach((name, bytes) -> {
            if (!Digest.of(bytes).equals(known.get(name)) || !isOnDisk(name)) {
                changes.add(new Change.Put(name, bytes));
            }
        });
        for (String name : known.keySet()) {
            if (!files.containsKey(name)) {
                changes.add(new Change.Delete(name));
            }
        }
        return changes;
    }

    private void refuseForeignChanges(List<Change> changes) throws EventFolderException {
        DiskFiles disk = new DiskFiles(tree, journal);
        for (Change change : changes) {
            byte[] now = disk.read(change.name());
            if (now != null && !Digest.of(now).equals(known.get(change.name()))) {
                throw foreign(change.name());
            }
        }
    }

    /** What was brought in and is not there yet; after a save that was finished late, it is. */
    private List<Change> missing(Map<String, byte[]> brought) throws EventFolderException {
        List<Change> puts = new ArrayList<>();
        DiskFiles disk = new DiskFiles(tree, journal);
        for (Map.Entry<String, byte[]> file : brought.entrySet()) {
            byte[] now = disk.read(file.getKey());
            if (now == null) {
                puts.add(new Change.Put(file.getKey(), file.getValue()));
            } else if (!Arrays.equals(now, file.getValue())) {
                throw foreign(file.getKey());
            }
        }
        return puts;
    }

    private static EventFolderException foreign(String name) {
        return EventFolderException.of(
                TEXTS.text("eventFolder.programChangedFile"), name, TEXTS.text("eventFolder.saveFolderOpen"));
    }

    /** Is anything there, be it a link? */
    private boolean isOnDisk(String name) {
        try {
            return tree.look(tree.at(name)).isPresent();
        } catch (IOException e) {
            return true;
        }
    }

    /** @param digests of the event's own files once this is done, by name */
    private void commit(List<Change> changes, Map<String, String> digests, EventTree folder, SaveJournal target)
            throws EventFolderException {
        try {
            target.record(changes);
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            throw EventFolderException.causedBy(e, TEXTS.text("eventFolder.eventCouldNot",
                    "reason", EventLock.reason(e)), folder.root(), TEXTS.text("eventFolder.checkRoomDisk"));
        }
        if (folder.equals(tree)) {
            known = digests;
        }
        try {
            target.finish();
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            throw EventFolderException.causedBy(e, TEXTS.text("eventFolder.saveStoredBut",
                    "reason", EventLock.reason(e)), folder.root(), TEXTS.text("eventFolder.doNotCopy"));
        }
    }

    private List<Change.Copy> keptFiles() throws EventFolderException {
        List<Change.Copy> copies = new ArrayList<>();
        for (String kept : Layout.KEPT_AS_THEY_CAME) {
            try {
                for (Place file : tree.files(tree.at(kept))) {
                    if (Layout.isEventFile(file.name())) {
                        copies.add(new Change.Copy(file.name(), file));
                    }
                }
            } catch (EventFolderException e) {
                throw e;
            } catch (IOException e) {
                throw EventFolderException.causedBy(e, TEXTS.text("eventFolder.folderCannotRead",
                        "reason", EventLock.reason(e)),
                        kept, TEXTS.text("eventFolder.checkDiskYour"));
            }
        }
        return copies;
    }

    private static EventTree existing(Path folder) throws EventFolderException {
        Path path = folder.toAbsolutePath().normalize();
        EventTree tree = new EventTree(path);
        if (!tree.rootExists()) {
            throw EventFolderException.of(TEXTS.text("eventFolder.thereSuchFolder"), path,
                    TEXTS.text("eventFolder.chooseFolderHolds", "event", Layout.EVENT));
        }
        try {
            if (tree.look(tree.at(Layout.EVENT)).isEmpty() && tree.look(tree.at(SaveJournal.FOLDER)).isEmpty()) {
                throw EventFolderException.of(TEXTS.text("eventFolder.folderNotEvent", "event", Layout.EVENT), path,
                        TEXTS.text("eventFolder.chooseFolderHolds", "event", Layout.EVENT));
            }
            // A link among them would be found only when something is to be read or written there.
            for (String inner : Layout.FOLDERS) {
                tree.isFolder(tree.at(inner));
            }
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            throw unreadable(e, tree);
        }
        return tree;
    }

    private static EventLock lockEmpty(EventTree tree, FileSteps steps) throws EventFolderException {
        Path folder = tree.root();
        try {
            steps.createFolder(tree.at(""));
            Set<String> ours = Set.of(EventLock.FILE, SaveJournal.FOLDER, ".git");
            if (!ours.containsAll(tree.list(tree.at("")).stream().map(Place::name).toList())
                    || new SaveJournal(tree, steps).isRecorded()) {
                throw EventFolderException.of(TEXTS.text("eventFolder.folderNotEmpty"), folder,
                        TEXTS.text("eventFolder.chooseNewEmpty"));
            }
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            throw EventFolderException.causedBy(e, TEXTS.text("eventFolder.folderCannotMade",
                    "reason", EventLock.reason(e)), folder,
                    TEXTS.text("eventFolder.chooseFolderPlace"));
        }
        return EventLock.on(tree);
    }

    private static void recover(SaveJournal journal, EventTree tree) throws EventFolderException {
        try {
            journal.recover();
        } catch (EventFolderException e) {
            throw e;
        } catch (IOException e) {
            throw EventFolderException.causedBy(e, TEXTS.text("eventFolder.interruptedSaveCould",
                    "reason", EventLock.reason(e)), tree.root(), TEXTS.text("eventFolder.checkDisk"));
        }
    }

    private static Map<String, String> digests(Map<String, byte[]> files) {
        Map<String, String> digests = new LinkedHashMap<>();
        files.forEach((name, bytes) -> digests.put(name, Digest.of(bytes)));
        return digests;
    }
}
