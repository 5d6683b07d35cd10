package org.straddle.workbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionManager;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.straddle.check.Finding;
import org.straddle.demo.DemoEvent;
import org.straddle.store.EventFolder;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SaveRun;

/**
 * The window with the demo event open, as it was made when a test class begins. All classes share one workbench, because
 * the platform starts no second one, and one demo, which is written and opened anew only where a class has changed it.
 */
final class DemoWindow implements BeforeAllCallback, AfterAllCallback {

    private Shared shared;
    private RunningWorkbench workbench;
    /** Of this class alone. */
    private Path folder;

    /** What all classes have together. */
    private static final class Shared implements AutoCloseable {

        private final RunningWorkbench workbench = RunningWorkbench.start();
        private final Path folder;
        /** What stands in the files of the demo before anybody edits it. */
        private Map<String, String> made = Map.of();

        Shared() {
            try {
                folder = Files.createTempDirectory("straddle-demo");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void close() throws Exception {
            workbench.ui(() -> EventSession.current().close());
            workbench.close();
            deleteAll(folder);
        }
    }

    @Override
    public void beforeAll(ExtensionContext context) throws Exception {
        shared = context.getRoot().getStore(ExtensionContext.Namespace.create(DemoWindow.class))
                .getOrComputeIfAbsent("shared", key -> new Shared(), Shared.class);
        workbench = shared.workbench;
        folder = Files.createTempDirectory("straddle-window");
        if (!afresh()) {
            // What the class before has undone may not be checked again yet.
            ui(() -> session().computeNow());
            computed();
        }
    }

    /** Takes back every edit. */
    void undoAll() {
        ui(() -> {
            while (session().canUndo()) {
                session().undo();
            }
        });
    }

    /**
     * The demo as it was made, open and with no edit to undo, whatever the test before did to it.
     *
     * @return whether it had to be written anew
     */
    boolean afresh() throws IOException {
        undoAll();
        boolean asMade = ask(() -> session().isOpen() && !session().dirty() && session().folder().path().equals(event()));
        if (asMade && files().equals(shared.made)) {
            computed();
            return false;
        }
        ui(() -> session().close());
        deleteAll(event());
        DemoEvent.write(event());
        shared.made = files();
        open();
        return true;
    }

    /** The next class finds no form open, as after an event is opened. */
    @Override
    public void afterAll(ExtensionContext context) throws IOException {
        ui(() -> {
            page().closeAllEditors(false);
            page().setEditorAreaVisible(false);
        });
        deleteAll(folder);
    }

    private static void deleteAll(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** Reads the event from the disk and waits for its passes and findings. */
    void open() throws IOException {
        EventFolder opened = EventFolder.open(event());
        workbench.ui(() -> session().open(opened));
        computed();
    }

    /** The folder of the event. */
    Path event() {
        return shared.folder.resolve("demo");
    }

    /** An empty place on the disk that goes with the event. */
    Path beside(String name) {
        return folder.resolve(name);
    }

    void ui(Runnable action) {
        workbench.ui(action);
    }

    /** Does not wait: what is done may open a dialog. */
    void later(Runnable action) {
        workbench.later(action);
    }

    <T> T ask(Supplier<T> question) {
        return workbench.ask(question);
    }

    void until(String what, BooleanSupplier holds) {
        workbench.until(what, holds);
    }

    void computed() {
        until("the event is computed", () -> !session().computing() && session().computed().isPresent());
    }

    EventSession session() {
        return EventSession.current();
    }

    static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    /** Shows a view and makes it the active part; to be called on the UI thread. */
    static IViewPart shown(String id) {
        if (page().getActivePart() instanceof IViewPart active && active.getViewSite().getId().equals(id)) {
            return active;
        }
        try {
            return page().showView(id);
        } catch (PartInitException e) {
            throw new AssertionError(e);
        }
    }

    /** The root of a view's own controls. */
    static Control content(String viewId) {
        return (Control) shown(viewId).getSite().getService(MPart.class).getWidget();
    }

    List<Finding> findings() {
        return session().computed().orElseThrow().findings();
    }

    Set<String> keys() {
        return findings().stream().map(Finding::key).collect(Collectors.toSet());
    }

    /** Chooses in a view what a click would choose. */
    void choose(String viewId, List<?> things) {
        ui(() -> shown(viewId).getSite().getSelectionProvider().setSelection(new StructuredSelection(things)));
    }

    /** Runs a command as its key would, in the part that is active; does not wait for dialogs that it opens. */
    void command(String id) {
        workbench.later(() -> {
            try {
                page().getActivePart().getSite().getService(IHandlerService.class).executeCommand(id, null);
            } catch (CommandException e) {
                throw new AssertionError(id, e);
            }
        });
    }

    /** Runs a deed from the toolbar or the menu of a view; does not wait for dialogs that it opens. */
    void deed(String viewId, String words) {
        IAction deed = ask(() -> {
            var bars = shown(viewId).getViewSite().getActionBars();
            return Stream.of(bars.getToolBarManager(), bars.getMenuManager()).flatMap(DemoWindow::actions)
                    .filter(action -> action.getText() != null && plain(action).startsWith(words)
                            || words.equals(action.getToolTipText()))
                    .findFirst().orElseThrow(() -> new AssertionError("no deed “" + words + "” in " + viewId));
        });
        workbench.later(() -> {
            if (deed.getStyle() == IAction.AS_CHECK_BOX) {
                deed.setChecked(!deed.isChecked());
            }
            deed.run();
        });
    }

    private static Stream<IAction> actions(IContributionManager manager) {
        return Stream.of(manager.getItems()).filter(ActionContributionItem.class::isInstance)
                .map(item -> ((ActionContributionItem) item).getAction());
    }

    private static String plain(IAction action) {
        return action.getText().replace("&", "");
    }

    /** Waits for a dialog, fills its text fields from the first on, and presses its button. */
    void answer(String title, String... fields) {
        answer(title, dialog -> {
            List<Text> texts = RunningWorkbench.below(dialog, Text.class).stream()
                    .filter(text -> (text.getStyle() & SWT.READ_ONLY) == 0).toList();
            for (int i = 0; i < fields.length; i++) {
                texts.get(i).setText(fields[i]);
            }
        });
    }

    void answer(String title, Consumer<Shell> fill) {
        until("the dialog “" + title + "” is open", () -> dialog(title) != null);
        ui(() -> {
            Shell dialog = dialog(title);
            fill.accept(dialog);
            if (!dialog.getDefaultButton().isEnabled()) {
                throw new AssertionError("the dialog “" + title + "” cannot be answered like this");
            }
            dialog.getDefaultButton().notifyListeners(SWT.Selection, new Event());
        });
        until("the dialog “" + title + "” is closed", () -> dialog(title) == null);
    }

    private static Shell dialog(String title) {
        return Stream.of(PlatformUI.getWorkbench().getDisplay().getShells()).filter(Objects::nonNull)
                .filter(shell -> shell.isVisible() && shell.getText().equals(title)).findFirst().orElse(null);
    }

    /** Saves as the command does, without its cursor. */
    void save() {
        ui(() -> {
            try {
                session().commitPendingEdits();
                SaveRun save = session().beginSave();
                save.write();
                session().saved(save);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
    }

    /** What stands in which file of the event. */
    Map<String, String> files() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(event())) {
            for (Path file : all.filter(Files::isRegularFile).filter(f -> !f.getFileName().toString().startsWith("."))
                    .toList()) {
                files.put(event().relativize(file).toString(), Files.readString(file));
            }
        }
        return files;
    }
}
