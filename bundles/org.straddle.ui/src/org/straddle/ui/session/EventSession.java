package org.straddle.ui.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EventObject;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Status;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.statushandlers.StatusManager;
import org.straddle.check.run.Checked;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Snapshot;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

/**
 * The event that the window works on. There is one session for the life of the application; events are opened into
 * it and closed again, so views register a listener once.
 *
 * <p>Every change runs as a command on one stack, which gives undo, redo and the dirty mark. After each change the
 * passes and findings are worked out on a snapshot in the background; the newest change wins, older computations are
 * cancelled. All methods must be called on the UI thread; a {@link SaveRun} is written on any other. What is not
 * saved is kept for the case that the program ends without asking (see {@link UnsavedKeeper}).
 */
public final class EventSession {

    /** Quiet time after a change before computing, ms: long enough to join the changes of one typed word. */
    private static final int QUIET_MS = 350;

    private static EventSession current;

    private final Display display;
    private final AdapterFactory labels = new StraddleItemProviderAdapterFactory();
    private final List<SessionListener> listeners = new CopyOnWriteArrayList<>();
    private final Set<Runnable> pendingEdits = new LinkedHashSet<>();
    private final Map<Object, String> refused = new LinkedHashMap<>();
    /** What stands in cells that are being edited. */
    private final Map<Object, String> standing = new LinkedHashMap<>();
    /** Whether something was noted that no save holds yet; and how often in all. */
    private boolean noted;
    private int notes;
    private final UnsavedKeeper keeper;
    private Map<String, Identified> index;
    private EventFolder folder;
    private boolean opening;
    private AdapterFactoryEditingDomain domain;
    private Computed computed;
    private Checked checked;
    private final NewestJob<Computation.Result> computation;
    private Consumer<Identified> revealer = thing -> { };
    private final Runnable compute = this::compute;

    EventSession(Display display) {
        this.display = display;
        this.keeper = new UnsavedKeeper(display, this);
        this.computation = new NewestJob<>(display, Computation.KIND);
    }

    /** The session of this application; make the first call on the UI thread. */
    public static EventSession current() {
        if (current == null) {
            current = new EventSession(Objects.requireNonNull(Display.getCurrent(), "not on the UI thread"));
        }
        return current;
    }

    public void addListener(SessionListener listener) {
        listeners.add(listener);
    }

    public void removeListener(SessionListener listener) {
        listeners.remove(listener);
    }

    public boolean isOpen() {
        return folder != null;
    }

    /** Takes a folder that was opened, on whatever thread, and makes it the event of the window. */
    public void open(EventFolder opened) {
        Objects.requireNonNull(opened);
        opening = true;
        try {
            close();
        } finally {
            opening = false;
        }
        folder = opened;
        SessionStack stack = new SessionStack();
        domain = new AdapterFactoryEditingDomain(labels, stack);
        stack.addCommandStackListener(this::changed);
        listeners.forEach(listener -> listener.opened(this));
        computeNow();
    }

    /** Whether the event is closed only because another one takes its place. */
    public boolean isOpening() {
        return opening;
    }

    /** Closes without asking; unsaved changes are lost. */
    public void close() {
        if (!isOpen()) {
            return;
        }
        stopComputing();
        keeper.forget(folder.path());
        pendingEdits.clear();
        refused.clear();
        standing.clear();
        noted = false;
        index = null;
        computed = null;
        checked = null;
        domain = null;
        folder.close();
        folder = null;
        listeners.forEach(listener -> listener.closed(this));
    }

    /** @throws IllegalStateException if no event is open */
    public Event event() {
        return folder().event();
    }

    /** @throws IllegalStateException if no event is open */
    public EventFolder folder() {
        if (folder == null) {
            throw new IllegalStateException("no event is open");
        }
        return folder;
    }

    /** @throws IllegalStateException if no event is open */
    public EditingDomain editingDomain() {
        folder();
        return domain;
    }

    /** Gives the item providers of the model, for labels and trees. */
    public AdapterFactory adapterFactory() {
        return labels;
    }

    /** Runs a change of the event; false if it cannot be done as things stand. */
    public boolean execute(Command command) {
        if (!isOpen() || !command.canExecute()) {
            command.dispose();
            return false;
        }
        stack().execute(command);
        return true;
    }

    /**
     * Runs a change in place of one that was run just before, so that both are one step of undo: the letters of a word
     * that is still being typed. Other changes in between keep the steps apart.
     *
     * @param previous may be null
     */
    public boolean executeInstead(Command previous, Command next) {
        if (previous != null && canUndo() && stack().getUndoCommand() == previous) {
            stack().undo();
        }
        return execute(next);
    }

    /**
     * Writes down what happened outside the event, such as that a revision went out. That is no edit: undo leaves it
     * alone, and it stays unsaved until {@link #saved()}.
     */
    public void note(Command happened) {
        if (!happened.canExecute()) {
            throw new IllegalArgumentException("cannot be written down: " + happened.getLabel());
        }
        happened.execute();
        noted = true;
        notes++;
        changed(new EventObject(this));
    }

    /** Takes back what was noted just now and could not be saved. */
    public void takeBack(Command happened) {
        happened.undo();
        changed(new EventObject(this));
    }

    public boolean canUndo() {
        return isOpen() && stack().canUndo();
    }

    public boolean canRedo() {
        return isOpen() && stack().canRedo();
    }

    /** What undo would take back, or empty. */
    public String undoLabel() {
        return canUndo() ? stack().getUndoCommand().getLabel() : "";
    }

    /** What redo would do again, or empty. */
    public String redoLabel() {
        return canRedo() ? stack().getRedoCommand().getLabel() : "";
    }

