package org.straddle.atlas.scene;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.straddle.atlas.plane.Plane;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Place;
import org.straddle.sky.Subpoint;
import org.straddle.sky.prediction.Ephemeris;
import org.straddle.words.Catalogue;

/**
 * Where a pass can be worked: the places that have the bird above the event's reach elevation while the site has it
 * above its mask, with level horizons at the far end.
 *
 * <p>The edge at one instant is found along geodesics from the point below the bird, where its elevation falls to the
 * least one; the area of the pass is the union over instants some 20 s apart, so an edge bulges inward between two of
 * them by less than a kilometre.
 *
 * @param pass what it is the reach of
 * @param leastDeg elevation that counts at the far end, degrees
 * @param ever rings on the plane around the places reached at some time of the pass
 * @param throughout rings around the places reached all the time; may be empty
 */
public record ReachShape(SitePass pass, double leastDeg, List<double[]> ever, List<double[]> throughout) {

    private static final Catalogue TEXTS = Catalogue.of(ReachShape.class);

    private static final int DIRECTIONS = 90;
    private static final Duration STEP = Duration.ofSeconds(20);
    /** Beyond a third of the Earth no bird is above −30°. */
    private static final double FARTHEST_M = 13_000_000;
    private static final double EXACT_M = 200;
    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** @param monitor may be null */
    public static ReachShape of(Outlook outlook, SitePass pass, Plane plane, IProgressMonitor monitor) {
        Ephemeris ephemeris = outlook.ephemeris(pass.pass());
        double leastDeg = outlook.reach().leastDeg();
        Instant from = pass.pass().aos();
        int steps = (int) Math.max(1, pass.pass().duration().dividedBy(STEP));
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("scene.reach"), steps + 1);
        List<Geometry> areas = new ArrayList<>();
        Geometry throughout = null;
        for (int step = 0; step <= steps; step++) {
            progress.split(1);
            Geometry area = area(ephemeris, from.plus(pass.pass().duration().multipliedBy(step).dividedBy(steps)), leastDeg,
                    plane);
            areas.add(area);
            throughout = throughout == null ? area : throughout.intersection(area);
        }
        return new ReachShape(pass, leastDeg, rings(UnaryUnionOp.union(areas)), rings(throughout));
    }

    /** The places that have the bird up at an instant, on the plane. */
    static Geometry area(Ephemeris ephemeris, Instant at, double leastDeg, Plane plane) {
        Subpoint below = ephemeris.subpoint(at);
        GeoPosition middle = new GeoPosition(below.latitudeDeg(), below.longitudeDeg());
        Coordinate[] ring = new Coordinate[DIRECTIONS + 1];
        double[] point = new double[2];
        for (int i = 0; i < DIRECTIONS; i++) {
            GeoPosition edge = edge(ephemeris, at, middle, 360.0 * i / DIRECTIONS, leastDeg);
            plane.put(edge.latitudeDeg(), edge.longitudeDeg(), point, 0);
            double beyond = Math.hypot(point[0], point[1]) / plane.rimM();
            // Beyond the rim only the direction is shown.
            double shrink = beyond <= 1 ? 1 : 1 / beyond;
            ring[i] = new Coordinate(point[0] * shrink, point[1] * shrink);
        }
        ring[DIRECTIONS] = ring[0].copy();
        Polygon area = SHAPES.createPolygon(ring);
        return area.isValid() ? area : GeometryFixer.fix(area);
    }

    private static GeoPosition edge(Ephemeris ephemeris, Instant at, GeoPosition middle, double bearingDeg,
            double leastDeg) {
        double in = 0;
        double out = FARTHEST_M;
        while (out - in > EXACT_M) {
            double half = (in + out) / 2;
            GeoPosition trial = Geodesic.destination(middle, bearingDeg, half);
            if (ephemeris.lookAt(Place.of(trial.latitudeDeg(), trial.longitudeDeg()), at).elevationDeg() >= leastDeg) {
                in = half;
            } else {
                out = half;
            }
        }
        return Geodesic.destination(middle, bearingDeg, in);
    }

    private static List<double[]> rings(Geometry areas) {
        List<double[]> rings = new ArrayList<>();
        for (int i = 0; i < areas.getNumGeometries(); i++) {
            if (areas.getGeometryN(i) instanceof Polygon area && !area.isEmpty()) {
                rings.add(ring(area.getExteriorRing().getCoordinates()));
                for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
                    rings.add(ring(area.getInteriorRingN(hole).getCoordinates()));
                }
            }
        }
        return List.copyOf(rings);
    }

    private static double[] ring(Coordinate[] corners) {
        double[] ring = new double[2 * corners.length];
        for (int i = 0; i < corners.length; i++) {
            ring[2 * i] = corners[i].x;
            ring[2 * i + 1] = corners[i].y;
        }
        return ring;
    }
}
