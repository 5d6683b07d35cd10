package org.straddle.ui.map;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.atlas.layer.BaseMap;
import org.straddle.atlas.layer.UserLayer;
import org.straddle.atlas.page.MapPage;
import org.straddle.atlas.picture.MapContents;
import org.straddle.atlas.picture.Part;
import org.straddle.atlas.picture.ScaleBar;
import org.straddle.atlas.picture.Shown;
import org.straddle.atlas.picture.Sight;
import org.straddle.model.Event;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.drawing.FinePicture;
import org.straddle.ui.drawing.GcPen;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;

/** Writes what is in sight to a picture, or to a page for the brief. */
final class MapFiles {

    private static final Catalogue TEXTS = Catalogue.of(MapFiles.class);

    /** Twice as fine as on the screen, for printing. */
    private static final int FINE = 2;

    private MapFiles() {
    }

    static void picture(Shell shell, MapCanvas map) {
        ask(shell, TEXTS.text("mapFiles.saveMapAs"), "map.png", TEXTS.text("mapFiles.picturePng"))
                .ifPresent(file -> picture(shell, map, file));
    }

    static boolean picture(Shell shell, MapCanvas map, Path file) {
        byte[] png = png(shell.getDisplay(), map);
        return FileWork.run(shell, TEXTS.text("mapFiles.writingMap"), () -> Files.write(file, png));
    }

    /** The map in sight, with scale and north. */
    private static byte[] png(Display display, MapCanvas map) {
        Sight sight = map.sight();
        return FinePicture.png(display, sight.width(), sight.height(), FINE, gc -> {
            GcPen pen = new GcPen(gc, map.letters());
            map.picture(sight).draw(pen);
            ScaleBar.of(sight, map.plane().orElseThrow(), map.letters(), 10, sight.height() - 10)
                    .forEach(mark -> mark.draw(pen));
        });
    }

    static void page(Shell shell, MapCanvas map, Outlook outlook) {
        MapContents contents = map.contents().orElseThrow();
        Sight sight = map.sight();
        Shown shown = map.shown();
        MapPage.Text text = text(outlook.event(), contents, shown);
        ask(shell, TEXTS.text("mapFiles.savePage"),
                "map.pdf", TEXTS.text("mapFiles.pagePdf")).ifPresent(file -> FileWork.run(shell,
                TEXTS.text("mapFiles.writingMap"), () -> write(file, contents, sight, shown, text)));
    }

    private static void write(Path file, MapContents contents, Sight sight, Shown shown, MapPage.Text text)
            throws IOException {
        Files.write(file, MapPage.pdf(contents, sight, shown, text, null));
    }

    static MapPage.Text text(Event event, MapContents contents, Shown shown) {
        List<String> notes = new ArrayList<>();
        if (shown.shows(Part.BASE_MAP)) {
            notes.add(BaseMap.ORIGIN);
        }
        List<String> layers = contents.layers().stream().map(UserLayer.Laid::layer).map(UserLayer::name)
                .filter(shown::showsLayer).toList();
        if (!layers.isEmpty()) {
            notes.add(TEXTS.text("mapFiles.layersEvent", "layers", String.join(", ", layers)));
        }
        contents.reach().filter(reach -> shown.shows(Part.REACH)).ifPresent(reach -> notes.add(TEXTS.text("mapFiles.higher",
                "reach", reachWords(reach.pass()), "degrees", reach.leastDeg())));
        return new MapPage.Text(TEXTS.text("mapFiles.map", "event", Naming.name(event)), days(event), notes);
    }

    static String reachWords(SitePass pass) {
        return TEXTS.text("mapFiles.reachFromTca", "bird", Naming.name(pass.bird()),
                "site", Naming.name(pass.site()),
                "tca", pass.pass().tca());
    }

    private static String days(Event event) {
        LocalDate first = event.getFirstDay();
        LocalDate last = event.getLastDay();
        String days = first == null ? "" : last == null || last.equals(first) ? DateText.inCurrent().of(first)
                : TEXTS.text("mapFiles.to", "first", first, "last", last);
        return TEXTS.text("mapFiles.isemptyAsPlanned", "known", !days.isEmpty(), "days", days, "today", LocalDate.now());
    }

    private static Optional<Path> ask(Shell shell, String title, String name, String kind) {
        String ending = name.substring(name.indexOf('.'));
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(title);
        dialog.setFileName(name);
        dialog.setFilterExtensions(new String[] {"*" + ending});
        dialog.setFilterNames(new String[] {kind});
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open()).map(chosen -> Path.of(chosen.endsWith(ending) ? chosen : chosen + ending));
    }
}
