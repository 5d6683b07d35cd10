package org.straddle.ui.map;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Transform;
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
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.things.ThingText;
import org.straddle.ui.drawing.GcPen;
import org.straddle.ui.work.FileWork;

/** Writes what is in sight to a picture, or to a page for the brief. */
final class MapFiles {

    /** Twice as fine as on the screen, for printing. */
    private static final int FINE = 2;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(Locale.UK);

    private MapFiles() {
    }

    static void picture(Shell shell, MapCanvas map) {
        ask(shell, "Save the map as a picture", "map.png", "Picture (*.png)")
                .ifPresent(file -> picture(shell, map, file));
    }

    static boolean picture(Shell shell, MapCanvas map, Path file) {
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {draw(shell.getDisplay(), map)};
        return FileWork.run(shell, "Writing the map", () -> {
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            loader.save(png, SWT.IMAGE_PNG);
            Files.write(file, png.toByteArray());
        });
    }

    /** The map in sight, with scale and north. */
    private static ImageData draw(Display display, MapCanvas map) {
        Sight sight = map.sight();
        Image image = new Image(display, sight.width() * FINE, sight.height() * FINE);
        GC gc = new GC(image);
        Transform larger = new Transform(display);
        try {
            larger.scale(FINE, FINE);
            gc.setTransform(larger);
            GcPen pen = new GcPen(gc, map.letters());
            map.picture(sight).draw(pen);
            ScaleBar.of(sight, map.plane().orElseThrow(), map.letters(), 10, sight.height() - 10)
                    .forEach(mark -> mark.draw(pen));
            return image.getImageData();
        } finally {
            larger.dispose();
            gc.dispose();
            image.dispose();
        }
    }

    static void page(Shell shell, MapCanvas map, Outlook outlook) {
        MapContents contents = map.contents().orElseThrow();
        Sight sight = map.sight();
        Shown shown = map.shown();
        MapPage.Text text = text(outlook.event(), contents, shown);
        ask(shell, "Save the map as a page", "map.pdf", "Page (*.pdf)").ifPresent(file -> FileWork.run(shell,
                "Writing the map", () -> write(file, contents, sight, shown, text)));
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
            notes.add("Layers of the event: " + String.join(", ", layers) + ".");
        }
        contents.reach().filter(reach -> shown.shows(Part.REACH)).ifPresent(reach -> notes.add(reachWords(reach.pass())
                + String.format(Locale.ROOT, ", at %.0f° or higher.", reach.leastDeg())));
        return new MapPage.Text("Map: " + ThingText.of(event), days(event), notes);
    }

    static String reachWords(SitePass pass) {
        return "Reach of " + ThingText.of(pass.bird()) + " from " + ThingText.of(pass.site()) + ", TCA "
                + pass.pass().tca().toString().substring(0, 16).replace('T', ' ') + " UTC";
    }

    private static String days(Event event) {
        LocalDate first = event.getFirstDay();
        LocalDate last = event.getLastDay();
        String days = first == null ? "" : last == null || last.equals(first) ? DAY.format(first)
                : DAY.format(first) + " to " + DAY.format(last);
        return days + (days.isEmpty() ? "" : "   ") + "As planned on " + DAY.format(LocalDate.now());
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
