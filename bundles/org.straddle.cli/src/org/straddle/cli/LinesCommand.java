package org.straddle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;

import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.EventPlace;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.Waypoint;
import org.straddle.exchange.maps.LayerSource;
import org.straddle.exchange.maps.MapFile;
import org.straddle.exchange.maps.MapLayers;
import org.straddle.exchange.maps.MapReader;
import org.straddle.exchange.maps.ScoutRegion;
import org.straddle.exchange.maps.Scouting;
import org.straddle.exchange.maps.WaypointWriter;
import org.straddle.exchange.maps.SwapHint;
import org.straddle.grid.Candidate;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.MapRole;
import org.straddle.grid.Nearness;
import org.straddle.grid.RankedCandidate;
import org.straddle.grid.ScoutReach;
import org.straddle.grid.Square;
import org.straddle.grid.Surroundings;
import org.straddle.model.Event;
import org.straddle.outlook.Demands;
import org.straddle.outlook.PolicyFigures;
import org.straddle.store.EventFolder;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code lines EVENT|FILE…}: where roads cross lines between squares or pass corners. */
@Command(name = "lines", mixinStandardHelpOptions = true, sortOptions = false,
        description = { "Find where roads and tracks cross lines between squares or pass corners, best places first.",
            "Give an event to use its layers and its demand, or GPX and GeoJSON files of roads, or both." },
        footerHeading = "%nPoints:%n",
        footer = {
            "  demand of each square (0 to 1; without an event each counts 1)",
            "  - 1 for each kilometre to walk from the road to a corner",
            "  + weight x (1 - distance / reach) for the nearest thing of each role",
            "  Usual weights: power-line -2 within 200 m, quarry -1 within 500 m, railway and building -0.5",
            "  within 200 m, road +0.5 within 1000 m (another road than its own), any other role 0." })
final class LinesCommand implements Callable<Integer> {

