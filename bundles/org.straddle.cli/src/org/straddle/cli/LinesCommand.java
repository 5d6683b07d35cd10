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
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code lines EVENT|FILE…}: where roads cross lines between squares or pass corners. */
@Command(name = "lines", mixinStandardHelpOptions = true, sortOptions = false)
final class LinesCommand implements Callable<Integer> {

    private static final Catalogue TEXTS = Catalogue.of(LinesCommand.class);

    private static final int MOST_REMARKS = 10;
    private static final double USUAL_SPAN_M = 10;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "EVENT|FILE")
    private List<Path> paths;

    @Option(names = "--span", paramLabel = "M")
    private Double spanM;

    @Option(names = "--corner-distance", paramLabel = "M", defaultValue = "500")
    private double cornerDistanceM;

    @Option(names = "--near", paramLabel = "ROLE=FILE")
    private List<String> near = List.of();

    @Option(names = "--weight", paramLabel = "ROLE=POINTS[@M]")
    private Map<String, String> weights = Map.of();

    @Option(names = "--in", paramLabel = "SQUARES", defaultValue = "")
    private String in;

    @Option(names = "--top", paramLabel = "N")
    private Integer top;

    @Option(names = "--swap")
    private boolean swap;

    @Option(names = "--out", paramLabel = "FILE")
    private Path out;

    @Mixin
    private Rows rows;

    private final MapLayers layers = new MapLayers();
    private ToDoubleFunction<Square> demand = square -> 1;

    @Override
    public Integer call() throws IOException {
        if (top != null && top < 1) {
            throw new WrongInput(TEXTS.text("linesCommand.topOutRange", "top", top));
        }
        if (out != null && !isGpx(out) && !isGeoJson(out)) {
            throw new WrongInput(TEXTS.text("linesCommand.outHasNeither", "out", out));
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
        ScoutReach reach = reach();
        if (layers.roads().isEmpty()) {
            // Only the first remark: a refusal is short, and it is the likeliest reason.
            throw new WrongInput(TEXTS.text("linesCommand.thereRoadsWhat", "told", !layers.remarks().isEmpty(),
                    "because", layers.remarks().stream().findFirst().orElse("")));
        }
        tellRemarks();
        Scouting found = Scouting.of(layers, new Scouting.Question(reach, region(), weighed), demand, new ConsoleProgress(err()));
        List<RankedCandidate> ranked = found.places();
        List<RankedCandidate> shown = top == null ? ranked : ranked.subList(0, Math.min(top, ranked.size()));
        rows.print(table(shown, found.around(), rows.forPeople() ? TEXTS.text("linesCommand.unknown") : null), out());
        if (rows.forPeople()) {
            out().println(TEXTS.text("linesCommand.placesKmRoads", "ranked", ranked.size(), "roadsKm", found.roadsKm(),
                    "plain", plain(reach.spanM()), "plain2", plain(reach.cornerDistanceM())));
            out().println(TEXTS.text("linesCommand.pointsComeFrom"));
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
                    err().println(TEXTS.text("linesCommand.farFromEvent", "map", map.name()));
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
                throw new WrongInput(e.getMessage() + (swap ? TEXTS.text("importCommand.leaveOutSwap")
                        : TEXTS.text("importCommand.giveSwap")));
            }
            throw e;
        }
    }

    private void tellRemarks() {
        List<String> remarks = layers.remarks();
        remarks.stream().limit(MOST_REMARKS).forEach(err()::println);
        if (remarks.size() > MOST_REMARKS) {
            err().println(TEXTS.text("linesCommand.moreRemarksFiles", "remarks", (remarks.size() - MOST_REMARKS)));
        }
    }

    private ScoutReach reach() {
        try {
            return new ScoutReach(spanM == null ? USUAL_SPAN_M : spanM, cornerDistanceM);
        } catch (IllegalArgumentException e) {
            throw new WrongInput(TEXTS.text("linesCommand.giveSpanCorner", "reason", e.getMessage()));
        }
    }

    private ScoutRegion region() {
        try {
            return ScoutRegion.parse(in);
        } catch (IllegalArgumentException e) {
            throw new WrongInput(TEXTS.text("linesCommand.in", "in", in, "reason", e.getMessage()));
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
                throw new WrongInput(TEXTS.text("linesCommand.weightNotNumber", "written", written, "value", value));
            } catch (IllegalArgumentException e) {
                throw new WrongInput(TEXTS.text("linesCommand.weightWriteExample", "written", written, "value", value,
                        "reason", e.getMessage()));
            }
        });
        return all;
    }

    private static String[] halves(String text, String option, String example) {
        String[] parts = text.split("=", 2);
        if (parts.length < 2 || parts[1].isBlank()) {
            throw new WrongInput(TEXTS.text("linesCommand.notRoleFile", "option", option, "text", text,
                    "example", example));
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

    /** @param unknown what stands where no map has a thing of a role within reach: that does not mean that there is none */
    private static Table table(List<RankedCandidate> ranked, List<MapRole> around, String unknown) {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.column("points"), Table.column("demand"),
                Table.column("kind"), Table.column("boundary"), Table.column("squares"),
                Table.column("latitudeDeg"), Table.column("longitudeDeg"), Table.column("road"),
                Table.column("bearingDeg"), Table.column("angleDeg"), Table.column("bandM"),
                Table.column("distanceM")));
        around.forEach(role -> columns.add(Table.column(camel(role) + "M", role + " m")));
        Table table = new Table(columns.toArray(Table.Column[]::new));
        for (RankedCandidate each : ranked) {
            Candidate candidate = each.candidate();
            List<Object> row = new ArrayList<>();
            row.add(Rounded.hundredths(each.points()));
            row.add(Rounded.hundredths(each.demand()));
            row.add(candidate.kind().name().toLowerCase(Locale.ROOT));
            row.add(candidate.boundary().toString());
            row.add(candidate.squares());
            row.add(degrees(candidate.position().latitudeDeg()));
            row.add(degrees(candidate.position().longitudeDeg()));
            row.add(String.join(", ", each.roadNames()));
            row.add(Rounded.whole(candidate.bearingDeg()) % 360);
            row.add(Rounded.tenths(candidate.angleDeg()));
            row.add(Rounded.tenths(candidate.bandM()));
            row.add(Rounded.tenths(candidate.distanceM()));
            around.forEach(role -> row.add(each.near(role).map(Nearness::distanceM).<Object>map(m -> Rounded.whole(m)).orElse(unknown)));
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
