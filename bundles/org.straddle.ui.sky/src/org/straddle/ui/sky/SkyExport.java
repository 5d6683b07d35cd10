package org.straddle.ui.sky;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.drawing.pdf.PdfPages;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.SitePass;
import org.straddle.ui.drawing.FinePicture;
import org.straddle.ui.drawing.GcPen;
import org.straddle.ui.drawing.ScreenLetters;
import org.straddle.ui.sky.picture.Box;
import org.straddle.ui.sky.picture.SkyPaper;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Writes a sheet as pages to print or as a picture, where the user says. */
final class SkyExport {

    private static final Catalogue TEXTS = Catalogue.of(SkyExport.class);

    private static final int FINE = 3;

    private SkyExport() {
    }

    static Box box(Rectangle area) {
        return new Box(area.x, area.y, area.width, area.height);
    }

    /** What to call the file of a pass: what is in it, whose pass it is, and its rise to the minute. */
    static String name(String what, SitePass found) {
        return what + "-" + Naming.name(found.site()) + " " + Naming.name(found.bird()) + " "
                + found.pass().aos().toString().substring(0, 16).replace(":", "") + TEXTS.text("skyExport.zulu");
    }

    /**
     * @param name    of the file, of whatever words
     * @param letters of the screen, for a picture
     */
    static void ask(Shell shell, String title, String name, SkyPaper paper, ScreenLetters letters) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(title);
        dialog.setFilterNames(new String[] {TEXTS.text("skyExport.pdf"), TEXTS.text("skyExport.picturePng")});
        dialog.setFilterExtensions(new String[] {"*.pdf", "*.png"});
        dialog.setFileName(name.replaceAll("[^\\p{L}\\p{N}]+", "-") + ".pdf");
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen != null) {
            boolean picture = chosen.toLowerCase(Locale.ROOT).endsWith(".png") || dialog.getFilterIndex() == 1;
            Path file = Path.of(chosen.replaceAll("(?i)\\.(pdf|png)$", "") + (picture ? ".png" : ".pdf"));
            byte[] png = picture ? png(shell, paper, letters) : null;
            FileWork.run(shell, TEXTS.text("skyExport.writing", "file", file.getFileName()),
                    () -> write(file, picture ? png : pdf(paper)));
        }
    }

    static byte[] pdf(SkyPaper paper) throws IOException {
        return PdfPages.of(paper.title(), paper::pages);
    }

    private static byte[] png(Shell shell, SkyPaper paper, ScreenLetters letters) {
        PdfPages.Page page = paper.pages(letters).get(0);
        return FinePicture.png(shell.getDisplay(), page.widthPx(), page.heightPx(), FINE,
                gc -> page.drawing().accept(new GcPen(gc, letters)));
    }

    /** The file is whole or not there. */
    private static void write(Path file, byte[] bytes) throws IOException {
        Path fresh = file.resolveSibling("." + file.getFileName() + ".new");
        try {
            Files.write(fresh, bytes);
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
