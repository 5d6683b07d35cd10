package org.straddle.ui.daysheet;

import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.daysheet.layout.DaySheetLayout;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Writes the sheet to a picture: the time in sight, all lanes and the legend. */
final class PictureFile {

    private static final Catalogue TEXTS = Catalogue.of(PictureFile.class);

    /** Twice as fine as on the screen, for printing. */
    private static final int FINE = 2;
    private static final int MOST_PX = 12_000;

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
            } catch (SWTException failure) {
                Problem.show(shell, TEXTS.text("pictureFile.pictureCouldNot", "chosen", chosen),
                        failure);
            }
        }
    }

    static void write(Display display, SheetCanvas sheet, Path file) {
        DaySheetLayout layout = sheet.whole();
        int width = layout.view().width();
        int height = layout.view().height();
        int fine = Math.max(width, height) * FINE > MOST_PX ? 1 : FINE;
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {draw(display, sheet, layout, width, height, fine)};
        loader.save(file.toString(), SWT.IMAGE_PNG);
    }

    private static ImageData draw(Display display, SheetCanvas sheet, DaySheetLayout layout, int width, int height,
            int fine) {
        Image image = new Image(display, width * fine, height * fine);
        GC gc = new GC(image);
        Transform larger = new Transform(display);
        try {
            larger.scale(fine, fine);
            gc.setTransform(larger);
            sheet.paint(gc, layout);
            return image.getImageData();
        } finally {
            larger.dispose();
            gc.dispose();
            image.dispose();
        }
    }
}
