package org.straddle.atlas.layer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.data.simple.SimpleFeatureIterator;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.straddle.atlas.plane.Outline;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.atlas.plane.Projector;
import org.straddle.grid.GeoBounds;
import org.straddle.grid.Locator;

/**
 * Fields, squares and subsquares on the plane of an event. They are laid in tiles, the squares of a field and the
 * subsquares of a square, when they come into sight: all subsquares of the Earth would be 18 million.
 *
 * <p>Safe for use by many threads.
 */
public final class LaidGrid {

    /** A tile of subsquares has 576 cells; this many are some 40 MB. */
    private static final int MOST_TILES = 400;
    private static final GeoBounds EARTH = new GeoBounds(-90, -180, 90, 180);

    /**
     * A field, square or subsquare.
     *
     * @param locator its name
     * @param middle middle of its latitudes and longitudes, on the plane
     * @param box around it, metres
     */
    public record Cell(String locator, PlanePoint middle, Envelope box) {
    }

    /** Cells that lie together, and the lines between them. */
    public record Tile(List<Cell> cells, List<double[]> lines) {
    }

    private final Projector projector;
    private final Map<String, Tile> tiles = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Tile> eldest) {
            return size() > MOST_TILES;
        }
    };
    private Tile fields;

    public LaidGrid(Projector projector) {
        this.projector = projector;
    }

    /** All fields within the rim of the map. */
    public synchronized Tile fields() {
        if (fields == null) {
            fields = lay(GridLevel.FIELD, EARTH);
        }
        return fields;
    }

    /**
     * The tiles of a level that meet a box.
     *
     * @param level squares or subsquares
     */
    public List<Tile> in(Envelope box, GridLevel level) {
        List<Tile> found = new ArrayList<>();
        if (level == GridLevel.FIELD) {
            found.add(fields());
            return found;
        }
        List<Tile> parents = level == GridLevel.SQUARE ? List.of(fields()) : in(box, GridLevel.SQUARE);
        for (Tile parent : parents) {
            for (Cell cell : parent.cells()) {
                if (cell.box().intersects(box)) {
                    found.add(tile(level, cell.locator()));
                }
            }
        }
        return found;
    }

    /** A field, square or subsquare as a ring on the plane, with positions along its edges. */
    public Outline ring(Locator locator) {
        GridLevel level = GridLevel.values()[locator.text().length() / 2 - 1];
        try (SimpleFeatureIterator one = GridCells.areas(level, locator.bounds()).features()) {
            return projector.area((Geometry) one.next().getDefaultGeometry(), locator.text());
        }
    }

    private synchronized Tile tile(GridLevel level, String parent) {
        return tiles.computeIfAbsent(parent, name -> lay(level, new Locator(name).bounds()));
    }

    private Tile lay(GridLevel level, GeoBounds bounds) {
        List<Cell> cells = new ArrayList<>();
        try (SimpleFeatureIterator each = GridCells.areas(level, bounds).features()) {
            while (each.hasNext()) {
                SimpleFeature area = each.next();
                Outline ring = projector.area((Geometry) area.getDefaultGeometry(), "");
                if (!ring.parts().isEmpty()) {
                    Locator locator = new Locator((String) area.getAttribute(GridCells.LOCATOR));
                    cells.add(new Cell(locator.text(), projector.plane().put(locator.centre()), ring.box()));
                }
            }
        }
        List<double[]> lines = new ArrayList<>();
        try (SimpleFeatureIterator each = GridCells.lines(level, bounds).features()) {
            while (each.hasNext()) {
                lines.addAll(projector.lines((Geometry) each.next().getDefaultGeometry(), "").parts());
            }
        }
        return new Tile(List.copyOf(cells), List.copyOf(lines));
    }
}
