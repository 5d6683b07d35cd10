package org.straddle.ui.daysheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.daysheet.layout.DaySheetLayout;
import org.straddle.ui.work.Problem;
import org.straddle.ui.drawing.FinePicture;
import org.straddle.words.Catalogue;

/** Writes the sheet to a picture: the time in sight, all lanes and the legend. */
final class PictureFile {

    private static final Catalogue TEXTS = Catalogue.of(PictureFile.class);

    /** Twice as fine as on the screen, for printing. */
    private static final int FINE = 2;

    private PictureFile() {
    }

    /** Asks where to, and writes there. */
    static void export(Shell shell, SheetCanvas sheet) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(TEXTS.text("pictureFile.saveDaySheet"));
        dialog.setFileName("day-sheet.png");
        dialog.setFilterExtensions(new String[] {"*.png"});
        dialog.setFilterNames(new String[] {TEXTS.text("pictureFile.picturePng")});
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen != null) {
            try {
                write(shell.getDisplay(), sheet, Path.of(chosen.contains(".") ? chosen : chosen + ".png"));
            } catch (IOException | SWTException failure) {
                Problem.show(shell, TEXTS.text("pictureFile.pictureCouldNot", "chosen", chosen),
                        failure);
            }
        }
    }

    static void write(Display display, SheetCanvas sheet, Path file) throws IOException {
        DaySheetLayout layout = sheet.whole();
        Files.write(file, FinePicture.png(display, layout.view().width(), layout.view().height(), FINE,
                gc -> sheet.paint(gc, layout)));
    }
}
