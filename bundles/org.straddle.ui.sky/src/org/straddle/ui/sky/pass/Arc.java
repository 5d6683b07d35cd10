package org.straddle.ui.sky.pass;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

import org.straddle.sky.Horizon;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.Ephemeris;

/**
 * The way of a bird over one place, from where it comes above 0° to where it goes below, as far as that lies near
 * the pass. The looks lie close enough that straight lines between them are the arc: nowhere more than a few degrees
 * apart, near the zenith too.
 */
public record Arc(List<ArcPiece> pieces) {

    /** The bird is followed so long before AOS and after LOS, if it is above 0° there. */
    private static final Duration BESIDE = Duration.ofMinutes(20);
    private static final int LOOKS = 240;
    private static final double WIDEST_TURN_DEG = 3;
    private static final Duration SHORTEST_STEP = Duration.ofMillis(20);

    public Arc {
        pieces = List.copyOf(pieces);
    }

    static Arc of(Ephemeris ephemeris, Place place, Horizon horizon, Pass pass) {
        Window window = window(ephemeris, place, pass);
        List<Window> seen = ephemeris.above(place, window, horizon);
        List<Window> lit = ephemeris.sunlit(window);
        SortedSet<Instant> cuts = new TreeSet<>(List.of(window.start(), window.end()));
        Stream.of(seen, lit).flatMap(List::stream).flatMap(w -> Stream.of(w.start(), w.end()))
                .filter(at -> isInside(window, at)).forEach(cuts::add);
        Function<Instant, ArcPoint> look = at -> ArcPoint.of(at, ephemeris.lookAt(place, at));
        List<ArcPiece> pieces = new ArrayList<>();
        Instant from = null;
        ArcPoint last = look.apply(window.start());
        for (Instant to : cuts) {
            if (from != null) {
                Instant middle = from.plus(Duration.between(from, to).dividedBy(2));
                Light light = !within(seen, middle) ? Light.HIDDEN : within(lit, middle) ? Light.LIT : Light.SHADED;
                List<ArcPoint> points = points(look, last, to, window.duration().dividedBy(LOOKS));
                pieces.add(new ArcPiece(light, points));
                last = points.get(points.size() - 1);
            }
            from = to;
        }
        return new Arc(pieces);
    }

    /** Rounding may put the same edge a little beside itself. */
    private static boolean isInside(Window window, Instant at) {
        return at.isAfter(window.start().plusMillis(1)) && at.isBefore(window.end().minusMillis(1));
    }

    private static Window window(Ephemeris ephemeris, Place place, Pass pass) {
        Window known = ephemeris.window();
        // Prediction may end within the window; its very last instant is lost to rounding.
        Instant end = ephemeris.predictionEnd().map(at -> at.minusMillis(1)).orElse(known.end());
        Window near = new Window(later(known.start(), pass.aos().minus(BESIDE)),
                earlier(end, pass.los().plus(BESIDE)));
        Window up = ephemeris.above(place, near, 0).stream().filter(w -> w.contains(pass.tca())).findFirst()
                .orElse(pass.window());
        return new Window(earlier(up.start(), later(pass.aos(), near.start())),
                later(up.end(), earlier(pass.los(), near.end())));
    }

    private static List<ArcPoint> points(Function<Instant, ArcPoint> look, ArcPoint first, Instant to, Duration step) {
        List<ArcPoint> points = new ArrayList<>(List.of(first));
        Duration whole = Duration.between(first.at(), to);
        long steps = Math.max(1, (long) Math.ceil((double) whole.toMillis() / Math.max(1, step.toMillis())));
        for (long i = 1; i <= steps; i++) {
            Instant at = i == steps ? to : first.at().plus(whole.multipliedBy(i).dividedBy(steps));
            reach(look, points, look.apply(at));
        }
        return points;
    }

    /** Adds a point, and points between where the azimuth swings. */
    private static void reach(Function<Instant, ArcPoint> look, List<ArcPoint> points, ArcPoint next) {
        ArcPoint last = points.get(points.size() - 1);
        ArcPoint unrolled = next.unrolledAfter(last.azimuthDeg());
        Duration between = Duration.between(last.at(), next.at());
        if (Math.abs(unrolled.azimuthDeg() - last.azimuthDeg()) > WIDEST_TURN_DEG
                && between.compareTo(SHORTEST_STEP) > 0) {
            reach(look, points, look.apply(last.at().plus(between.dividedBy(2))));
            reach(look, points, next);
        } else {
            points.add(unrolled);
        }
    }

    public Stream<ArcPoint> points() {
        return pieces.stream().flatMap(piece -> piece.points().stream());
    }

    public Instant start() {
        return pieces.get(0).points().get(0).at();
    }

    public Instant end() {
        List<ArcPoint> last = pieces.get(pieces.size() - 1).points();
        return last.get(last.size() - 1).at();
    }

    /** Westernmost unrolled azimuth, degrees. */
    public double leastAzimuthDeg() {
        return points().mapToDouble(ArcPoint::azimuthDeg).min().orElseThrow();
    }

    public double mostAzimuthDeg() {
        return points().mapToDouble(ArcPoint::azimuthDeg).max().orElseThrow();
    }

    /** The look at an instant, between the looks known; the nearest end outside. */
    public ArcPoint at(Instant instant) {
        ArcPoint before = null;
        for (ArcPoint after : (Iterable<ArcPoint>) points()::iterator) {
            if (!after.at().isBefore(instant)) {
                return before == null || after.at().equals(before.at()) ? after : between(before, after, instant);
            }
            before = after;
        }
        return before;
    }

    public Light light(Instant instant) {
        return pieces.stream().filter(piece -> !piece.points().get(piece.points().size() - 1).at().isBefore(instant))
                .findFirst().orElse(pieces.get(pieces.size() - 1)).light();
    }

    private static ArcPoint between(ArcPoint a, ArcPoint b, Instant at) {
        double s = (double) Duration.between(a.at(), at).toNanos() / Duration.between(a.at(), b.at()).toNanos();
        return new ArcPoint(at, a.azimuthDeg() + s * (b.azimuthDeg() - a.azimuthDeg()),
                a.elevationDeg() + s * (b.elevationDeg() - a.elevationDeg()),
                a.rangeKm() + s * (b.rangeKm() - a.rangeKm()),
                a.rangeRateKmS() + s * (b.rangeRateKmS() - a.rangeRateKmS()));
    }

    private static boolean within(List<Window> windows, Instant instant) {
        return windows.stream().anyMatch(w -> w.contains(instant));
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
