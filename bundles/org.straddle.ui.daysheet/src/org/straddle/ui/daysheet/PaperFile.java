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
import org.straddle.words.Catalogue;

/** Writes all days of the sheet to a PDF file, a page or more for each. */
final class PaperFile {

    private static final Catalogue TEXTS = Catalogue.of(PaperFile.class);

    private PaperFile() {
    }

    /** Asks where to, and writes there off the UI thread. */
    static void export(Shell shell, SheetCanvas canvas, DaySheet sheet) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(TEXTS.text("paperFile.saveDaySheet"));
        dialog.setFileName("day-sheet.pdf");
        dialog.setFilterExtensions(new String[] {"*.pdf"});
        dialog.setFilterNames(new String[] {TEXTS.text("paperFile.pdfPdf")});
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
                tell(shell, () -> canvas.say(TEXTS.text("paperFile.writtenPages", "pages", pages, "file", file),
                        false));
            } catch (IOException failure) {
                tell(shell, () -> Problem.show(shell, TEXTS.text("paperFile.daySheetCould", "file", file), failure));
            }
        };
        Job job = Job.create(TEXTS.text("paperFile.writingDaySheet"), work);
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
