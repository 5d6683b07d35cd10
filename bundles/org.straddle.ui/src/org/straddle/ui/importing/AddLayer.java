package org.straddle.ui.importing;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.formats.Purpose;
import org.straddle.exchange.maps.LayerImport;
import org.straddle.store.EventFolderException;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.UiThread;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/**
 * Reads files of roads, power lines and other things in the background, asks what they are to the event, and adds each
 * as a layer.
 */
public final class AddLayer extends Job {

    private static final Catalogue TEXTS = Catalogue.of(AddLayer.class);

    private static final String TITLE = TEXTS.text("addLayer.title");

    private final Shell shell;
    private final String event;
    private final Path file;
    private final CoordinateOrder order;

    private AddLayer(Shell shell, String event, Path file, CoordinateOrder order) {
        super(TEXTS.text("addLayer.reading", "file", file.getFileName()));
        this.shell = shell;
        this.event = event;
        this.file = file;
        this.order = order;
        setUser(true);
    }

    public static void ask(Shell shell) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN | SWT.MULTI);
        dialog.setText(TEXTS.text("addLayer.choose", "formats", Purpose.LAYER.names()));
        dialog.setFilterExtensions(new String[] {Purpose.LAYER.patterns(), "*"});
        dialog.setFilterNames(new String[] {Purpose.LAYER.names(), TEXTS.text("addLayer.all")});
        if (dialog.open() != null) {
            List<Path> files = Stream.of(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name)).toList();
            files.forEach(file -> read(shell, file, CoordinateOrder.OF_THE_FORMAT));
        }
    }

    /** Reads one file in the background, then asks. */
    public static void read(Shell shell, Path file, CoordinateOrder order) {
        new AddLayer(shell, EventSession.current().event().getId(), file, order).schedule();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            LayerImport found = LayerImport.read(file, order, monitor);
            later(() -> offer(found));
        } catch (ReadException failure) {
            later(() -> complain(failure));
        }
        return monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
    }

    private void later(Runnable then) {
        UiThread.later(shell, () -> {
            EventSession session = EventSession.current();
            if (!shell.isDisposed() && session.isOpen() && session.event().getId().equals(event)) {
                then.run();
            }
        });
    }

    private void complain(ReadException failure) {
        boolean swap = order == CoordinateOrder.OF_THE_FORMAT && failure.getCause() instanceof CoordinateOutOfRange place && place.fitsSwapped();
        if (!swap) {
            Problem.show(shell, failure.getMessage(), failure);
        } else if (MessageDialog.open(MessageDialog.QUESTION, shell, TITLE, failure.getMessage(), SWT.NONE, TEXTS.text("addLayer.swap"),
                TEXTS.text("addLayer.cancel")) == 0) {
            read(shell, file, CoordinateOrder.SWAPPED);
        }
    }

    private void offer(LayerImport found) {
        EventSession session = EventSession.current();
        if (found.swapOffered(session.event()) && MessageDialog.open(MessageDialog.QUESTION, shell, TITLE,
                TEXTS.text("addLayer.far", "file", found.map().name()), SWT.NONE,
                TEXTS.text("addLayer.swap"), TEXTS.text("addLayer.keep")) == 0) {
            read(shell, file, CoordinateOrder.SWAPPED);
            return;
        }
        LayerDialog dialog = new LayerDialog(shell, found.map());
        if (dialog.open() == LayerDialog.OK) {
            try {
                session.execute(found.command(session.editingDomain(), session.folder(), dialog.role(), dialog.title()));
            } catch (EventFolderException failure) {
                Problem.show(shell, failure.getMessage(), failure);
            }
        }
    }
}
