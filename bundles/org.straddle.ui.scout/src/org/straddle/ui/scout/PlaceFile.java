package org.straddle.ui.scout;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.exchange.Waypoint;
import org.straddle.exchange.maps.WaypointWriter;
import org.straddle.ui.places.ShownPlace;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Writes the list of places as waypoints for a receiver or a map. */
final class PlaceFile {

    private static final Catalogue TEXTS = Catalogue.of(PlaceFile.class);

    private PlaceFile() {
    }

    static void ask(Shell shell, List<ShownPlace> places) {
        if (places.isEmpty()) {
            MessageDialog.openInformation(shell, TEXTS.text("placeFile.writeList"), TEXTS.text("placeFile.therePlacesList"));
            return;
        }
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(TEXTS.text("placeFile.writeList"));
        dialog.setFilterExtensions(new String[] {"*.gpx", "*.geojson"});
        dialog.setFilterNames(new String[] {TEXTS.text("placeFile.gpxWaypoints"), TEXTS.text("placeFile.geojsonPoints")});
        dialog.setFileName("places.gpx");
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        List<Waypoint> waypoints = places.stream().map(place -> Waypoint.of(place.candidate())).toList();
        boolean geoJson = chosen.toLowerCase(Locale.ROOT).endsWith(".geojson");
        FileWork.run(shell, TEXTS.text("placeFile.writing",
                "chosen", Path.of(chosen).getFileName()), () -> Files.writeString(Path.of(chosen),
                geoJson ? WaypointWriter.geoJson(waypoints) : WaypointWriter.gpx(waypoints), StandardCharsets.UTF_8));
    }
}
