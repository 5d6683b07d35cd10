package org.straddle.grid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.sf.geographiclib.GeodesicLine;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import org.straddle.words.Catalogue;

/**
 * Things of one role around the candidates, and what nearness to them is worth. Straight away from the
 * nearest of them the worth falls from its weight to nothing at its reach.
 *
 * <p>Runs of a few dozen edges lie in a tree of rectangles, so that a long line is not looked at as a
 * whole. Within a run a flat estimate sorts out what cannot be nearest; the rest is measured on the
 * ellipsoid, good to 0.1 m.
 */
public final class Surroundings {

    private static final Catalogue TEXTS = Catalogue.of(Surroundings.class);

    /** Farther away nothing matters to a site by the road. */
    public static final double FARTHEST_M = 10_000;

    /**
     * What a role is worth when the user does not say otherwise.
     *
     * @param weight points for a thing right at the candidate; below 0 where near is bad. One square that
     *     every chaser still needs is one point
     * @param reachM distance at which it no longer counts
     */
    public record Weight(double weight, double reachM) {

        /** @throws IllegalArgumentException with a sentence for the user if a value is out of range */
        public Weight {
            if (!(Math.abs(weight) <= 100)) {
                throw new IllegalArgumentException(TEXTS.text("surroundings.weight", "weight", weight));
            }
            if (!(reachM > 0 && reachM <= FARTHEST_M)) {
                throw new IllegalArgumentException(TEXTS.text("surroundings.reach", "reachM", reachM, "mostM", FARTHEST_M));
            }
        }
    }

    /**
     * Our own choice, no published source. A power line within falling distance of an antenna outweighs two
     * squares; another road is a way out and a place to park. A role not listed is reported, but counts nothing.
     */
    private static final Map<MapRole, Weight> USUAL = Map.of(MapRole.POWER_LINE, new Weight(-2, 200), MapRole.QUARRY,
            new Weight(-1, 500), MapRole.RAILWAY, new Weight(-0.5, 200), MapRole.BUILDING, new Weight(-0.5, 200),
            MapRole.ROAD, new Weight(0.5, 1000));
    private static final Weight OTHER = new Weight(0, 1000);

    private static final int EDGES_IN_RUN = 32;
    private static final double DEGREE_M = 111_320;
    private static final double LEAST_DEGREE_M = 110_570;

    /** Where a flat estimate is good to 2 % and a metre. */
    private static final double FLAT_EDGE_M = 2000;

    private final MapRole role;
    private final Weight weight;
    private final STRtree runs = new STRtree();
    private final STRtree areas = new STRtree();

    private Surroundings(MapRole role, Weight weight, Collection<MapFeature> features) {
        this.role = role;
        this.weight = weight;
        for (MapFeature feature : features) {
            Envelope whole = new Envelope();
            for (Trace part : feature.parts()) {
                addRuns(feature, part, whole);
            }
            if (feature.shape() == MapFeature.Shape.AREA && !whole.isNull()) {
                areas.insert(whole, feature);
            }
        }
        runs.build();
        areas.build();
    }

    public static Surroundings of(MapRole role, Weight weight, Collection<MapFeature> features) {
        return new Surroundings(role, weight, features);
    }

    /** With the usual weight of the role. */
    public static Surroundings of(MapRole role, Collection<MapFeature> features) {
        return of(role, usual(role), features);
    }

    /** The weight of a role that the user did not weigh. */
    public static Weight usual(MapRole role) {
        return USUAL.getOrDefault(role, OTHER);
    }

    public MapRole role() {
        return role;
    }

    public Weight weight() {
        return weight;
    }

    /** Edges of a part, from one to before another; a point is an edge from a position to itself. */
    private record Run(MapFeature feature, Trace part, int from, int to) {
    }

    private void addRuns(MapFeature feature, Trace part, Envelope whole) {
        boolean points = feature.shape() == MapFeature.Shape.POINTS || part.size() == 1;
        int edges = points ? part.size() : part.size() - 1;
        for (int from = 0; from < edges; from += EDGES_IN_RUN) {
            int to = Math.min(edges, from + EDGES_IN_RUN);
            Envelope around = new Envelope();
            for (int edge = from; edge < to; edge++) {
                double longitude = part.longitudeDeg(edge);
                around.expandToInclude(longitude, part.latitudeDeg(edge));
                if (!points) {
                    double end = part.unrolledLongitudeDeg(edge);
                    around.expandToInclude(end, part.latitudeDeg(edge + 1));
                    // A geodesic leaves the rectangle of its ends; a crude bound does for an index.
                    double wide = Math.abs(end - longitude);
                    double bulge = Math.min(90, 0.0012 * wide * wide);
                    around.expandToInclude(longitude, part.latitudeDeg(edge) + bulge);
                    around.expandToInclude(longitude, part.latitudeDeg(edge) - bulge);
                    around.expandToInclude(end, part.latitudeDeg(edge + 1) + bulge);
                    around.expandToInclude(end, part.latitudeDeg(edge + 1) - bulge);
                }
            }
            whole.expandToInclude(around);
            runs.insert(around, new Run(feature, part, from, to));
        }
    }

