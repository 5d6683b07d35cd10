package org.straddle.sky.track;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;

import org.straddle.sky.Horizon;

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
 *
 * <p>It goes no farther than it is asked to: whoever wants the first pass pays for the first pass.
 */
public final class PassFinder {

    /** Shorter spans are rounding at a tangent, not passes. */
    private static final double SHORTEST_PASS_S = 0.001;
    /** With a mask, the azimuth turns no more than this within a piece, save close to the zenith. */
    private static final double WIDEST_TURN_RAD = Math.toRadians(15);
    private static final double SHORTEST_PIECE_S = 0.05;
    /** Within so much azimuth a step surely turns the shorter way. */
    private static final double WIDEST_SECTOR_RAD = Math.toRadians(60);
    /** A corner so soon after the last one, seconds, is the same. */
    private static final double SAME_S = 1e-6;
    /** More than what interpolation adds to the bend of the way. */
    private static final double BEND_MARGIN_M = 20;

    private final Track track;
    private final Sightline sight;
    private final Skyline skyline;
    private final Curve overLevel = new OverLevel();
    private final OverPiece overPiece = new OverPiece();
    private final PastCorner pastCorner = new PastCorner();

    private final double from;
    private final double to;
    private final int end;
    private final double threshold;
    private final Queue<Span> found = new ArrayDeque<>(2);
    private Node left = new Node();
    private Node right = new Node();
    private boolean up;
    private double since;
    private int step;
    private boolean finished;

    public PassFinder(Track track, Sightline sight, Skyline skyline, double from, double to) {
        this.track = track;
        this.sight = sight;
        this.skyline = skyline;
        this.from = from;
        this.to = to;
        end = Math.min(track.nodeCount() - 1, (int) Math.ceil(to / track.stepS()));
        threshold = leastHeight();
        step = track.stepAt(from);
        left.take(step);
    }

    /** The spans within {@code from} to {@code to}, in order. */
    public static List<Span> spans(Track track, Sightline sight, Horizon horizon, double from, double to) {
        PassFinder finder = new PassFinder(track, sight, new Skyline(horizon), from, to);
        List<Span> spans = new ArrayList<>();
        for (Span span = finder.next(); span != null; span = finder.next()) {
            spans.add(span);
        }
        return spans;
    }

    /** The next span, or null when there is none. */
    public Span next() {
        if (found.isEmpty() && !finished) {
            search();
        }
        return found.poll();
    }

