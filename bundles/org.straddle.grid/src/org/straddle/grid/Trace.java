package org.straddle.grid;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;

import org.straddle.words.Catalogue;

/**
 * Positions in order, packed: a road net has millions of them. One position is a point; the edges
 * between positions are geodesics, as {@link Crossings} takes them.
 */
public final class Trace {

    private static final Catalogue TEXTS = Catalogue.of(Trace.class);

    /** Mean radius of the Earth in metres, IUGG; for rough lengths only. */
    private static final double MEAN_RADIUS_M = 6_371_008.8;

    /** Latitude and longitude in turn, in degrees. */
    private final double[] degrees;

    private Trace(double[] degrees) {
        this.degrees = degrees;
    }

    public static Trace of(List<GeoPosition> positions) {
        Builder builder = new Builder();
        positions.forEach(p -> builder.add(p.latitudeDeg(), p.longitudeDeg()));
        return builder.build();
    }

    public static Trace of(GeoPosition... positions) {
        return of(Arrays.asList(positions));
    }

    /** Collects positions one by one. */
    public static final class Builder {

        private double[] degrees = new double[16];
        private int length;

        /**
         * Adds a position in degrees, brought into the ranges of {@link GeoPosition}.
         *
         * @throws IllegalArgumentException if a value is not a number or out of range
         */
        public Builder add(double latitudeDeg, double longitudeDeg) {
            GeoPosition position = new GeoPosition(latitudeDeg, longitudeDeg);
            if (length == degrees.length) {
                degrees = Arrays.copyOf(degrees, 2 * length);
            }
            degrees[length++] = position.latitudeDeg();
            degrees[length++] = position.longitudeDeg();
            return this;
        }

        public int size() {
            return length / 2;
        }

        public Trace build() {
            return new Trace(Arrays.copyOf(degrees, length));
        }
    }

    /** Number of positions. */
    public int size() {
        return degrees.length / 2;
    }

    public double latitudeDeg(int index) {
        return degrees[2 * index];
    }

    public double longitudeDeg(int index) {
        return degrees[2 * index + 1];
    }

    public GeoPosition position(int index) {
        return new GeoPosition(latitudeDeg(index), longitudeDeg(index));
    }

    /** All positions, made when they are asked for. */
    public List<GeoPosition> positions() {
        return new AbstractList<>() {
            @Override
            public GeoPosition get(int index) {
                return position(index);
            }

            @Override
            public int size() {
                return Trace.this.size();
            }
        };
    }

    /** The longitude of the end of an edge, counted on from its start past 180° if the edge goes there. */
    double unrolledLongitudeDeg(int edge) {
        double from = longitudeDeg(edge);
        return from + Math.IEEEremainder(longitudeDeg(edge + 1) - from, 360);
    }

    /** Length in kilometres on a sphere: up to 0.6 % off, but quick. */
    public double roughLengthKm() {
        double radians = 0;
        for (int edge = 0; edge + 1 < size(); edge++) {
            double north = Math.toRadians(latitudeDeg(edge + 1) - latitudeDeg(edge));
            double east = Math.toRadians(unrolledLongitudeDeg(edge) - longitudeDeg(edge))
                    * Math.cos(Math.toRadians((latitudeDeg(edge + 1) + latitudeDeg(edge)) / 2));
            radians += Math.hypot(north, east);
        }
        return radians * MEAN_RADIUS_M / 1000;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Trace that && Arrays.equals(degrees, that.degrees);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(degrees);
    }

    @Override
    public String toString() {
        return TEXTS.text("trace.positions", "size", size(), "position", size() == 0 ? "" : TEXTS.text("trace.from",
                "position", position(0)));
    }
}
