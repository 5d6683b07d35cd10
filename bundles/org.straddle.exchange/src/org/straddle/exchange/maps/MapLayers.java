package org.straddle.exchange.maps;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.exchange.formats.FileFormat;
import org.straddle.grid.MapFeature;
import org.straddle.grid.MapRole;
import org.straddle.words.Catalogue;

/**
 * Maps sorted by what is on them: roads to scout, and what lies around them. A role that the user gave to a layer
 * counts for all that is on it. Without one counts what a feature says of itself, and after that how the map came in:
 * one that a user gives for scouting is of roads; of a layer of an event the file's name tells ({@code roads.geojson},
 * {@code power-lines.geojson}), and tracks and routes are roads.
 */
public final class MapLayers {

    private static final Catalogue TEXTS = Catalogue.of(MapLayers.class);

    private final List<MapFeature> roads = new ArrayList<>();
    private final Map<MapRole, List<MapFeature>> around = new LinkedHashMap<>();
    private final List<String> remarks = new ArrayList<>();

    /**
     * The maps in a folder and the folders in it, by name; none if there is no such folder.
     *
     * @throws IOException when the folder cannot be read
     */
    public static List<Path> in(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> isMap(file.getFileName().toString())).sorted()
                    .toList();
        }
    }

    /** Does the name of a file say that it may be a map? */
    static boolean isMap(String file) {
        return file.toLowerCase(Locale.ROOT).matches("(?s).*\\.(geojson|gpx)");
    }

    /** Adds a map that a user wants scouted. */
    public void addForScouting(MapFile map) {
        add(map, Optional.of(MapRole.ROAD));
    }

    /** Adds a layer of an event, read, as what the user says it is. */
    public void addLayer(LayerSource layer, MapFile map) {
        if (layer.role().equals(LayerRole.BY_THEMSELVES)) {
            addByThemselves(map);
        } else if (layer.role().equals(LayerRole.ROADS)) {
            addRoads(map);
        } else {
            layer.role().role().ifPresent(role -> addAround(role, map));
        }
    }

    private void addRoads(MapFile map) {
        List<MapFeature> lines = map.features().stream().filter(feature -> feature.shape() == MapFeature.Shape.LINES)
                .map(line -> new MapFeature(line.name(), Optional.of(MapRole.ROAD), line.shape(), line.parts())).toList();
        tell(map);
        int leftOut = map.features().size() - lines.size();
        if (leftOut > 0) {
            remarks.add(TEXTS.text("mapLayers.noLine", "map", map.name(), "leftOut", leftOut));
        }
        roads.addAll(lines);
        around.computeIfAbsent(MapRole.ROAD, unused -> new ArrayList<>()).addAll(lines);
    }

    private void addByThemselves(MapFile map) {
        Optional<MapRole> byName = MapRole.KNOWN.stream().filter(known -> known.equals(nameAsRole(map.name()))).findFirst();
        add(map, byName.or(() -> map.format() == FileFormat.GPX ? Optional.of(MapRole.ROAD) : Optional.empty()));
    }

    /** Adds a map of things of one role, whatever they say of themselves; they are not scouted, even if roads. */
    public void addAround(MapRole role, MapFile map) {
        tell(map);
        around.computeIfAbsent(role, unused -> new ArrayList<>()).addAll(map.features());
    }

    private void add(MapFile map, Optional<MapRole> otherwise) {
        tell(map);
        int leftOut = 0;
        for (MapFeature feature : map.features()) {
            boolean line = feature.shape() == MapFeature.Shape.LINES;
            Optional<MapRole> role = feature.role().or(() -> otherwise.filter(road -> line || !road.equals(MapRole.ROAD)));
            if (role.isEmpty()) {
                leftOut++;
                continue;
            }
            around.computeIfAbsent(role.get(), unused -> new ArrayList<>()).add(feature);
            if (line && role.get().equals(MapRole.ROAD)) {
                roads.add(feature);
            }
        }
        if (leftOut > 0) {
            remarks.add(TEXTS.text("mapLayers.noRole", "map", map.name(), "leftOut", leftOut));
        }
    }

    private void tell(MapFile map) {
        map.remarks().forEach(remark -> remarks.add(map.name() + ", " + remark));
    }

    private static MapRole nameAsRole(String file) {
        String stem = file.substring(file.lastIndexOf('/') + 1).replaceFirst("\\.[^.]*$", "");
        return stem.matches("[\\p{L}\\p{N} _-]{1,40}") && !stem.isBlank() ? new MapRole(stem) : null;
    }

    public List<MapFeature> roads() {
        return List.copyOf(roads);
    }

    /** Everything by its role, the roads themselves included; in the order in which roles came up. */
    public Map<MapRole, List<MapFeature>> around() {
        return new LinkedHashMap<>(around);
    }

    /** Sentences on what was left out, each with its file. */
    public List<String> remarks() {
        return List.copyOf(remarks);
    }
}