    private static final int MOST_REMARKS = 10;
    private static final double USUAL_SPAN_M = 10;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "EVENT|FILE", description = "Folder of the event, or files with roads.")
    private List<Path> paths;

    @Option(names = "--span", paramLabel = "M",
            description = "Length of the set-up station in metres (default: as in the event's policies, else 10).")
    private Double spanM;

    @Option(names = "--corner-distance", paramLabel = "M", defaultValue = "500",
            description = "Report a road that passes a corner within this distance, metres (default ${DEFAULT-VALUE}).")
    private double cornerDistanceM;

    @Option(names = "--near", paramLabel = "ROLE=FILE",
            description = "What is around: a file of power-line, building, railway, quarry, road, or a role of your own.")
    private List<String> near = List.of();

    @Option(names = "--weight", paramLabel = "ROLE=POINTS[@M]",
            description = "Points for a thing of this role right at the place (below 0: near is bad), and its reach in metres.")
    private Map<String, String> weights = Map.of();

    @Option(names = "--in", paramLabel = "SQUARES", defaultValue = "",
            description = "Only places of these squares or fields, such as HP94,IP04 or HP (default: everywhere).")
    private String in;

    @Option(names = "--top", paramLabel = "N", description = "Only the first N places.")
    private Integer top;

    @Option(names = "--swap", description = "Read the files with latitude and longitude the other way round.")
    private boolean swap;

    @Option(names = "--out", paramLabel = "FILE", description = "Also write the places to a new file, *.gpx or *.geojson.")
    private Path out;

    @Mixin
    private Rows rows;

    private final MapLayers layers = new MapLayers();
    private ToDoubleFunction<Square> demand = square -> 1;

    @Override
    public Integer call() throws IOException {
        if (top != null && top < 1) {
            throw new WrongInput("--top " + top + " is out of range.\nGive a number from 1 up.");
        }
        if (out != null && !isGpx(out) && !isGeoJson(out)) {
            throw new WrongInput("--out " + out + " has neither the ending .gpx nor .geojson.\nGive the file one of them.");
        }
        Map<MapRole, Surroundings.Weight> weighed = weights();
        for (Path path : paths) {
            if (Files.isDirectory(path)) {
                readEvent(path);
            } else {
                layers.addForScouting(read(path));
            }
        }
        for (String each : near) {
            String[] parts = halves(each, "--near", "power-line=lines.geojson");
            layers.addAround(role(parts[0]), read(Path.of(parts[1])));
        }
        tellRemarks();
        ScoutReach reach = reach();
        if (layers.roads().isEmpty()) {
            throw new WrongInput("There are no roads in what was given.\nGive files with roads or tracks, or bring them into the event"
                    + " with: import EVENT FILE --layer road");
        }
        Scouting found = Scouting.of(layers, new Scouting.Question(reach, region(), weighed), demand, new ConsoleProgress(err()));
        List<RankedCandidate> ranked = found.places();
        List<RankedCandidate> shown = top == null ? ranked : ranked.subList(0, Math.min(top, ranked.size()));
        rows.print(table(shown, found.around()), out());
        if (rows.forPeople()) {
            out().printf(Locale.ROOT, "%d places on %.0f km of roads; station %s m long, corners within %s m%n", ranked.size(),
                    found.roadsKm(), plain(reach.spanM()), plain(reach.cornerDistanceM()));
            out().println("Points come from maps alone: look for power lines, traffic and permission on the spot before you set up.");
        }
        if (out != null) {
            List<Waypoint> waypoints = shown.stream().map(Waypoint::of).toList();
            Files.writeString(out, isGpx(out) ? WaypointWriter.gpx(waypoints) : WaypointWriter.geoJson(waypoints),
                    StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        }
        return StraddleCommand.DONE;
    }

    private void readEvent(Path path) throws IOException {
        try (EventFolder folder = EventFolder.openReadOnly(path)) {
            Event event = folder.event();
            Optional<GeoPosition> place = EventPlace.of(event);
            if (spanM == null) {
                spanM = PolicyFigures.of(event.getPolicies()).stationSpanM();
            }
            for (LayerSource layer : LayerSource.of(folder)) {
                MapFile map = layer.read(new ConsoleProgress(err()));
                if (place.isPresent() && SwapHint.seemsSwapped(map, place.get())) {
                    err().println(map.name() + " is far from the event, but near with latitude and longitude exchanged:"
                            + " import it as a layer with --swap.");
                }
                layers.addLayer(layer, map);
            }
            demand = Demands.of(event)::of;
        }
    }

    private MapFile read(Path path) throws ReadException {
        try {
            return MapReader.read(path, swap ? CoordinateOrder.SWAPPED : CoordinateOrder.OF_THE_FORMAT, new ConsoleProgress(err()));
        } catch (ReadException e) {
            if (e.getCause() instanceof CoordinateOutOfRange place && place.fitsSwapped()) {
                throw new WrongInput(e.getMessage() + (swap ? " (Leave out --swap.)" : " (Give --swap.)"));
            }
            throw e;
        }
    }

    private void tellRemarks() {
        List<String> remarks = layers.remarks();
        remarks.stream().limit(MOST_REMARKS).forEach(err()::println);
        if (remarks.size() > MOST_REMARKS) {
            err().println((remarks.size() - MOST_REMARKS) + " more remarks on the files.");
        }
    }

    private ScoutReach reach() {
        try {
            return new ScoutReach(spanM == null ? USUAL_SPAN_M : spanM, cornerDistanceM);
        } catch (IllegalArgumentException e) {
            throw new WrongInput(e.getMessage() + "\nGive another --span or --corner-distance.");
        }
    }

    private ScoutRegion region() {
        try {
            return ScoutRegion.parse(in);
        } catch (IllegalArgumentException e) {
            throw new WrongInput("--in " + in + ": " + e.getMessage());
        }
    }

    private Map<MapRole, Surroundings.Weight> weights() {
        Map<MapRole, Surroundings.Weight> all = new LinkedHashMap<>();
        weights.forEach((written, value) -> {
            MapRole role = role(written);
            String[] parts = value.split("@", 2);
            try {
                double reachM = parts.length > 1 ? Double.parseDouble(parts[1]) : Surroundings.usual(role).reachM();
                all.put(role, new Surroundings.Weight(Double.parseDouble(parts[0]), reachM));
            } catch (NumberFormatException e) {
                throw new WrongInput("--weight " + written + "=" + value + " is not a number of points.\nWrite, for example, power-line=-2@200.");
            } catch (IllegalArgumentException e) {
                throw new WrongInput("--weight " + written + "=" + value + ": " + e.getMessage()
                        + "\nWrite, for example, power-line=-2@200.");
            }
        });
        return all;
    }

    private static String[] halves(String text, String option, String example) {
        String[] parts = text.split("=", 2);
        if (parts.length < 2 || parts[1].isBlank()) {
            throw new WrongInput(option + " " + text + " is not a role and a file.\nWrite, for example, " + example + ".");
        }
        return parts;
    }

    private static MapRole role(String written) {
        try {
            return new MapRole(written);
        } catch (IllegalArgumentException e) {
            throw new WrongInput(e.getMessage());
        }
    }

    private static Table table(List<RankedCandidate> ranked, List<MapRole> around) {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.column("points", "Points"), Table.column("demand", "Demand"),
                Table.column("kind", "Kind"), Table.column("boundary", "Line or corner"), Table.column("squares", "Squares"),
                Table.column("latitudeDeg", "Latitude"), Table.column("longitudeDeg", "Longitude"), Table.column("road", "Road"),
                Table.column("bearingDeg", "bearing°"), Table.column("angleDeg", "angle°"), Table.column("bandM", "band m"),
                Table.column("distanceM", "off m")));
        around.forEach(role -> columns.add(Table.column(camel(role) + "M", role + " m")));
        Table table = new Table(columns.toArray(Table.Column[]::new));
        for (RankedCandidate each : ranked) {
            Candidate candidate = each.candidate();
            List<Object> row = new ArrayList<>();
            row.add(rounded(each.points(), 100));
            row.add(rounded(each.demand(), 100));
            row.add(candidate.kind().name().toLowerCase(Locale.ROOT));
            row.add(candidate.boundary().toString());
            row.add(candidate.squares());
            row.add(degrees(candidate.position().latitudeDeg()));
            row.add(degrees(candidate.position().longitudeDeg()));
            row.add(candidate.road().name());
            row.add(rounded(candidate.bearingDeg(), 1) % 360);
            row.add(rounded(candidate.angleDeg(), 10));
            row.add(rounded(candidate.bandM(), 10));
            row.add(rounded(candidate.distanceM(), 10));
            around.forEach(role -> row.add(each.near(role).map(Nearness::distanceM).map(m -> rounded(m, 1)).orElse(null)));
            table.row(row.toArray());
        }
        return table;
    }

    /** {@code powerLine} for {@code power-line}. */
    private static String camel(MapRole role) {
        StringBuilder name = new StringBuilder();
        for (String word : role.name().split("-")) {
            name.append(name.isEmpty() || word.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
        }
        return name.toString();
    }

    /** To a centimetre: a place is found to a tenth of a metre. */
    private static BigDecimal degrees(double degrees) {
        BigDecimal rounded = new BigDecimal(degrees).setScale(7, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? BigDecimal.ZERO : rounded;
    }

    private static double rounded(double value, double steps) {
        return Math.round(value * steps) / steps;
    }

    private static String plain(double metres) {
        return BigDecimal.valueOf(metres).stripTrailingZeros().toPlainString();
    }

    private static boolean isGpx(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".gpx");
    }

    private static boolean isGeoJson(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".geojson");
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