    public void undo() {
        commitPendingEdits();
        if (canUndo()) {
            stack().undo();
        }
    }

    public void redo() {
        commitPendingEdits();
        if (canRedo()) {
            stack().redo();
        }
    }

    public boolean dirty() {
        return isOpen() && (noted || stack().isSaveNeeded() || !pendingEdits.isEmpty());
    }

    /**
     * Takes what a save writes. The event may be edited on while it is written; those edits stay unsaved. Call
     * {@link #saved} when it was written.
     */
    public SaveRun beginSave() throws EventFolderException {
        return new SaveRun(folder().saving(), stack().mark(), notes, folder().path());
    }

    /** As {@link #beginSave}, to another folder, with which the session goes on. */
    public SaveRun beginSaveAs(Path path) throws EventFolderException {
        return new SaveRun(folder().savingAs(path), stack().mark(), notes, folder().path());
    }

    /** Marks what was written as the state on disk; edits since it was begun stay unsaved. */
    public void saved(SaveRun written) {
        noted &= notes != written.notes();
        stack().savedAt(written.mark());
        keeper.forget(written.folder());
        if (dirty() || !unfinished().isEmpty()) {
            keeper.edited();
        }
        listeners.forEach(listener -> listener.edited(this));
    }

    /** The event was opened with edits that nobody saved before: it differs from the disk until it is saved. */
    public void broughtBack() {
        noted = true;
        notes++;
        keeper.edited();
        listeners.forEach(listener -> listener.edited(this));
    }

    /** Keeps unsaved edits now instead of within half a minute, and waits until they are kept. */
    void keepUnsaved() {
        keeper.keep();
        keeper.join();
    }

    /**
     * A field that holds typed text which is not yet in the event. It is asked to commit before the next save, undo
     * or computation, so that nothing typed is lost.
     */
    public void addPendingEdit(Runnable commit) {
        if (pendingEdits.add(commit)) {
            keeper.edited();
            listeners.forEach(listener -> listener.edited(this));
        }
    }

    public void removePendingEdit(Runnable commit) {
        pendingEdits.remove(commit);
    }

    public void commitPendingEdits() {
        List.copyOf(pendingEdits).forEach(Runnable::run);
        pendingEdits.clear();
    }

    /** What is typed in a field and cannot be taken over, for whoever is about to save or to leave the event. */
    public void refuse(Object field, String words) {
        refused.put(field, words);
        keeper.edited();
    }

    /** What is typed in a cell, which takes it over only when it is left. */
    public void typing(Object cell, String words) {
        standing.put(cell, words);
        keeper.edited();
    }

    /** The field holds nothing any more that cannot be taken over. */
    public void settle(Object field) {
        refused.remove(field);
        standing.remove(field);
    }

    /** What was typed and is not in the event; a crash would lose it. */
    List<String> unfinished() {
        return Stream.concat(refused.values().stream(), standing.values().stream()).toList();
    }

    public List<String> refused() {
        return List.copyOf(refused.values());
    }

    /** The last finished computation, or empty until the first is finished. */
    public Optional<Computed> computed() {
        return Optional.ofNullable(computed);
    }

    public boolean computing() {
        return computation.isRunning();
    }

    /** The live object with this id, for results that come from a snapshot. */
    public Optional<Identified> live(String id) {
        if (!isOpen()) {
            return Optional.empty();
        }
        if (index == null) {
            index = indexed(event());
        }
        return Optional.ofNullable(index.get(id));
    }

    /** Shows the thing to the user: opens its editor and selects it in the explorer. */
    public void reveal(Identified thing) {
        live(thing.getId()).ifPresent(revealer);
    }

    /** The workbench says how a thing is shown. */
    public void onReveal(Consumer<Identified> how) {
        revealer = Objects.requireNonNull(how);
    }

    /** Computes at once instead of after the quiet time. */
    public void computeNow() {
        display.timerExec(-1, compute);
        commitPendingEdits();
        compute();
    }

    private void changed(EventObject change) {
        index = null;
        keeper.edited();
        listeners.forEach(listener -> listener.edited(this));
        display.timerExec(QUIET_MS, compute);
    }

    private void compute() {
        display.timerExec(-1, compute);
        if (!isOpen()) {
            return;
        }
        display.timerExec(-1, compute);
        computation.run(new Computation(Snapshot.of(event()), folder().elements(), checked), new NewestJob.Heard<>() {
            @Override
            public void done(Computation.Result result) {
                publish(result);
            }

            @Override
            public void failed(Throwable failure) {
                if (failure instanceof IOException) {
                    StatusManager.getManager().handle(Status.error(failure.getMessage(), failure),
                            StatusManager.SHOW | StatusManager.LOG);
                }
                stopped();
            }

            @Override
            public void stopped() {
                listeners.forEach(listener -> listener.stopped(EventSession.this));
            }
        });
        listeners.forEach(listener -> listener.computing(this));
    }

    private void publish(Computation.Result result) {
        if (isOpen()) {
            checked = result.checked();
            computed = result.computed();
            listeners.forEach(listener -> listener.computed(this, computed));
        }
    }

    private void stopComputing() {
        display.timerExec(-1, compute);
        computation.stop();
    }

    private SessionStack stack() {
        return (SessionStack) domain.getCommandStack();
    }

    private static Map<String, Identified> indexed(Event event) {
        Map<String, Identified> byId = new HashMap<>();
        byId.put(event.getId(), event);
        for (var all = event.eAllContents(); all.hasNext();) {
            EObject object = all.next();
            if (object instanceof Identified thing) {
                byId.put(thing.getId(), thing);
            }
        }
        return byId;
    }
}