    /** Goes on until a span has ended, or the time to search has. */
    private void search() {
        while (found.isEmpty()) {
            int high = sight.nextNodeAbove(threshold, step, end + 1);
            if (high > step + 1) {
                step = high - 1;
                left.take(step);
            }
            if (step >= end) {
                end(to);
                finished = true;
                return;
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
        double lowest = skyline.sinLowest();
        double toMask = lowest >= 0 ? 0 : lowest * (track.farthestM() + sight.siteRadius());
        return toMask - track.strongestMS2() * track.stepS() * track.stepS() / 8 - BEND_MARGIN_M;
    }

    private void step(Node left, Node right, double a, double b) {
        if (!(a < b)) {
            return;
        }
        if (staysBelow(left, right, skyline.sinLowest())) {
            turnTo(a, false);
        } else if (staysAbove(left, right, skyline.sinHighest())) {
            turnTo(a, true);
        } else if (skyline.isLevel()) {
            piece(overLevel, a, b);
        } else {
            left.look();
            right.look();
            if (!clearOfMask(left, right, a)) {
                turn(a, a > left.timeS() ? azimuth(a) : left.azimuth, b, b < right.timeS() ? azimuth(b) : right.azimuth);
            }
        }
    }

    /** Settles a step that lies above, or below, every corner on the way from the one azimuth to the other. */
    private boolean clearOfMask(Node left, Node right, double a) {
        double turned = Skyline.turn(left.azimuth, right.azimuth);
        if (Math.abs(turned) > WIDEST_SECTOR_RAD) {
            return false;
        }
        double least = Math.min(left.sinMask, right.sinMask);
        double most = Math.max(left.sinMask, right.sinMask);
        if (left.piece != right.piece) {
            double way = Math.signum(turned);
            for (int i = 0; i < skyline.cornerCount(); i++) {
                double d = Skyline.turn(left.azimuth, skyline.cornerAzimuth(i)) * way;
                if (d > 0 && d < Math.abs(turned)) {
                    least = Math.min(least, skyline.cornerSinElevation(i));
                    most = Math.max(most, skyline.cornerSinElevation(i));
                }
            }
        }
        boolean above = staysAbove(left, right, most);
        if (above || staysBelow(left, right, least)) {
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

    /** Halves a piece until the azimuth turns little, then cuts it at the mask's corners. */
    private void turn(double a, double azimuthA, double b, double azimuthB) {
        double turned = Skyline.turn(azimuthA, azimuthB);
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
            double rest = Skyline.turn(leftAzimuth, azimuthB);
            int corner = skyline.nextCorner(leftAzimuth, rest);
            if (corner < 0) {
                overPiece.use(leftAzimuth + rest / 2);
                piece(overPiece, left, b);
                return;
            }
            double cornerAzimuth = skyline.cornerAzimuth(corner);
            double at = pastCorner.reached(cornerAzimuth, left, b);
            if (at - left > SAME_S) {
                overPiece.use(leftAzimuth + Skyline.turn(leftAzimuth, cornerAzimuth) / 2);
                piece(overPiece, left, at);
                left = at;
            }
            leftAzimuth = cornerAzimuth;
        }
    }

    /** Takes a piece on which clearance is smooth. */
    private void piece(Curve f, double a, double b) {
        double fa = f.at(a);
        double slopeA = f.slope();
        double fb = f.at(b);
        double slopeB = f.slope();
        turnTo(a, fa > 0);
        if (fa > 0 != fb > 0) {
            turnTo(Roots.between(f, a, fa, slopeA, b, fb, slopeB), fb > 0);
        } else if (fa > 0 ? slopeA < 0 && slopeB >= 0 : slopeA > 0 && slopeB <= 0) {
            pieceWithTurn(f, a, fa, slopeA, b, fb, slopeB);
        }
    }

    /** Takes a piece whose ends lie on one side of the mask, with a top or a dip between. */
    private void pieceWithTurn(Curve f, double a, double fa, double slopeA, double b, double fb, double slopeB) {
        double way = fa > 0 ? -1 : 1;
        double turn = Roots.top(t -> {
            f.at(t);
            return way * f.slope();
        }, a, b);
        if (Double.isNaN(turn)) {
            return;
        }
        double atTurn = f.at(turn);
        if (atTurn > 0 != fa > 0) {
            double slopeAtTurn = f.slope();
            turnTo(Roots.between(f, a, fa, slopeA, turn, atTurn, slopeAtTurn), atTurn > 0);
            turnTo(Roots.between(f, turn, atTurn, slopeAtTurn, b, fb, slopeB), fb > 0);
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
            found.add(new Span(since, t));
        }
    }

    /** Metres by which the bird stands above a level mask, times a cosine. */
    private final class OverLevel implements Curve {
        @Override
        public double at(double timeS) {
            PassFinder.this.at(timeS);
            double sin = skyline.sinLowest();
            return sin == 0 ? sight.height() : sight.height() - sin * sight.range();
        }

        @Override
        public double slope() {
            double sin = skyline.sinLowest();
            return sin == 0 ? sight.heightRate() : sight.heightRate() - sin * sight.rangeRate();
        }
    }

    /** Radians above a straight piece of the mask. */
    private final class OverPiece implements Curve {
        private int piece;

        void use(double azimuthInside) {
            piece = skyline.pieceAt(azimuthInside);
        }

        @Override
        public double at(double timeS) {
            PassFinder.this.at(timeS);
            return sight.elevation() - skyline.elevation(piece, sight.azimuth());
        }

        @Override
        public double slope() {
            return sight.elevationRate() - skyline.slope(piece) * sight.azimuthRate();
        }
    }

    /** Metres by which the bird has passed the upright plane through a corner, clockwise: a cubic, where the angle is not. */
    private final class PastCorner implements Curve {
        private double sin;
        private double cos;

        /** When the bird passes a corner that lies between its azimuths at two times. */
        double reached(double azimuth, double a, double b) {
            sin = Math.sin(azimuth);
            cos = Math.cos(azimuth);
            double fa = at(a);
            double slopeA = slope();
            double fb = at(b);
            if (fa > 0 == fb > 0) {
                // By rounding: the corner is where one of the ends is.
                return Math.abs(fa) < Math.abs(fb) ? a : b;
            }
            return Roots.between(this, a, fa, slopeA, b, fb, slope());
        }

        @Override
        public double at(double timeS) {
            return PassFinder.this.at(timeS).aside(sin, cos);
        }

        @Override
        public double slope() {
            return sight.asideRate(sin, cos);
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
        /** Direction, and what the mask has there; known after a look. */
        private double azimuth;
        private int piece;
        private double sinMask;

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

        double timeS() {
            return node * track.stepS();
        }

        void look() {
            if (!looked) {
                azimuth = sight.azimuthOfNode(node);
                piece = skyline.pieceAt(azimuth);
                sinMask = Math.sin(skyline.elevation(piece, azimuth));
                looked = true;
            }
        }
    }
}
