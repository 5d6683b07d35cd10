package org.straddle.ui.sky;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Writes a sheet as a page to print or as a picture, where the user says. */
final class SheetExport {

    private static final Catalogue TEXTS = Catalogue.of(SheetExport.class);

    private SheetExport() {
    }

    /**
     * @param name of the file, of whatever words
     * @param page HTML, made when it is wanted
     * @param png  made when it is wanted
     */
    static void ask(Shell shell, String title, String name, Supplier<byte[]> page, Supplier<byte[]> png) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(title);
        dialog.setFilterNames(new String[] {TEXTS.text("sheetExport.pagePrintFrom"), TEXTS.text("sheetExport.picturePng")});
        dialog.setFilterExtensions(new String[] {"*.html", "*.png"});
        dialog.setFileName(name.replaceAll("[^\\p{L}\\p{N}]+", "-") + ".html");
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen != null) {
            boolean picture = chosen.toLowerCase(Locale.ROOT).endsWith(".png") || dialog.getFilterIndex() == 1;
            Path file = Path.of(chosen.replaceAll("(?i)\\.(html?|png)$", "") + (picture ? ".png" : ".html"));
            byte[] bytes = (picture ? png : page).get();
            FileWork.run(shell, TEXTS.text("sheetExport.writing", "file", file.getFileName()), () -> write(file, bytes));
        }
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
