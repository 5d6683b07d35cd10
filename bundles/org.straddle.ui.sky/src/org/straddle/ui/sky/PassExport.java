package org.straddle.ui.sky;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;
import org.straddle.ui.sky.picture.PassPaper;
import org.straddle.ui.sky.picture.PassPicture;
import org.straddle.ui.things.ThingText;
import org.straddle.ui.workbench.FileWork;

/** Writes the sheet as a page to print or as a picture. */
final class PassExport {

    private static final int WIDTH = 1120;
    private static final int PICTURE_HEIGHT = 400;
    /** A4 landscape. */
    private static final int PAPER_HEIGHT = 792;

    private PassExport() {
    }

    static void ask(Shell shell, PassCanvas picture, PassSheet sheet) {
        if (sheet == null) {
            return;
        }
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Print or export the pass");
        dialog.setFilterNames(new String[] {"Page to print from a browser (*.html)", "Picture (*.png)"});
        dialog.setFilterExtensions(new String[] {"*.html", "*.png"});
        dialog.setFileName(fileName(sheet));
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen != null) {
            boolean png = chosen.toLowerCase(Locale.ROOT).endsWith(".png") || dialog.getFilterIndex() == 1;
            Path file = Path.of(chosen.replaceAll("(?i)\\.(html?|png)$", "") + (png ? ".png" : ".html"));
            byte[] bytes = png ? png(picture, sheet) : page(picture, sheet);
            FileWork.run(shell, "Writing " + file.getFileName(), () -> write(file, bytes));
        }
    }

    static byte[] page(PassCanvas picture, PassSheet sheet) {
        byte[] png = FinePicture.png(picture.control().getDisplay(), WIDTH, PICTURE_HEIGHT, gc -> PassPicture.paint(gc,
                picture.faces(), sheet, new Rectangle(0, 0, WIDTH, PICTURE_HEIGHT), null));
        return PassPage.of(new SheetWords(sheet), png).getBytes(StandardCharsets.UTF_8);
    }

    static byte[] png(PassCanvas picture, PassSheet sheet) {
        return FinePicture.png(picture.control().getDisplay(), WIDTH, PAPER_HEIGHT,
                gc -> PassPaper.paint(gc, picture.faces(), sheet, WIDTH, PAPER_HEIGHT));
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

    private static String fileName(PassSheet sheet) {
        String words = ThingText.of(sheet.found().site()) + " " + ThingText.of(sheet.found().bird()) + " "
                + sheet.aos().at().toString().substring(0, 16).replace(":", "");
        return "pass-" + words.replaceAll("[^\\p{L}\\p{N}]+", "-") + "Z.html";
    }
}
