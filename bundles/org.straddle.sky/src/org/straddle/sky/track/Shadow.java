package org.straddle.sky.track;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.utils.Constants;
import org.straddle.sky.Illumination;

/**
 * The Earth's shadow along a track. Umbra and penumbra are cones that touch the sun and the Earth;
 * the flattening enters by stretching space along the axis until the ellipsoid is a sphere.
 *
 * <p>The sun's place, which costs more than all the rest, is taken every half hour. Among the stars it moves 0.02° until
 * the next, along an arc that is 10⁻⁶ degrees from straight; the Earth turns evenly meanwhile.
 */
public final class Shadow {

    private static final double EARTH_RADIUS_M = Constants.WGS84_EARTH_EQUATORIAL_RADIUS;
    private static final double SUN_STEP_S = 1800;
    private static final double STRETCH = 1 / (1 - Constants.WGS84_EARTH_FLATTENING);

    private final Track track;
    private final EarthFrames frames;
    private final Instant origin;
    private final double[] state = new double[6];
    /** The half hour that the suns are of, by number. */
    private long known = Long.MIN_VALUE;
    private Vector3D sunBefore;
    private Vector3D sunAfter;

    public Shadow(Track track, EarthFrames frames, Instant origin) {
        this.track = track;
        this.frames = frames;
        this.origin = origin;
    }

    public Illumination at(double t) {
        return margin(t, true) > 0 ? Illumination.SUNLIT
                : margin(t, false) > 0 ? Illumination.PENUMBRA : Illumination.UMBRA;
    }

    public List<Span> windows(double from, double to, Illumination wanted) {
        return switch (wanted) {
            case SUNLIT -> lit(from, to, true);
            case UMBRA -> without(new Span(from, to), lit(from, to, false));
            case PENUMBRA -> lit(from, to, false).stream()
                    .flatMap(any -> without(any, lit(any.from(), any.to(), true)).stream()).toList();
        };
    }

    private List<Span> lit(double from, double to, boolean wholeDisc) {
        SignChanges changes = new SignChanges(t -> margin(t, wholeDisc));
        changes.grid(from, to, track.stepS());
        return changes.positive(from, to, 0);
    }

    /** What is left of a span when others, in order and inside it, are taken out. */
    private static List<Span> without(Span whole, List<Span> others) {
        List<Span> left = new ArrayList<>();
        double since = whole.from();
        for (Span other : others) {
            if (other.from() > since) {
                left.add(new Span(since, other.from()));
            }
            since = other.to();
        }
        if (whole.to() > since) {
            left.add(new Span(since, whole.to()));
        }
        return left;
    }

    /** Radians between the sun's and the Earth's edges: all of the sun is seen, or any, while positive. */
    private double margin(double t, boolean wholeDisc) {
        track.state(t, state);
        Vector3D bird = new Vector3D(state[0], state[1], state[2] * STRETCH);
        Vector3D sun = sun(t);
        Vector3D toSun = new Vector3D(sun.getX(), sun.getY(), sun.getZ() * STRETCH).subtract(bird);
        double apart = Vector3D.angle(toSun, bird.negate());
        double earth = Math.asin(Math.min(1, EARTH_RADIUS_M / bird.getNorm()));
        double disc = Math.asin(Constants.SUN_RADIUS / toSun.getNorm());
        return apart - earth + (wholeDisc ? -disc : disc);
    }

    private Vector3D sun(double t) {
        double steps = t / SUN_STEP_S;
        long step = (long) Math.floor(steps);
        if (step != known) {
            sunBefore = step == known + 1 ? sunAfter : sunAmongStars(step * SUN_STEP_S);
            sunAfter = sunAmongStars((step + 1) * SUN_STEP_S);
            known = step;
        }
        double s = steps - step;
        return turned(new Vector3D(1 - s, sunBefore, s, sunAfter), -EarthFrames.TURN_RATE * t);
    }

    /** In axes that the Earth's had at the origin and that do not turn with it. */
    private Vector3D sunAmongStars(double t) {
        return turned(frames.sun(Seconds.after(origin, t)), EarthFrames.TURN_RATE * t);
    }

    /** About the Earth's axis, eastwards. */
    private static Vector3D turned(Vector3D v, double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Vector3D(cos * v.getX() - sin * v.getY(), sin * v.getX() + cos * v.getY(), v.getZ());
    }
}
