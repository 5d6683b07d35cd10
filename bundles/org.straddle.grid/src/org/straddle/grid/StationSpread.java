package org.straddle.grid;

import java.util.OptionalDouble;
import java.util.function.DoublePredicate;

import org.straddle.words.Catalogue;

/**
 * How the parts of a station lie about the line or corner that it claims, with the mark in their middle.
 *
 * <p>On a line the station lies straight across it: its ends are half the span away from the mark, one
 * on each side. On a corner its four parts are the corners of a square whose diagonal is the span, so
 * each is the span over 2√2 away from the mark's own meridian and parallel. Within one square the
 * station is a point on the mark, since the team may set it up on the inner side.
 *
 * <p>From this follows how likely every square is occupied, and, the other way round, which error of the
 * mark or which span a wanted probability asks for. Both are found by halving: the probability only falls
 * with the error and only rises with the span.
 *
 * @param kind what is claimed
 * @param spanM longest distance between two parts of the station in metres, 0 or more
 * @param offM how far the mark is from the line, from the meridian of the corner, or, inside, from the
 *     nearest line that bounds the square, in metres, 0 or more
 * @param otherOffM how far the mark is from the parallel of the corner in metres; else 0
 */
public record StationSpread(Standing.Kind kind, double spanM, double offM, double otherOffM) {

    private static final Catalogue TEXTS = Catalogue.of(StationSpread.class);

    /** A longer station is not one station any more. */
    public static final double LONGEST_SPAN_M = 500;

    /** A worse mark is none. */
    private static final double WORST_R95_M = 100_000;
    private static final double FAR_M = 10_000;
    private static final double SETTLED = 1e-9;

    public StationSpread {
        if (!(spanM >= 0 && offM >= 0 && otherOffM >= 0) || !Double.isFinite(spanM + offM + otherOffM)) {
            throw new IllegalArgumentException(TEXTS.text("stationSpread.lengths", "spanM", spanM, "offM", offM,
                    "otherOffM", otherOffM));
        }
    }

    /** How likely every claimed square is occupied when the mark has this error (R95, metres, 0 or more). */
    public Presence presence(double r95M) {
        return switch (kind) {
            case INSIDE -> Presence.acrossLine(r95M, offM, Math.max(FAR_M, 100 * r95M));
            case LINE -> Presence.acrossLine(r95M, spanM / 2 - offM, spanM / 2 + offM);
            // Which side the mark is on does not change the product.
            case CORNER -> Presence.acrossCorner(r95M, arm() - offM, arm() + offM, arm() - otherOffM, arm() + otherOffM);
        };
    }

    /**
     * The largest error of the mark, R95 in metres, with which {@link Presence#least} reaches a level; empty
     * if not even a mark without error reaches it.
     *
     * @param level probability above 0, at most 1
     */
    public OptionalDouble errorFor(double level) {
        requireLevel(level);
        if (presence(0).least() < level) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(last(0, WORST_R95_M, r95M -> presence(r95M).least() >= level));
    }

    /**
     * The shortest span in metres with which {@link Presence#least} reaches a level; empty if none up to
     * {@link #LONGEST_SPAN_M} does, and inside, where the span does not count.
     *
     * @param level probability above 0, at most 1
     */
    public OptionalDouble spanFor(double level, double r95M) {
        requireLevel(level);
        if (kind == Standing.Kind.INSIDE || spanned(LONGEST_SPAN_M).presence(r95M).least() < level) {
            return OptionalDouble.empty();
        }
        double tooShort = last(0, LONGEST_SPAN_M, span -> spanned(span).presence(r95M).least() < level);
        return OptionalDouble.of(tooShort + SETTLED);
    }

    /** The same station with its middle on the line or corner. */
    public StationSpread centred() {
        return kind == Standing.Kind.INSIDE ? this : new StationSpread(kind, spanM, 0, 0);
    }

    private StationSpread spanned(double metres) {
        return new StationSpread(kind, metres, offM, otherOffM);
    }

    private double arm() {
        return spanM / (2 * Math.sqrt(2));
    }

    /** The last value for which something holds that holds at the start and then once stops. */
    private static double last(double start, double end, DoublePredicate holds) {
        if (holds.test(end)) {
            return end;
        }
        double yes = start;
        double no = end;
        while (no - yes > SETTLED / 2) {
            double middle = (yes + no) / 2;
            if (holds.test(middle)) {
                yes = middle;
            } else {
                no = middle;
            }
        }
        return yes;
    }

    private static void requireLevel(double level) {
        if (!(level > 0 && level <= 1)) {
            throw new IllegalArgumentException(TEXTS.text("stationSpread.wantedProbabilityNot", "level", level));
        }
    }
}
