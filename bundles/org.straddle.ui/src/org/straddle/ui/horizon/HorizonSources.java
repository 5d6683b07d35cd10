package org.straddle.ui.horizon;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.dialogs.ProgressMonitorDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.exchange.sites.HorizonTable;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Identified;
import org.straddle.sky.Horizon;
import org.straddle.visit.SiteVisits;
import org.straddle.terrain.HorizonRequest;
import org.straddle.terrain.TerrainException;
import org.straddle.terrain.TerrainHorizon;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.work.FileWork;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Where a mask comes from beside drawing: a table from a file, or elevation rasters. Each is one step for undo. */
public final class HorizonSources {

    private static final Catalogue TEXTS = Catalogue.of(HorizonSources.class);

    private HorizonSources() {
    }

    /** Reads a table and puts it in the place of the mask of a site or visit. */
    public static void readTable(Shell shell, Identified owner) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText(TEXTS.text("horizonSources.read"));
        dialog.setFilterNames(new String[] {TEXTS.text("horizonSources.tables"), TEXTS.text("horizonSources.all")});
        dialog.setFilterExtensions(new String[] {"*.csv;*.txt", "*"});
        String chosen = dialog.open();
        List<Horizon> read = new ArrayList<>();
        if (chosen != null && FileWork.run(shell, TEXTS.text("horizonSources.reading"), () -> read.add(HorizonTable.read(Path.of(chosen))))) {
            set(owner, read.get(0), TEXTS.text("horizonSources.origin", "file", Path.of(chosen).getFileName()));
        }
    }

    /** Writes the mask as a table. */
    public static void writeTable(Shell shell, List<Horizon.Point> points) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(TEXTS.text("horizonSources.write"));
        dialog.setOverwrite(true);
        dialog.setFileName("horizon.csv");
        String chosen = dialog.open();
        if (chosen != null) {
            Horizon horizon = points.isEmpty() ? Horizon.flat(0) : new Horizon(points);
            FileWork.run(shell, TEXTS.text("horizonSources.writing"), () -> Files.writeString(Path.of(chosen), HorizonTable.write(horizon)));
        }
    }

    /** Asks for rasters, computes with progress and cancel, and puts the result in the place of the mask. */
    public static void compute(Shell shell, Identified owner, Optional<GeoPosition> mark) {
        if (mark.isEmpty()) {
            MessageDialog.openError(shell, TEXTS.text("computeHorizonDialog.title"), TEXTS.text("horizonSources.nomark"));
            return;
        }
        ComputeHorizonDialog dialog = new ComputeHorizonDialog(shell, mark.get());
        if (dialog.open() != ComputeHorizonDialog.OK) {
            return;
        }
        HorizonRequest request = dialog.request();
        List<Path> files = dialog.files();
        TerrainHorizon[] computed = new TerrainHorizon[1];
        try {
            new ProgressMonitorDialog(shell).run(true, true, monitor -> {
                try {
                    computed[0] = TerrainHorizon.compute(files, request, monitor);
                } catch (TerrainException failure) {
                    throw new InvocationTargetException(failure);
                } catch (OperationCanceledException cancelled) {
                    throw new InterruptedException();
                }
            });
        } catch (InvocationTargetException failure) {
            Throwable cause = failure.getCause();
            Problem.show(shell, cause instanceof IOException ? cause.getMessage()
                    : TEXTS.text("horizonSources.failed", "cause", cause.getMessage()), cause);
            return;
        } catch (InterruptedException cancelled) {
            return;
        }
        set(owner, computed[0].mask(), computed[0].origin() + "\n" + String.join(" ", computed[0].remarks()));
    }

    static void set(Identified owner, Horizon mask, String origin) {
        EventSession session = EventSession.current();
        session.execute(SiteVisits.setHorizon(session.editingDomain(), owner, mask, origin));
    }
}
