package org.straddle.ui.sky;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.straddle.model.naming.Naming;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;
import org.straddle.ui.sky.picture.PassPaper;
import org.straddle.ui.sky.picture.PassPicture;
import org.straddle.words.Catalogue;

/** The pass sheet as a page to print or as a picture. */
final class PassExport {

    private static final Catalogue TEXTS = Catalogue.of(PassExport.class);

    private static final int WIDTH = 1120;
    private static final int PICTURE_HEIGHT = 400;
    /** A4 landscape. */
    private static final int PAPER_HEIGHT = 792;

    private PassExport() {
    }

    static void ask(Shell shell, PassCanvas picture, PassSheet sheet) {
        String name = "pass-" + Naming.name(sheet.found().site()) + " " + Naming.name(sheet.found().bird()) + " "
                + sheet.aos().at().toString().substring(0, 16).replace(":", "") + TEXTS.text("passExport.z");
        SheetExport.ask(shell, TEXTS.text("passExport.printExportPass"), name, () -> {
            byte[] png = FinePicture.png(shell.getDisplay(), WIDTH, PICTURE_HEIGHT, gc -> PassPicture.paint(gc,
                    picture.faces(), sheet, new Rectangle(0, 0, WIDTH, PICTURE_HEIGHT), null));
            return page(new SheetWords(sheet), png).bytes();
        }, () -> FinePicture.png(shell.getDisplay(), WIDTH, PAPER_HEIGHT,
                gc -> PassPaper.paint(gc, picture.faces(), sheet, WIDTH, PAPER_HEIGHT)));
    }

    static PrintPage page(SheetWords words, byte[] png) {
        List<List<String>> rows = words.moments().stream()
                .map(row -> Stream.concat(Stream.of(row.heading()), row.cells().stream()).toList()).toList();
        return PrintPage.titled(words.title()).picture(png, words.spoken())
                .table(List.of("", "AOS", "TCA", "LOS"), rows).facts(words.facts());
    }
}
