package org.straddle.sky;

import java.util.List;

/**
 * The times a track lies above one place's horizon mask.
 *
 * <p>Testing every node for a change of sign would miss a pass that rises and sets between two of
 * them, and a mask has corners at which the clearance bends. So each step near the horizon is cut
 * where the bird crosses the azimuth of a corner, which makes clearance smooth on each piece, and a
 * piece whose slopes show a top (or a dip) inside is searched there too. Far from the horizon whole
 * runs of steps are skipped, by bounds that hold whatever the orbit: the bird cannot come up
 * sooner than its greatest speed, or the strongest pull on it, allows.
 *
 * <p>Weak where clearance has two tops within one piece; the grid step and the pieces are chosen
 * short enough that no orbit or mask in the tests shows it.
 */
final class PassFinder {

    /** Shorter spans are rounding at a tangent, not passes. */
    private static final double SHORTEST_PASS_S = 0.001;
    /** With a mask, the azimuth turns no more than this within a piece, save close to the zenith. */
    private static final double WIDEST_TURN_DEG = 15;
    private static final double SHORTEST_PIECE_S = 0.05;

    private final Track track;
    private final Sightline sight;
    private final Horizon horizon;
    private final double[] corners;
    private final double sinLowest;
    private final double sinHighest;
    private final double speed;
    private final double pull;
    private final SignChanges changes = new SignChanges(this::clearance);

    PassFinder(Track track, Place place, Horizon horizon) {
        this.track = track;
        this.sight = new Sightline(place, track);
        this.horizon = horizon;
        this.corners = horizon.isFlat() ? new double[0] : horizon.azimuthsDeg();
        this.sinLowest = Math.sin(Math.toRadians(horizon.lowestDeg()));
        this.sinHighest = Math.sin(Math.toRadians(horizon.highestDeg()));
        this.pull = track.strongestMS2();
        this.speed = track.fastestMS();
    }

    static List<Span> spans(Track track, Place place, Horizon horizon, double from, double to) {
        return new PassFinder(track, place, horizon).between(from, to);
    }

    private List<Span> between(double from, double to) {
        double t = from;
        sight.at(t);
        double belowHere = below(sinLowest);
        double belowHereRate = belowRate(sinLowest);
        double aboveHere = -below(sinHighest);
        double aboveHereRate = -belowRate(sinHighest);
        while (t < to) {
            double unchanged = Math.max(Math.max(belowHere / speed / (1 + Math.abs(sinLowest)), untilLevel()),
                    aboveHere / speed / (1 + Math.abs(sinHighest)));
            double next = Math.min(to, Math.max(SignChanges.nextNode(t, track.stepS()), nodeBefore(t + unchanged)));
            boolean skip = t + unchanged >= next;
            sight.at(next);
            double belowNext = below(sinLowest);
            double belowNextRate = belowRate(sinLowest);
            double aboveNext = -below(sinHighest);
            double aboveNextRate = -belowRate(sinHighest);
            if (!skip && !stays(belowHere, belowHereRate, belowNext, belowNextRate)
                    && !stays(aboveHere, aboveHereRate, aboveNext, aboveNextRate)) {
                step(t, next);
            }
            t = next;
            belowHere = belowNext;
            belowHereRate = belowNextRate;
            aboveHere = aboveNext;
            aboveHereRate = aboveNextRate;
        }
        return changes.positive(from, to, SHORTEST_PASS_S);
    }

    /**
     * Seconds before which the bird cannot come up to the level plane of the place, by the strongest
     * pull: much longer than the speed alone tells for a bird that is going down.
     */
    private double untilLevel() {
        double depth = -sight.height();
        if (sinLowest < 0 || depth <= 0) {
            return 0;
        }
        double sinking = -sight.heightRate();
        return (sinking + Math.sqrt(sinking * sinking + 2 * pull * depth)) / pull;
    }

    private double nodeBefore(double t) {
        return Math.floor(t / track.stepS()) * track.stepS();
    }

    /** Metres by which the bird would have to rise to reach an elevation, times its cosine. */
    private double below(double sinElevation) {
        return sinElevation * sight.range() - sight.height();
    }

    private double belowRate(double sinElevation) {
        return sinElevation * sight.rangeRate() - sight.heightRate();
    }

    /** Whether something positive at both ends of a step is so between: it does not fall and rise again. */
    private static boolean stays(double a, double aRate, double b, double bRate) {
        return a > 0 && b > 0 && !(aRate < 0 && bRate > 0);
    }

    /** Positive above the mask: metres for a level one, else radians. */
    private double clearance(double t) {
        sight.at(t);
        return corners.length == 0 ? -below(sinLowest) : sight.elevation()
                - Math.toRadians(horizon.elevationDegAt(Math.toDegrees(sight.azimuth())));
    }

    private void step(double a, double b) {
        if (corners.length == 0) {
            changes.piece(a, b);
        } else {
            turn(a, azimuthDeg(a), b, azimuthDeg(b));
        }
    }

    private double azimuthDeg(double t) {
        return Math.toDegrees(sight.at(t).azimuth());
    }

    /** Halves a piece until the azimuth turns little, then cuts it at the mask's corners. */
    private void turn(double a, double azimuthA, double b, double azimuthB) {
        double turned = turn(azimuthA, azimuthB);
        if (Math.abs(turned) > WIDEST_TURN_DEG && b - a > SHORTEST_PIECE_S) {
            double middle = (a + b) / 2;
            double azimuthMiddle = azimuthDeg(middle);
            turn(a, azimuthA, middle, azimuthMiddle);
            turn(middle, azimuthMiddle, b, azimuthB);
            return;
        }
        double left = a;
        double leftAzimuth = azimuthA;
        while (true) {
            double corner = nextCorner(leftAzimuth, turn(leftAzimuth, azimuthB));
            if (Double.isNaN(corner)) {
                break;
            }
            double at = timeOfAzimuth(corner, left, leftAzimuth, b, azimuthB);
            if (at - left > 1e-6) {
                changes.piece(left, at);
                left = at;
            }
            leftAzimuth = corner;
        }
        if (b > left) {
            changes.piece(left, b);
        }
    }

    /** Signed angle from one azimuth to another, −180 to 180. */
    private static double turn(double from, double to) {
        double d = (to - from) % 360;
        return d > 180 ? d - 360 : d < -180 ? d + 360 : d;
    }

    /** The first corner strictly inside a turn; NaN when there is none. */
    private double nextCorner(double from, double turned) {
        double nearest = Double.NaN;
        double best = Math.abs(turned);
        for (double corner : corners) {
            double d = turn(from, corner) * Math.signum(turned);
            if (d > 1e-9 && d < best) {
                best = d;
                nearest = corner;
            }
        }
        return nearest;
    }

    private double timeOfAzimuth(double azimuthDeg, double a, double azimuthA, double b, double azimuthB) {
        return Roots.between(t -> turn(azimuthDeg, azimuthDeg(t)), a, turn(azimuthDeg, azimuthA), b,
                turn(azimuthDeg, azimuthB));
    }
}
