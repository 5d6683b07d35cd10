package org.straddle.sky;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The times a track lies above one place's horizon mask.
 *
 * <p>Testing every node for a change of sign would miss a pass that rises and sets between two of
 * them, and a mask has corners at which the clearance bends. So each step near the horizon is cut
 * where the bird crosses the azimuth of a corner, which makes clearance smooth on each piece, and a
 * piece whose slopes show a top (or a dip) inside is searched there too. Steps far below the horizon,
 * nine in ten of a low bird's, cost one dot product: between two nodes the bird cannot rise above both by
 * more than the strongest pull on it bends its way.
 *
 * <p>A piece is taken to have one top or dip at most. For even straight flight over a plane that is so: past a
 * straight piece of mask the slope of clearance is zero where elevation changes as many degrees per degree
 * of azimuth as the mask does, and that ratio only ever falls during the flight. A piece is too
 * short for orbit and Earth to bend away from that picture; no orbit or mask in the tests shows it.
 */
final class PassFinder {

    /** Shorter spans are rounding at a tangent, not passes. */
    private static final double SHORTEST_PASS_S = 0.001;
    /** With a mask, the azimuth turns no more than this within a piece, save close to the zenith. */
    private static final double WIDEST_TURN_RAD = Math.toRadians(15);
    private static final double SHORTEST_PIECE_S = 0.05;
    /** Within so much azimuth a step surely turns the shorter way. */
    private static final double WIDEST_SECTOR_RAD = Math.toRadians(60);
    /** Azimuths nearer to each other than this are one. */
    private static final double SAME_RAD = 1e-11;
    /** More than what interpolation adds to the bend of the way. */
    private static final double BEND_MARGIN_M = 20;

    private final Track track;
    private final Sightline sight;
    private final double lowest;
    private final double highest;
    /** Azimuth and elevation of the mask's corners, radians; none when it is level. */
    private final double[] cornerAzimuth;
    private final double[] cornerElevation;

    private double maskAzimuth;
    private double maskElevation;
    private double maskSlope;
    private final DoubleUnaryOperator overLevel = this::overLevel;
    private final DoubleUnaryOperator overLevelRate = this::overLevelRate;
    private final DoubleUnaryOperator overMask = this::overMask;
    private final DoubleUnaryOperator overMaskRate = this::overMaskRate;

    private final List<Span> spans = new ArrayList<>();
    private boolean up;
    private double since;
    private int step;

    private PassFinder(Track track, Sightline sight, Horizon horizon) {
        this.track = track;
        this.sight = sight;
        this.lowest = Math.sin(Math.toRadians(horizon.lowestDeg()));
        this.highest = Math.sin(Math.toRadians(horizon.highestDeg()));
        List<Horizon.Point> corners = lowest == highest ? List.of() : horizon.points();
        this.cornerAzimuth = corners.stream().mapToDouble(p -> Math.toRadians(p.azimuthDeg())).toArray();
        this.cornerElevation = corners.stream().mapToDouble(p -> Math.toRadians(p.elevationDeg())).toArray();
    }

    /** The spans within {@code from} to {@code to}, in order. */
    static List<Span> spans(Track track, Sightline sight, Horizon horizon, double from, double to) {
        return new PassFinder(track, sight, horizon).between(from, to);
    }

    private List<Span> between(double from, double to) {
        int end = Math.min(track.nodeCount() - 1, (int) Math.ceil(to / track.stepS()));
        double threshold = leastHeight();
        Node left = new Node();
        Node right = new Node();
        step = track.stepAt(from);
        left.take(step);
        while (true) {
            int high = sight.nextNodeAbove(threshold, step, end + 1);
            if (high > step + 1) {
                step = high - 1;
                left.take(step);
            }
            if (step >= end) {
                end(to);
                return spans;
            }
            right.take(step + 1);
            step(left, right, Math.max(from, step * track.stepS()), Math.min(to, (step + 1) * track.stepS()));
            Node taken = left;
            left = right;
            right = taken;
            step++;
        }
    }

    /** The bird is below the mask throughout a step whose two nodes lie lower than this above the level plane, metres. */
    private double leastHeight() {
        double toMask = lowest >= 0 ? 0 : lowest * (track.farthestM() + sight.siteRadius());
        return toMask - track.strongestMS2() * track.stepS() * track.stepS() / 8 - BEND_MARGIN_M;
    }

