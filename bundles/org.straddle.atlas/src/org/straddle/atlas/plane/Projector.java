package org.straddle.atlas.plane;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.impl.PackedCoordinateSequenceFactory;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;

/** Lays geometries of longitude and latitude, degrees on WGS 84, on a plane. */
public final class Projector {

    /** An edge this long lies less than a hundred metres beside the straight line on the plane, near the event. */
    private static final double LONGEST_EDGE_M = 60_000;

    /** Makes the geometries of the map, which keep their numbers packed: a layer may have millions. */
    public static final GeometryFactory SHAPES = new GeometryFactory(PackedCoordinateSequenceFactory.DOUBLE_FACTORY);

    private final Plane plane;
    private final Rim rim;

    public Projector(Plane plane) {
        this.plane = plane;
        this.rim = new Rim(plane);
    }

    public Plane plane() {
        return plane;
    }

    /** Points of a geometry within the rim, one part each. */
    public Outline points(Geometry geometry, String name) {
        List<double[]> parts = new ArrayList<>();
        for (Coordinate place : geometry.getCoordinates()) {
            double[] point = new double[2];
            plane.put(place.y, place.x, point, 0);
            if (Math.hypot(point[0], point[1]) <= plane.rimM()) {
                parts.add(point);
            }
        }
        return new Outline(Outline.Kind.POINTS, parts, name);
    }

    /** The lines of a geometry, or the edges of its areas; edges are straight on the plane between positions. */
    public Outline lines(Geometry geometry, String name) {
        List<double[]> parts = new ArrayList<>();
        strings(geometry).forEach(line -> parts.addAll(rim.line(put(line))));
        return new Outline(Outline.Kind.LINES, parts, name);
    }

    /** The areas of a geometry; lines in it that are closed count as rings. */
    public Outline area(Geometry geometry, String name) {
        List<double[]> parts = new ArrayList<>();
        strings(geometry).forEach(line -> parts.addAll(rim.ring(put(line), false)));
        return new Outline(Outline.Kind.AREA, parts, name);
    }

    /**
     * Areas that may hold the place opposite to the centre, with what they surround on the right of each ring: there
     * the inside of a ring becomes its outside, and the whole rim is surrounded once more.
     */
    public List<Outline> worldAreas(List<Geometry> areas) {
        List<Outline> all = new ArrayList<>();
        double farthest = -1;
        boolean oppositeInside = false;
        for (Geometry area : areas) {
            List<double[]> parts = new ArrayList<>();
            for (LineString line : strings(area)) {
                double[] ring = put(line);
                double turns = Rim.turns(ring);
                double nearest = Math.abs(turns) > 0.5 ? nearest(ring) : -1;
                if (nearest > farthest) {
                    farthest = nearest;
                    oppositeInside = turns > 0;
                }
                parts.addAll(rim.ring(ring, true));
            }
            if (!parts.isEmpty()) {
                all.add(new Outline(Outline.Kind.AREA, parts, ""));
            }
        }
        if (oppositeInside) {
            all.add(new Outline(Outline.Kind.AREA, List.of(rim.circle()), ""));
        }
        return all;
    }

    /** The rim of the map as an area. */
    public Outline wholeMap() {
        return new Outline(Outline.Kind.AREA, List.of(rim.circle()), "");
    }

    /** The geodesic between two places, the shortest way on the spheroid; split where it leaves the map. */
    public List<double[]> geodesic(GeoPosition from, GeoPosition to) {
        Geodesic way = Geodesic.between(from, to);
        int pieces = (int) Math.max(1, Math.ceil(way.distanceM() / LONGEST_EDGE_M));
        double[] line = new double[2 * pieces + 2];
        for (int piece = 0; piece <= pieces; piece++) {
            GeoPosition place = piece == 0 ? from : piece == pieces ? to : way.pointAt(way.distanceM() * piece / pieces);
            plane.put(place.latitudeDeg(), place.longitudeDeg(), line, 2 * piece);
        }
        return rim.line(line);
    }

    private double nearest(double[] ring) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.length; i += 2) {
            least = Math.min(least, Math.hypot(ring[i], ring[i + 1]));
        }
        return least;
    }

    private double[] put(LineString line) {
        CoordinateSequence places = line.getCoordinateSequence();
        double[] points = new double[2 * places.size()];
        for (int i = 0; i < places.size(); i++) {
            plane.put(places.getY(i), places.getX(i), points, 2 * i);
        }
        return points;
    }

    private static List<LineString> strings(Geometry geometry) {
        List<LineString> lines = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            Geometry part = geometry.getGeometryN(i);
            if (part instanceof Polygon area) {
                lines.add(area.getExteriorRing());
                for (int hole = 0; hole < area.getNumInteriorRing(); hole++) {
                    lines.add(area.getInteriorRingN(hole));
                }
            } else if (part instanceof LineString line) {
                lines.add(line);
            } else if (!(part instanceof Point) && part != geometry) {
                lines.addAll(strings(part));
            }
        }
        return lines;
    }
}
