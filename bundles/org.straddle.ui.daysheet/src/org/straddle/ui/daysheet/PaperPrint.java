package org.straddle.ui.daysheet;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;
import org.straddle.daysheet.page.PdfSheet;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/**
 * Prints all days of the sheet. The pages are those of the PDF file, drawn as pictures: printing systems differ too much
 * in how they scale letters to trust them with more.
 */
final class PaperPrint {

    private static final Catalogue TEXTS = Catalogue.of(PaperPrint.class);

    /** Fine enough for the smallest letters and hatches; common practice, no source. */
    private static final int DPI = 250;

    private PaperPrint() {
    }

    /** Asks for a printer, draws the pages off the UI thread, and hands them to the printer. */
    static void print(Shell shell, SheetCanvas canvas, DaySheet sheet) {
        PrinterData wanted = new PrinterData();
        wanted.orientation = PrinterData.LANDSCAPE;
        PrintDialog dialog = new PrintDialog(shell);
        dialog.setText(TEXTS.text("paperPrint.printDaySheet"));
        dialog.setPrinterData(wanted);
        try {
            PrinterData chosen = dialog.open();
            if (chosen != null) {
                draw(shell, canvas, sheet, chosen);
            }
        } catch (SWTError failure) {
            Problem.show(shell, TEXTS.text("paperPrint.therePrinterComputer"), failure);
        }
    }

    private static void draw(Shell shell, SheetCanvas canvas, DaySheet sheet, PrinterData chosen) {
        ICoreRunnable work = monitor -> {
            try {
                List<BufferedImage> pages = PdfSheet.pictures(sheet, DPI);
                PaperFile.tell(shell, () -> spool(shell, canvas, pages, chosen));
            } catch (IOException failure) {
                PaperFile.tell(shell, () -> Problem.show(shell, TEXTS.text("paperPrint.pagesDaySheet"), failure));
            }
        };
        Job job = Job.create(TEXTS.text("paperPrint.drawingPagesDay"), work);
        job.setUser(true);
        job.schedule();
    }

    private static void spool(Shell shell, SheetCanvas canvas, List<BufferedImage> pages, PrinterData chosen) {
        Printer printer = new Printer(chosen);
        try {
            if (!printer.startJob(TEXTS.text("paperPrint.daySheet"))) {
                throw new IllegalStateException("the printer took no job");
            }
            for (BufferedImage page : pages) {
                printer.startPage();
                page(printer, page);
                printer.endPage();
            }
            printer.endJob();
            canvas.say(TEXTS.text("paperPrint.sentPagesPrinter", "pages", pages.size(), "name", chosen.name), false);
        } catch (RuntimeException failure) {
            printer.cancelJob();
            Problem.show(shell, TEXTS.text("paperPrint.printerDoesNot", "name", chosen.name), failure);
        } finally {
            printer.dispose();
        }
    }

    /** As large as the paper allows. */
    private static void page(Printer printer, BufferedImage page) {
        Rectangle area = printer.getClientArea();
        double scale = Math.min((double) area.width / page.getWidth(), (double) area.height / page.getHeight());
        Image image = new Image(printer, data(page));
        GC gc = new GC(printer);
        try {
            gc.drawImage(image, 0, 0, page.getWidth(), page.getHeight(), area.x, area.y,
                    (int) (page.getWidth() * scale), (int) (page.getHeight() * scale));
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    private static ImageData data(BufferedImage page) {
        ImageData data = new ImageData(page.getWidth(), page.getHeight(), 24,
                new PaletteData(0xFF0000, 0xFF00, 0xFF));
        int[] row = new int[page.getWidth()];
        for (int y = 0; y < page.getHeight(); y++) {
            page.getRGB(0, y, row.length, 1, row, 0, row.length);
            for (int x = 0; x < row.length; x++) {
                row[x] &= 0xFFFFFF;
            }
            data.setPixels(0, y, row.length, row, 0);
        }
        return data;
    }
}
