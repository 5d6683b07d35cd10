package org.straddle.outlook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.straddle.grid.GeoBounds;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.sky.Place;
import org.straddle.sky.prediction.Area;

/**
 * A part of the world as written down: its squares and its outline as one. It can tell whether a place lies in it, and
 * stands for itself as a grid of places, each with the cosine of its latitude as weight.
 *
 * <p>Some {@value #PLACES} places make an error of a few parts in a thousand in a share, and at most that of
 * the places along one edge, 2.5 %, for a footprint whose edge runs along a row of the grid. An outline must be no
 * polar cap, and one across 180° goes on counting (170 to 190, or −170 to −190).
 */
final class Ground {

    private static final int PLACES = 400;
    /** Long thin shapes leave most of the grid outside; more trials than this are not made. */
    private static final int MOST_TRIALS = 100_000;
    private static final int LONGEST_OUTLINE = 1_000_000;
    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** To work out an area takes milliseconds, and most edits change none. */
    private static final int MOST_KNOWN = 64;
    private static final Map<Written, Ground> KNOWN = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Written, Ground> eldest) {
            return size() > MOST_KNOWN;
        }
    };

    private record Written(List<String> squares, String outline) {
    }

    private final Geometry shape;
    private Area area;

    private Ground(Geometry shape) {
        this.shape = shape;
    }

    /**
     * @param outline well-known text; may be null or empty
     * @throws IllegalArgumentException naming what is wrong, as part of a sentence
     */
    static Ground of(List<String> squares, String outline) {
        Written written = new Written(List.copyOf(squares), outline == null ? "" : outline);
        synchronized (KNOWN) {
            Ground known = KNOWN.get(written);
            if (known == null) {
                known = new Ground(shape(written));
                KNOWN.put(written, known);
            }
            return known;
        }
    }

    /** Whether a place lies in it or on its edge. */
    boolean contains(GeoPosition place) {
        // An outline across 180° goes on counting.
        return Stream.of(0, 360, -360).anyMatch(turn -> shape
                .covers(SHAPES.createPoint(new Coordinate(place.longitudeDeg() + turn, place.latitudeDeg()))));
    }

    /** Its outlines, x is the longitude, degrees on WGS-84; across 180° they go on counting. */
    Geometry shape() {
        return shape.copy();
    }

    /** The places that stand for it. */
    synchronized Area area() {
        if (area == null) {
            area = sampled(shape);
        }
        return area;
    }

    private static Geometry shape(Written written) {
        List<Geometry> parts = new ArrayList<>();
        for (String name : written.squares) {
            parts.add(shape(Square.parse(name).bounds()));
        }
        if (!written.outline.isBlank()) {
            parts.add(shape(written.outline));
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("it has neither squares nor an outline");
        }
        Geometry shape = UnaryUnionOp.union(parts);
        if (!(shape.getArea() > 0)) {
            throw new IllegalArgumentException("its outline encloses nothing");
        }
        return shape;
    }

    private static Geometry shape(GeoBounds bounds) {
        return SHAPES.toGeometry(
                new Envelope(bounds.westDeg(), bounds.eastDeg(), bounds.southDeg(), bounds.northDeg()));
    }

    private static Geometry shape(String outline) {
        if (outline.length() > LONGEST_OUTLINE) {
            throw new IllegalArgumentException("its outline is longer than a million characters");
        }
        Geometry shape;
        try {
            shape = new WKTReader(SHAPES).read(outline);
        } catch (ParseException | IllegalArgumentException e) {
            throw new IllegalArgumentException("its outline cannot be read (" + e.getMessage() + ")", e);
        }
        if (!(shape instanceof Polygonal)) {
            throw new IllegalArgumentException("its outline is a " + shape.getGeometryType()
                    + ", not a POLYGON or MULTIPOLYGON");
        }
        for (Coordinate corner : shape.getCoordinates()) {
            if (!(Math.abs(corner.y) <= 90 && Math.abs(corner.x) <= 360)) {
                throw new IllegalArgumentException("its outline has a corner at longitude " + corner.x + ", latitude "
                        + corner.y + ", which is no place");
            }
        }
        return shape.isValid() ? shape : GeometryFixer.fix(shape);
    }

    private static Area sampled(Geometry shape) {
        Envelope box = shape.getEnvelopeInternal();
        double cosMiddle = Math.max(0.02, Math.cos(Math.toRadians(box.centre().y)));
        // Degrees of latitude between rows; columns are wider by the cosine, for even spacing on the ground.
        double step = Math.max(Math.sqrt(shape.getArea() * cosMiddle / PLACES),
                Math.sqrt(box.getArea() * cosMiddle / MOST_TRIALS));
        int rows = Math.max(1, (int) Math.round(box.getHeight() / step));
        int columns = Math.max(1, (int) Math.round(box.getWidth() * cosMiddle / step));
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(shape);
        List<Place> places = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Coordinate trial = new Coordinate(box.getMinX() + (column + 0.5) * box.getWidth() / columns,
                        box.getMinY() + (row + 0.5) * box.getHeight() / rows);
                if (inside.locate(trial) == Location.INTERIOR) {
                    places.add(place(trial));
                }
            }
        }
        if (places.isEmpty()) {
            places.add(place(shape.getInteriorPoint().getCoordinate()));
        }
        return Area.of(places, weights(places));
    }

    private static double[] weights(Collection<Place> places) {
        return places.stream().mapToDouble(place -> Math.max(1e-9, Math.cos(Math.toRadians(place.latitudeDeg()))))
                .toArray();
    }

    private static Place place(Coordinate at) {
        GeoPosition position = new GeoPosition(at.y, at.x);
        return Place.of(position.latitudeDeg(), position.longitudeDeg());
    }
}
