package org.straddle.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;

import org.straddle.exchange.Waypoint;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.maps.LayerSource;
import org.straddle.exchange.maps.MapFile;
import org.straddle.exchange.maps.MapReader;
import org.straddle.exchange.maps.MapWriter;
import org.straddle.exchange.maps.TeamRoute;
import org.straddle.exchange.maps.WaypointWriter;
import org.straddle.exchange.sites.SiteWriter;
import org.straddle.model.Event;
import org.straddle.model.Team;
import org.straddle.store.EventFolder;
import org.straddle.words.Catalogue;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code export EVENT}: sites, a team's way or a layer as a file for other programs. */
@Command(name = "export")
final class ExportCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(ExportCommand.class);

    @Option(names = "--format", paramLabel = "FORMAT")
    private SiteWriter.Format format;

    @Option(names = "--out", paramLabel = "FILE")
    private Path out;

    @ArgGroup(exclusive = true)
    private What what = new What();

    private static final class What {

        @Option(names = "--team", paramLabel = "TEAM")
        private String team;

        @Option(names = "--layer", paramLabel = "LAYER")
        private String layer;
    }

    @Override
    int work() throws Exception {
        Event event = opened.event();
        String text = what.team != null ? readable(route(event)) : what.layer != null ? readable(layer(opened.folder())) : sites(event);
        if (out == null) {
            out().print(text);
        } else {
            Files.writeString(out, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        }
        return StraddleCommand.DONE;
    }

    /** The text of a layer, if import reads it. */
    private static String readable(String text) {
        try {
            MapReader.read(new SourceFile("export", text.getBytes(StandardCharsets.UTF_8)), CoordinateOrder.OF_THE_FORMAT, null);
            return text;
        } catch (ReadException e) {
            throw new WrongInput(TEXTS.text("exportCommand.nothingWrittenBecause", "what", e.what(),
                    "whatToDo", e.whatToDo()));
        }
    }

    private SiteWriter.Format format(SiteWriter.Format otherwise) {
        if (format != null || out == null) {
            return format == null ? otherwise : format;
        }
        String name = out.toString().toLowerCase(Locale.ROOT);
        for (SiteWriter.Format each : SiteWriter.Format.values()) {
            if (name.endsWith(each.extension())) {
                return each;
            }
        }
        throw new WrongInput(TEXTS.text("exportCommand.outDoesNot", "out", out));
    }

    private String sites(Event event) {
        if (event.getSites().isEmpty()) {
            throw new WrongInput(TEXTS.text("exportCommand.eventHasSites"));
        }
        try {
            return SiteWriter.write(event.getSites(), format(SiteWriter.Format.CSV));
        } catch (IllegalArgumentException e) {
            throw new WrongInput(e.getMessage());
        }
    }

    private String route(Event event) {
        Team team = OpenEvent.team(what.team, event);
        if (format(SiteWriter.Format.GPX) != SiteWriter.Format.GPX) {
            throw new WrongInput(TEXTS.text("exportCommand.wayTeamGoes"));
        }
        try {
            List<Waypoint> way = TeamRoute.of(event, team);
            if (way.isEmpty()) {
                throw new WrongInput(TEXTS.text("exportCommand.planHasStops", "number", team.getNumber()));
            }
            return WaypointWriter.gpxRoute(team.getNumber() + " " + team.getName(), way);
        } catch (IllegalArgumentException e) {
            throw new WrongInput(e.getMessage());
        }
    }

    private String layer(EventFolder folder) throws Exception {
        List<LayerSource> layers = LayerSource.of(folder);
        LayerSource source = layers.stream().filter(each -> each.file().name().equals(what.layer)).findFirst()
                .orElseGet(() -> OpenEvent.named(what.layer, layers, LayerSource::title, TEXTS.text("exportCommand.kind")));
        MapFile map = source.read(new ConsoleProgress(err()));
        return switch (format(SiteWriter.Format.GPX)) {
            case GPX -> MapWriter.gpx(map.features());
            case GEOJSON -> MapWriter.geoJson(map.features());
            case CSV -> throw new WrongInput(TEXTS.text("exportCommand.layerGoesOut"));
        };
    }
}
