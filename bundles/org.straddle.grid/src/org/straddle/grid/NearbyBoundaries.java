package org.straddle.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.straddle.words.Catalogue;
import net.sf.geographiclib.GeodesicData;

/**
 * The lines and corners within a distance of a position, nearest first.
 *
 * <p>The nearest point of a <em>parallel</em> lies due north or south: meridians are geodesics that
 * cut every parallel at a right angle, so no way from one parallel to another is shorter than along a
 * meridian. The nearest point of a <em>meridian</em> does not lie due east or west but a little
 * towards the pole: due east along a parallel is not the shortest way. It is found where the geodesic
 * meets the meridian at a right angle.
 */
public final class NearbyBoundaries {

    private static final Catalogue TEXTS = Catalogue.of(NearbyBoundaries.class);

    /** A longer reach is of no use to a team and would meet several lines at a pole in odd ways. */
    public static final double FARTHEST_M = 500_000;

    /** Least length of a degree of latitude anywhere on the ellipsoid is 110 574 m, at the equator. */
    private static final double LEAST_DEGREE_OF_LATITUDE_M = 110_570;

    /** The foot on a meridian is settled when one more step would move it less than this. */
    private static final double SETTLED_M = 1e-7;

    private NearbyBoundaries() {
    }

    /**
     * @param maxDistanceM metres, 0 to {@link #FARTHEST_M}
     * @throws IllegalArgumentException if the distance is out of range
     */
    public static List<NearBoundary> of(GeoPosition position, double maxDistanceM) {
        if (!(maxDistanceM >= 0 && maxDistanceM <= FARTHEST_M)) {
            throw new IllegalArgumentException(
                    TEXTS.text("nearbyBoundaries.distance", "maxDistanceM", maxDistanceM, "farthestM", FARTHEST_M));
        }
        List<NearBoundary> near = new ArrayList<>();
        List<GridLine> parallels = new ArrayList<>();
        List<GridLine> meridians = new ArrayList<>();
        double reachDeg = maxDistanceM / LEAST_DEGREE_OF_LATITUDE_M + 1e-9;
        int south = Math.max(-89, (int) Math.ceil(position.latitudeDeg() - reachDeg));
        int north = Math.min(89, (int) Math.floor(position.latitudeDeg() + reachDeg));
        for (int degree = south; degree <= north; degree++) {
            addIfNear(near, parallels, toLine(position, GridLine.parallel(degree)), maxDistanceM);
        }
        // Distance grows with the angle from the position's own meridian, so each side stops at the first too far.
        int firstEast = Square.columnOf(position) + 1;
        for (int side = 0; side < 2; side++) {
            for (int step = 0; step < Square.COLUMNS / 2; step++) {
                int column = Math.floorMod(side == 0 ? firstEast + step : firstEast - 1 - step, Square.COLUMNS);
                NearBoundary line = toLine(position, GridLine.meridian(2 * column - 180));
                if (!addIfNear(near, meridians, line, maxDistanceM)) {
                    break;
                }
            }
        }
        for (GridLine parallel : parallels) {
            for (GridLine meridian : meridians) {
                NearBoundary corner = toCorner(position, new GridCorner(parallel.degree(), meridian.degree()));
                if (corner.distanceM() <= maxDistanceM) {
                    near.add(corner);
                }
            }
        }
        near.sort(Comparator.comparingDouble(NearBoundary::distanceM));
        return List.copyOf(near);
    }

    private static boolean addIfNear(List<NearBoundary> near, List<GridLine> lines, NearBoundary line, double maxM) {
        if (line.distanceM() > maxM) {
            return false;
        }
        near.add(line);
        lines.add((GridLine) line.boundary());
        return true;
    }

    /** A corner as seen from a position. */
    public static NearBoundary toCorner(GeoPosition position, GridCorner corner) {
        return new NearBoundary(corner, Geodesic.distanceM(position, corner.position()), corner.position(),
                corner.squares());
    }

    /**
     * A line as seen from a position. From more than 90° of longitude away the nearest point of a
     * meridian is taken to be a pole.
     */
    public static NearBoundary toLine(GeoPosition position, GridLine line) {
        GeoPosition foot = line.isMeridian() ? footOnMeridian(position, line.degree())
                : new GeoPosition(line.degree(), position.longitudeDeg());
        return new NearBoundary(line, Geodesic.distanceM(position, foot), foot, line.squaresAt(foot));
    }

    /**
     * Walks along the meridian by the part of the way that points along it, until none is left. Near
     * the foot each walk leaves about (distance / Earth radius)² of the error.
     */
    private static GeoPosition footOnMeridian(GeoPosition position, int meridianDeg) {
        if (position.longitudeDeg() == meridianDeg) {
            return position;
        }
        double latitude = firstGuess(position, meridianDeg);
        for (int step = 0; step < 100; step++) {
            GeodesicData way = net.sf.geographiclib.Geodesic.WGS84.Inverse(position.latitudeDeg(),
                    position.longitudeDeg(), latitude, meridianDeg);
            double alongM = -way.s12 * Math.cos(Math.toRadians(way.azi2));
            if (Math.abs(alongM) < SETTLED_M) {
                break;
            }
            double next = Math.max(-90, Math.min(90, latitude + alongM / 111_320));
            if (next == latitude) {
                break;
            }
            latitude = next;
        }
        return new GeoPosition(latitude, meridianDeg);
    }

    /** The foot on a sphere. */
    private static double firstGuess(GeoPosition position, int meridianDeg) {
        double latitude = Math.toRadians(position.latitudeDeg());
        double apart = Math.toRadians(position.longitudeDeg() - meridianDeg);
        double towards = Math.cos(latitude) * Math.cos(apart);
        if (towards <= 0) {
            return position.latitudeDeg() < 0 ? -90 : 90;
        }
        return Math.toDegrees(Math.atan2(Math.sin(latitude), towards));
    }
}
