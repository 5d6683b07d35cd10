package org.straddle.sky.prediction;

import java.time.Instant;
import java.util.AbstractList;
import java.util.RandomAccess;

import org.straddle.sky.ElementSet;
import org.straddle.sky.Pass;
import org.straddle.sky.track.Seconds;
import org.straddle.sky.track.Span;

/**
 * The passes of one bird over one viewpoint, packed: 49 bytes each, where records with their instants
 * take some 250. A search over a thousand sites finds millions, and hardly anybody looks at all of them:
 * a {@link Pass} is made when it is asked for, anew each time. Complete once handed out, then never
 * changed.
 */
final class PassList extends AbstractList<Pass> implements RandomAccess {

    /** Weight of a pass, and of an empty list with what is needed to find it again; bytes. */
    private static final int PASS_BYTES = 49;
    private static final int LIST_BYTES = 400;

    private static final int AT_AOS = 0;
    private static final int AT_TCA = 1;
    private static final int AT_LOS = 2;
    private static final int PER_PASS = 3;
    /** A whole turn is all values of an int: steps of 0.0000001°. */
    private static final double PARTS_PER_DEG = 0x1p32 / 360;

    private final ElementSet elements;
    private final Instant origin;
    private final double endS;
    /** Seconds of AOS, TCA, LOS. */
    private final double[] timesS;
    private final int[] azimuths;
    private final int[] peaks;
    private final double[] rangesKm;
    private final boolean[] ascending;
    private int size;

    /**
     * @param origin instant that times count from
     * @param endS   end of the time searched, seconds
     * @param most   how many passes there will be
     */
    PassList(ElementSet elements, Instant origin, double endS, int most) {
        this.elements = elements;
        this.origin = origin;
        this.endS = endS;
        this.timesS = new double[PER_PASS * most];
        this.azimuths = new int[PER_PASS * most];
        this.peaks = new int[most];
        this.rangesKm = new double[most];
        this.ascending = new boolean[most];
    }

    /** Takes the next pass, in degrees as {@link Pass} has them. */
    void add(Span span, double tca, double aosAzimuthDeg, double tcaAzimuthDeg, double losAzimuthDeg,
            double peakElevationDeg, double minRangeKm, boolean isAscending) {
        int at = PER_PASS * size;
        timesS[at + AT_AOS] = span.from();
        timesS[at + AT_TCA] = tca;
        timesS[at + AT_LOS] = span.to();
        azimuths[at + AT_AOS] = parts(aosAzimuthDeg);
        azimuths[at + AT_TCA] = parts(tcaAzimuthDeg);
        azimuths[at + AT_LOS] = parts(losAzimuthDeg);
        peaks[size] = parts(peakElevationDeg);
        rangesKm[size] = minRangeKm;
        ascending[size] = isAscending;
        size++;
    }

    private static int parts(double degrees) {
        return (int) Math.round(degrees * PARTS_PER_DEG);
    }

    @Override
    public Pass get(int index) {
        if (index < 0 || index >= size) {
            throw new IndexOutOfBoundsException(index);
        }
        int at = PER_PASS * index;
        return new Pass(elements, instant(at + AT_AOS), instant(at + AT_TCA), instant(at + AT_LOS),
                azimuthDeg(at + AT_AOS), azimuthDeg(at + AT_TCA), azimuthDeg(at + AT_LOS), peaks[index] / PARTS_PER_DEG,
                rangesKm[index], ascending[index], timesS[at + AT_AOS] == 0, timesS[at + AT_LOS] == endS);
    }

    private Instant instant(int at) {
        return Seconds.after(origin, timesS[at]);
    }

    private double azimuthDeg(int at) {
        return Integer.toUnsignedLong(azimuths[at]) / PARTS_PER_DEG;
    }

    @Override
    public int size() {
        return size;
    }

    /** About how much memory a list of passes takes, bytes. */
    static long bytes(int passes) {
        return LIST_BYTES + (long) PASS_BYTES * passes;
    }
}