    private void step(Node left, Node right, double a, double b) {
        if (!(a < b)) {
            return;
        }
        if (staysBelow(left, right, lowest)) {
            turnTo(a, false);
        } else if (staysAbove(left, right, highest)) {
            turnTo(a, true);
        } else if (cornerAzimuth.length == 0) {
            piece(overLevel, overLevelRate, a, b);
        } else if (!clearOfMask(left, right, a)) {
            turn(a, azimuth(a), b, azimuth(b));
        }
    }

    /** Settles a step that lies above, or below, every corner on the way from the one azimuth to the other. */
    private boolean clearOfMask(Node left, Node right, double a) {
        left.look(step);
        right.look(step);
        double turned = turn(left.azimuth, right.azimuth);
        if (Math.abs(turned) > WIDEST_SECTOR_RAD) {
            return false;
        }
        double atLeft = maskAt(left.azimuth);
        double atRight = maskAt(right.azimuth);
        double least = Math.min(atLeft, atRight);
        double most = Math.max(atLeft, atRight);
        for (int i = 0; i < cornerAzimuth.length; i++) {
            double d = turn(left.azimuth, cornerAzimuth[i]) * Math.signum(turned);
            if (d > 0 && d < Math.abs(turned)) {
                least = Math.min(least, cornerElevation[i]);
                most = Math.max(most, cornerElevation[i]);
            }
        }
        boolean above = staysAbove(left, right, Math.sin(most));
        if (above || staysBelow(left, right, Math.sin(least))) {
            turnTo(a, above);
            return true;
        }
        return false;
    }

    /** Whether the bird stays above an elevation, given by its sine, between two nodes. */
    private static boolean staysAbove(Node left, Node right, double sinElevation) {
        return stays(left.over(sinElevation), left.overRate(sinElevation), right.over(sinElevation),
                right.overRate(sinElevation));
    }

    private static boolean staysBelow(Node left, Node right, double sinElevation) {
        return stays(-left.over(sinElevation), -left.overRate(sinElevation), -right.over(sinElevation),
                -right.overRate(sinElevation));
    }

    /** Whether something positive at both ends of a step is so between: it does not fall and rise again. */
    private static boolean stays(double a, double aRate, double b, double bRate) {
        return a > 0 && b > 0 && !(aRate < 0 && bRate > 0);
    }

    private Sightline at(double t) {
        return sight.at(t, step);
    }

    private double azimuth(double t) {
        return at(t).azimuth();
    }

    /** Metres by which the bird stands above a level mask, times a cosine. */
    private double overLevel(double t) {
        at(t);
        return lowest == 0 ? sight.height() : sight.height() - lowest * sight.range();
    }

    private double overLevelRate(double t) {
        at(t);
        return lowest == 0 ? sight.heightRate() : sight.heightRate() - lowest * sight.rangeRate();
    }

    /** Radians above the straight piece of mask that counts now. */
    private double overMask(double t) {
        at(t);
        return sight.elevation() - maskElevation - maskSlope * turn(maskAzimuth, sight.azimuth());
    }

    private double overMaskRate(double t) {
        at(t);
        return sight.elevationRate() - maskSlope * sight.azimuthRate();
    }

    /** Halves a piece until the azimuth turns little, then cuts it at the mask's corners. */
    private void turn(double a, double azimuthA, double b, double azimuthB) {
        double turned = turn(azimuthA, azimuthB);
        if (Math.abs(turned) > WIDEST_TURN_RAD && b - a > SHORTEST_PIECE_S) {
            double middle = (a + b) / 2;
            double azimuthMiddle = azimuth(middle);
            turn(a, azimuthA, middle, azimuthMiddle);
            turn(middle, azimuthMiddle, b, azimuthB);
            return;
        }
        double left = a;
        double leftAzimuth = azimuthA;
        while (true) {
            double rest = turn(leftAzimuth, azimuthB);
            double corner = nextCorner(leftAzimuth, rest);
            if (Double.isNaN(corner)) {
                useMask(leftAzimuth + rest / 2);
                piece(overMask, overMaskRate, left, b);
                return;
            }
            double cornerHere = corner;
            double at = Roots.between(t -> turn(cornerHere, azimuth(t)), t -> at(t).azimuthRate(), left,
                    turn(corner, leftAzimuth), b, turn(corner, azimuthB));
            if (at - left > 1e-6) {
                useMask(leftAzimuth + turn(leftAzimuth, corner) / 2);
                piece(overMask, overMaskRate, left, at);
                left = at;
            }
            leftAzimuth = corner;
        }
    }

