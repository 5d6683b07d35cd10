package org.straddle.grid;

import java.util.ArrayList;
import java.util.List;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicLine;

/** A stretch of road that stays near one line or corner, as it grows edge by edge. */
final class RoadStretch {

    private static final double ROUNDING_M = 0.01;

    private final Boundary boundary;
    private final List<Crossing> crossings = new ArrayList<>();
    private boolean throughCorner;
    private double bandM;
    private double distanceM = Double.POSITIVE_INFINITY;
    private GeoPosition nearest;
    private double bearingDeg;

    RoadStretch(Boundary boundary) {
        this.boundary = boundary;
    }

    Boundary boundary() {
        return boundary;
    }

    /** Adds a piece: where on its edge it is nearest, how near, and how much of it is within half the span. */
    void add(GeodesicLine edge, double nearestM, double pieceDistanceM, double pieceBandM) {
        bandM += pieceBandM;
        if (pieceDistanceM < distanceM) {
            GeodesicData at = edge.Position(nearestM);
            distanceM = pieceDistanceM;
            nearest = new GeoPosition(at.lat2, at.lon2);
            bearingDeg = Geodesic.bearing(at.azi2);
        }
    }

    /** Takes a crossing of the same edge if it happens within the band. */
    boolean addIfWithin(Crossing crossing, LineBand band) {
        boolean within = crossing.distanceM() >= band.fromM() - ROUNDING_M && crossing.distanceM() <= band.toM() + ROUNDING_M;
        if (within) {
            add(crossing);
        }
        return within;
    }

    void add(Crossing crossing) {
        // The stretch at the corner reports it, with all four squares.
        if (crossing.boundary() instanceof GridCorner) {
            throughCorner = true;
        } else {
            crossings.add(crossing);
        }
    }

    void report(MapFeature road, List<Candidate> found) {
        if (boundary instanceof GridCorner corner) {
            double angle = Math.min(angle(corner.parallel()), angle(corner.meridian()));
            found.add(new Candidate(Candidate.Kind.CORNER, corner, nearest, distanceM, corner.squares(), road, bearingDeg,
                    angle, bandM));
            return;
        }
        GridLine line = (GridLine) boundary;
        for (Crossing crossing : crossings) {
            found.add(new Candidate(Candidate.Kind.CROSSING, line, crossing.position(), 0, crossing.squares(), road,
                    crossing.bearingDeg(), angle(line, crossing.bearingDeg()), bandM));
        }
        if (crossings.isEmpty() && !throughCorner) {
            found.add(new Candidate(Candidate.Kind.ALONGSIDE, line, nearest, distanceM, line.squaresAt(nearest), road,
                    bearingDeg, angle(line), bandM));
        }
    }

    private double angle(GridLine line) {
        return angle(line, bearingDeg);
    }

    /** 0 along the line to 90 across it. */
    private static double angle(GridLine line, double bearingDeg) {
        double fromNorth = Math.abs(Math.IEEEremainder(bearingDeg, 180));
        return line.isMeridian() ? fromNorth : 90 - fromNorth;
    }
}
