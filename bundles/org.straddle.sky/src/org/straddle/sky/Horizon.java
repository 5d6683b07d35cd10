package org.straddle.sky;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

import org.straddle.words.Catalogue;

/**
 * What the ground around a site hides: the least elevation at which a bird can be seen, by
 * azimuth. Between two points it runs straight (in degrees), and the last point joins the first
 * across north. A bird is up when it stands <em>above</em> this line.
 *
 * <p>Short notation: {@code "0:5 90:12 180:3"}, azimuth:elevation in degrees.
 *
 * @param points at least one, by rising azimuth, no azimuth twice
 */
public record Horizon(List<Point> points) {

    private static final Catalogue TEXTS = Catalogue.of(Horizon.class);

    /**
     * One corner of the line.
     *
     * @param azimuthDeg   from true north over east, 0 ≤ azimuth &lt; 360
     * @param elevationDeg −30 (seen from a height) to 90 (nothing visible)
     */
    public record Point(double azimuthDeg, double elevationDeg) {
        public Point {
            Ranges.require("azimuth", azimuthDeg, 0, 360);
            if (azimuthDeg == 360) {
                throw new IllegalArgumentException(TEXTS.text("horizon.azimuthMustLess"));
            }
            Ranges.require("elevation", elevationDeg, -30, 90);
        }

        @Override
        public String toString() {
            return plain(azimuthDeg) + ":" + plain(elevationDeg);
        }

        private static String plain(double degrees) {
            return degrees == Math.rint(degrees) ? Long.toString((long) degrees) : Double.toString(degrees);
        }
    }

    /** @throws IllegalArgumentException when there is no point, or two have the same azimuth */
    public Horizon {
        if (points.isEmpty()) {
            throw new IllegalArgumentException("A horizon needs a point: a free view is 0:0");
        }
        points = points.stream().sorted(Comparator.comparingDouble(Point::azimuthDeg)).toList();
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).azimuthDeg == points.get(i - 1).azimuthDeg) {
                throw new IllegalArgumentException(TEXTS.text("horizon.twoHorizonPoints", "i", points.get(i - 1),
                        "i2", points.get(i)));
            }
        }
    }

    /** The same least elevation (degrees) all around. */
    public static Horizon flat(double elevationDeg) {
        return new Horizon(List.of(new Point(0, elevationDeg)));
    }

    /**
     * Reads the short notation; points may stand in any order.
     *
     * @throws IllegalArgumentException naming the part that does not fit
     */
    public static Horizon parse(String notation) {
        List<Point> points = new ArrayList<>();
        for (String part : notation.trim().split("\\s+")) {
            String[] pair = part.split(":", -1);
            try {
                if (pair.length != 2) {
                    throw new NumberFormatException();
                }
                points.add(new Point(Double.parseDouble(pair[0]), Double.parseDouble(pair[1])));
            } catch (NumberFormatException e) {
                throw new IllegalArgumentException(TEXTS.text("horizon.notHorizonPoint", "part", part,
                        "notation", notation), e);
            }
        }
        return new Horizon(points);
    }

    /**
     * The least visible elevation in a direction.
     *
     * @param azimuthDeg any finite angle; 360 is north again
     * @return degrees
     */
    public double elevationDegAt(double azimuthDeg) {
        int n = points.size();
        if (n == 1) {
            return points.get(0).elevationDeg;
        }
        double azimuth = azimuthDeg - 360 * Math.floor(azimuthDeg / 360);
        int after = 0;
        while (after < n && points.get(after).azimuthDeg <= azimuth) {
            after++;
        }
        Point left = points.get((after + n - 1) % n);
        Point right = points.get(after % n);
        double span = right.azimuthDeg - left.azimuthDeg + (after == 0 || after == n ? 360 : 0);
        double done = azimuth - left.azimuthDeg + (after == 0 ? 360 : 0);
        return left.elevationDeg + (right.elevationDeg - left.elevationDeg) * done / span;
    }

    /** Lowest corner, degrees. */
    public double lowestDeg() {
        return points.stream().mapToDouble(Point::elevationDeg).min().orElseThrow();
    }

    /** Highest corner, degrees. */
    public double highestDeg() {
        return points.stream().mapToDouble(Point::elevationDeg).max().orElseThrow();
    }

    /** Whether the line is level. */
    public boolean isFlat() {
        return lowestDeg() == highestDeg();
    }

    double[] azimuthsDeg() {
        return points.stream().mapToDouble(Point::azimuthDeg).toArray();
    }

    /** The short notation; {@link #parse} reads it back to an equal horizon. */
    @Override
    public String toString() {
        return points.stream().map(Point::toString).collect(Collectors.joining(" "));
    }
}