    /**
     * The nearest thing within reach.
     *
     * @param own a road that is not its own surroundings; others of the same name are not either. May be null
     */
    public Optional<Nearness> nearest(GeoPosition position, MapFeature own) {
        MapFeature inside = areaAround(position);
        if (inside != null) {
            return Optional.of(new Nearness(role, 0, inside, weight.weight()));
        }
        double best = weight.reachM();
        MapFeature nearest = null;
        for (Run run : around(position, weight.reachM())) {
            if (own != null && isSame(run.feature(), own)) {
                continue;
            }
            double distance = distanceM(run, position, best);
            if (distance < best) {
                best = distance;
                nearest = run.feature();
            }
        }
        return nearest == null ? Optional.empty()
                : Optional.of(new Nearness(role, best, nearest, weight.weight() * (1 - best / weight.reachM()) + 0.0));
    }

    private static boolean isSame(MapFeature one, MapFeature other) {
        return one == other || !one.name().isEmpty() && one.name().equals(other.name());
    }

    private Set<Run> around(GeoPosition position, double distanceM) {
        double north = distanceM / LEAST_DEGREE_M;
        double farthest = Math.min(89.9, Math.abs(position.latitudeDeg()) + north);
        double east = distanceM / (LEAST_DEGREE_M * Math.cos(Math.toRadians(farthest)));
        Set<Run> found = new HashSet<>();
        for (int turn = -360; turn <= 360; turn += 360) {
            double longitude = position.longitudeDeg() + turn;
            runs.query(new Envelope(longitude - east, longitude + east, position.latitudeDeg() - north,
                    position.latitudeDeg() + north), run -> found.add((Run) run));
        }
        return found;
    }

    private static double distanceM(Run run, GeoPosition position, double best) {
        double nearest = best;
        Trace part = run.part();
        boolean points = run.feature().shape() == MapFeature.Shape.POINTS || part.size() == 1;
        double eastDegreeM = DEGREE_M * Math.cos(Math.toRadians(position.latitudeDeg()));
        for (int edge = run.from(); edge < run.to(); edge++) {
            double x = Math.IEEEremainder(part.longitudeDeg(edge) - position.longitudeDeg(), 360) * eastDegreeM;
            double y = (part.latitudeDeg(edge) - position.latitudeDeg()) * DEGREE_M;
            if (points) {
                if (Math.hypot(x, y) * 0.98 - 1 < nearest) {
                    nearest = Math.min(nearest, Geodesic.distanceM(position, part.position(edge)));
                }
                continue;
            }
            double dx = (part.unrolledLongitudeDeg(edge) - part.longitudeDeg(edge)) * eastDegreeM;
            double dy = (part.latitudeDeg(edge + 1) - part.latitudeDeg(edge)) * DEGREE_M;
            double length = Math.hypot(dx, dy);
            if (length < FLAT_EDGE_M && flatDistance(x, y, dx, dy, length) * 0.98 - 1 >= nearest) {
                continue;
            }
            Geodesic way = Geodesic.between(part.position(edge), part.position(edge + 1));
            GeodesicLine line = way.line();
            nearest = Math.min(nearest, way.distanceM() == 0 ? Geodesic.distanceM(position, way.from())
                    : EdgeFoot.onEdge(line, way.distanceM(), position).distanceM());
        }
        return nearest;
    }

    /** From the origin to the edge that starts at x, y. */
    private static double flatDistance(double x, double y, double dx, double dy, double length) {
        double along = length == 0 ? 0 : Math.max(0, Math.min(1, -(x * dx + y * dy) / (length * length)));
        return Math.hypot(x + along * dx, y + along * dy);
    }

    private MapFeature areaAround(GeoPosition position) {
        List<MapFeature> found = new ArrayList<>();
        for (int turn = -360; turn <= 360; turn += 360) {
            Coordinate point = new Coordinate(position.longitudeDeg() + turn, position.latitudeDeg());
            areas.query(new Envelope(point), area -> found.add((MapFeature) area));
        }
        return found.stream().filter(area -> surrounds(area, position)).findFirst().orElse(null);
    }

    /** By counting the edges that are crossed going east; edges as straight lines in degrees, which is enough here. */
    private static boolean surrounds(MapFeature area, GeoPosition position) {
        boolean inside = false;
        double latitude = position.latitudeDeg();
        for (Trace ring : area.parts()) {
            for (int i = 0, before = ring.size() - 1; i < ring.size(); before = i++) {
                double y = ring.latitudeDeg(i);
                double yBefore = ring.latitudeDeg(before);
                if (y > latitude == yBefore > latitude) {
                    continue;
                }
                double x = Math.IEEEremainder(ring.longitudeDeg(i) - position.longitudeDeg(), 360);
                double xBefore = x + Math.IEEEremainder(ring.longitudeDeg(before) - ring.longitudeDeg(i), 360);
                if (x + (xBefore - x) * (latitude - y) / (yBefore - y) > 0) {
                    inside = !inside;
                }
            }
        }
        return inside;
    }
}
