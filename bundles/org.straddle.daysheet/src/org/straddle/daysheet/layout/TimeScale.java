package org.straddle.daysheet.layout;

import java.time.Duration;
import java.time.Instant;

import org.straddle.sky.Window;

/**
 * Time to pixels and back.
 *
 * @param left            instant at pixel 0
 * @param secondsPerPixel above 0
 */
public record TimeScale(Instant left, double secondsPerPixel) {

    /** An hour on 1800 pixels: closer there is nothing more to see. */
    public static final double CLOSEST = 2;
    /** Pixels stay far from the limits of drawing systems, which count them in 16 bits. */
    private static final double FARTHEST_PX = 30_000;

    public TimeScale {
        if (!(secondsPerPixel > 0)) {
            throw new IllegalArgumentException("seconds per pixel must be above 0: " + secondsPerPixel);
        }
    }

    /** Shows exactly the window on the width. */
    public static TimeScale fit(Window window, int width) {
        return new TimeScale(window.start(), Math.max(CLOSEST, seconds(window) / Math.max(1, width)));
    }

    /** Rounded, and held at ±30 000 for instants far away. */
    public int x(Instant instant) {
        double x = seconds(Duration.between(left, instant)) / secondsPerPixel;
        return (int) Math.round(Math.max(-FARTHEST_PX, Math.min(FARTHEST_PX, x)));
    }

    public Instant at(int x) {
        return left.plusMillis(Math.round(x * secondsPerPixel * 1000));
    }

    public int pixels(Duration duration) {
        return (int) Math.round(duration.toSeconds() / secondsPerPixel);
    }

    /** Larger for factors above 1, with the instant at x staying where it is. */
    public TimeScale zoomed(double factor, int x) {
        double closer = Math.max(CLOSEST, secondsPerPixel / factor);
        return new TimeScale(at(x).minusMillis(Math.round(x * closer * 1000)), closer);
    }

    public TimeScale moved(int pixels) {
        return new TimeScale(at(pixels), secondsPerPixel);
    }

    /** The nearest scale that shows nothing beyond the range. */
    public TimeScale within(Window range, int width) {
        double most = seconds(range) / Math.max(1, width);
        if (secondsPerPixel >= most) {
            return fit(range, width);
        }
        Instant latest = range.end().minusMillis(Math.round(width * secondsPerPixel * 1000));
        Instant held = left.isBefore(range.start()) ? range.start() : left.isAfter(latest) ? latest : left;
        return new TimeScale(held, secondsPerPixel);
    }

    /** What the width shows. */
    public Window shown(int width) {
        return new Window(left, at(Math.max(1, width)));
    }

    private static double seconds(Window window) {
        return seconds(window.duration());
    }

    /** Unlike a count of milliseconds, this holds the distance of any two instants. */
    private static double seconds(Duration duration) {
        return duration.getSeconds() + duration.getNano() / 1e9;
    }
}
