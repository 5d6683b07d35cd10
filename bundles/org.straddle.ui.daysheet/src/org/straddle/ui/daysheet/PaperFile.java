package org.straddle.ui.daysheet;

import java.io.IOException;
import java.nio.file.Path;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.daysheet.page.PdfSheet;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.ui.session.UiThread;
import org.straddle.ui.work.Problem;

/** Writes all days of the sheet to a PDF file, a page or more for each. */
final class PaperFile {

    private PaperFile() {
    }

    /** Asks where to, and writes there off the UI thread. */
    static void export(Shell shell, SheetCanvas canvas, DaySheet sheet) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Save the day sheet as PDF");
        dialog.setFileName("day-sheet.pdf");
        dialog.setFilterExtensions(new String[] {"*.pdf"});
        dialog.setFilterNames(new String[] {"PDF (*.pdf)"});
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen != null) {
            write(shell, canvas, sheet, Path.of(chosen.contains(".") ? chosen : chosen + ".pdf"));
        }
    }

    static void write(Shell shell, SheetCanvas canvas, DaySheet sheet, Path file) {
        ICoreRunnable work = monitor -> {
            try {
                int pages = PdfSheet.write(sheet, file);
                tell(shell, () -> canvas.say("Written " + pages + (pages == 1 ? " page" : " pages") + " to " + file + ".",
                        false));
            } catch (IOException failure) {
                tell(shell, () -> Problem.show(shell, "The day sheet could not be written to " + file
                        + ". Check that the folder exists, may be written and has room, or choose another one.", failure));
            }
        };
        Job job = Job.create("Writing the day sheet", work);
        job.setUser(true);
        job.schedule();
    }

    static void tell(Shell shell, Runnable words) {
        if (!shell.isDisposed()) {
            UiThread.later(shell, () -> {
                if (!shell.isDisposed()) {
                    words.run();
                }
            });
        }
    }
}