    /** Signed angle from one azimuth to another, −π to π. */
    private static double turn(double from, double to) {
        double d = to - from;
        return d > Math.PI ? d - 2 * Math.PI : d < -Math.PI ? d + 2 * Math.PI : d;
    }

    /** The first corner strictly inside a turn; NaN when there is none. */
    private double nextCorner(double from, double turned) {
        double nearest = Double.NaN;
        double best = Math.abs(turned);
        for (double corner : cornerAzimuth) {
            double d = turn(from, corner) * Math.signum(turned);
            if (d > SAME_RAD && d < best) {
                best = d;
                nearest = corner;
            }
        }
        return nearest;
    }

    private double maskAt(double azimuth) {
        useMask(azimuth);
        return maskElevation + maskSlope * turn(maskAzimuth, azimuth);
    }

    /** Chooses the straight piece of mask that lies over an azimuth. */
    private void useMask(double azimuth) {
        double whole = 2 * Math.PI;
        double within = azimuth - whole * Math.floor(azimuth / whole);
        int found = Arrays.binarySearch(cornerAzimuth, within);
        int count = cornerAzimuth.length;
        int right = (found >= 0 ? found + 1 : -found - 1) % count;
        int left = (right + count - 1) % count;
        double width = cornerAzimuth[right] - cornerAzimuth[left] + (right == 0 ? whole : 0);
        double middle = cornerAzimuth[left] + width / 2;
        maskAzimuth = middle >= whole ? middle - whole : middle;
        maskElevation = (cornerElevation[left] + cornerElevation[right]) / 2;
        maskSlope = (cornerElevation[right] - cornerElevation[left]) / width;
    }

    /** Takes a piece on which clearance is smooth. */
    private void piece(DoubleUnaryOperator f, DoubleUnaryOperator rate, double a, double b) {
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        turnTo(a, fa > 0);
        if (fa > 0 != fb > 0) {
            turnTo(Roots.between(f, rate, a, fa, b, fb), fb > 0);
            return;
        }
        double turn = fa > 0 ? Roots.top(t -> -rate.applyAsDouble(t), a, b) : Roots.top(rate, a, b);
        if (!Double.isNaN(turn)) {
            double atTurn = f.applyAsDouble(turn);
            if (atTurn > 0 != fa > 0) {
                turnTo(Roots.between(f, rate, a, fa, turn, atTurn), atTurn > 0);
                turnTo(Roots.between(f, rate, turn, atTurn, b, fb), fb > 0);
            }
        }
    }

    /** From a time on the bird is above the mask, or is not. */
    private void turnTo(double t, boolean above) {
        if (above == up) {
            return;
        }
        if (up) {
            end(t);
        } else {
            since = t;
        }
        up = above;
    }

    private void end(double t) {
        if (up && t - since >= SHORTEST_PASS_S) {
            spans.add(new Span(since, t));
        }
    }

    /** Where a node of the track stands over the place. */
    private final class Node {
        private int node;
        private double height;
        private double heightRate;
        private double range;
        private double rangeRate;
        private boolean looked;
        private double azimuth;

        void take(int newNode) {
            node = newNode;
            looked = false;
            sight.atNode(node);
            height = sight.nodeHeight();
            heightRate = sight.nodeHeightRate();
            range = sight.nodeRange();
            rangeRate = sight.nodeRangeRate();
        }

        /** Metres above an elevation, times its cosine. */
        double over(double sinElevation) {
            return height - sinElevation * range;
        }

        double overRate(double sinElevation) {
            return heightRate - sinElevation * rangeRate;
        }

        /** Works out the azimuth, by a step that begins or ends here. */
        void look(int bySide) {
            if (!looked) {
                azimuth = sight.at(node * track.stepS(), bySide).azimuth();
                looked = true;
            }
        }
    }
}
