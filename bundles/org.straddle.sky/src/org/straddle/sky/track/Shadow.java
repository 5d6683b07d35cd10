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
 * <p>The sun moves 0.04° in a minute, and so does its direction between two looks a minute apart: it
 * is taken afresh at every node and runs straight between.
 */
public final class Shadow {

    private static final double EARTH_RADIUS_M = Constants.WGS84_EARTH_EQUATORIAL_RADIUS;
    private static final double STRETCH = 1 / (1 - Constants.WGS84_EARTH_FLATTENING);

    private final Track track;
    private final EarthFrames frames;
    private final Instant origin;
    private final double[] state = new double[6];
    private double knownFrom = Double.NaN;
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
        double step = track.stepS();
        double node = Math.floor(t / step) * step;
        if (node != knownFrom) {
            sunBefore = frames.sun(Seconds.after(origin, node));
            sunAfter = frames.sun(Seconds.after(origin, node + step));
            knownFrom = node;
        }
        double s = (t - node) / step;
        return new Vector3D(1 - s, sunBefore, s, sunAfter);
    }
}
