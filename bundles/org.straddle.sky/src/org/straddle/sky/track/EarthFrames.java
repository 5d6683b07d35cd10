package org.straddle.sky.track;

import java.time.Instant;
import java.util.Map;
import java.util.SortedSet;
import java.util.concurrent.ConcurrentHashMap;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.data.LazyLoadedDataContext;
import org.orekit.frames.EOPEntry;
import org.orekit.frames.EopHistoryLoader;
import org.orekit.frames.Frame;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.UTCScale;
import org.orekit.utils.Constants;
import org.orekit.utils.IERSConventions;
import org.straddle.sky.Subpoint;

/**
 * Time scales and frames of one state of knowledge about the Earth's orientation. Orekit usually
 * reads them from a data directory named by a system property; here everything is given explicitly,
 * so that a result never depends on what lies on the user's disk. Safe for use by many threads.
 *
 * <p>The Earth-fixed frame is reached by the equinox and sidereal time (IERS Conventions 1996), as TEME
 * is defined by them. The newer way through the celestial intermediate origin gives the same to some
 * metres, but sums thousands of nutation terms for every new day: a tenth of a second at each first look.
 */
public final class EarthFrames {

    /** Rotation of the Earth, rad/s: the nominal rate of WGS-84 (NIMA TR8350.2). */
    static final double TURN_RATE = 7.292115e-5;
    /** Between the turns that are kept, seconds. */
    static final double TURN_STEP_S = 1800;

    /** Of a year and more, some 200 bytes each. */
    private static final int MOST_TURNS = 20_000;

    private final UTCScale utc;
    private final Frame teme;
    private final Frame earthFixed;
    private final OneAxisEllipsoid ellipsoid;
    private final Frame trueOfDate;
    /** By step; all birds ask for the same. */
    private final Map<Long, double[][]> turns = new ConcurrentHashMap<>();

    private EarthFrames(LazyLoadedDataContext context) {
        utc = context.getTimeScales().getUTC();
        teme = context.getFrames().getTEME();
        earthFixed = context.getFrames().getITRFEquinox(IERSConventions.IERS_1996, true);
        ellipsoid = new OneAxisEllipsoid(Constants.WGS84_EARTH_EQUATORIAL_RADIUS, Constants.WGS84_EARTH_FLATTENING,
                earthFixed);
        trueOfDate = context.getFrames().getTOD(IERSConventions.IERS_1996, true);
    }

    public static EarthFrames withoutOrientation() {
        return new EarthFrames(context((converter, history) -> { }));
    }

    public static EarthFrames with(SortedSet<EOPEntry> entries) {
        return new EarthFrames(context((converter, history) -> history.addAll(entries)));
    }

    /** Frames need Earth orientation by both the 1996 and the 2010 conventions: TEME hangs on the former. */
    private static LazyLoadedDataContext context(EopHistoryLoader loader) {
        LazyLoadedDataContext context = new LazyLoadedDataContext();
        context.getTimeScales().addUTCTAIOffsetsLoader(LeapSeconds::offsets);
        for (IERSConventions conventions : IERSConventions.values()) {
            context.getFrames().addEOPHistoryLoader(conventions, loader);
        }
        return context;
    }

    public UTCScale utc() {
        return utc;
    }

    public Frame teme() {
        return teme;
    }

    public Frame earthFixed() {
        return earthFixed;
    }

    public OneAxisEllipsoid ellipsoid() {
        return ellipsoid;
    }

    public AbsoluteDate date(Instant instant) {
        return new AbsoluteDate(instant, utc);
    }

    /** When a step of {@link #TURN_STEP_S} begins. */
    static AbsoluteDate turnDate(long step) {
        return AbsoluteDate.J2000_EPOCH.shiftedBy(step * TURN_STEP_S);
    }

    /** The matrix from TEME to the Earth-fixed frame when a step begins, by rows; not to be written to. */
    double[][] turn(long step) {
        if (turns.size() > MOST_TURNS) {
            turns.clear();
        }
        return turns.computeIfAbsent(step, any ->
                teme.getStaticTransformTo(earthFixed, turnDate(step)).getRotation().getMatrix());
    }

    /** The sun's position in the Earth-fixed frame, metres. */
    public Vector3D sun(Instant instant) {
        AbsoluteDate date = date(instant);
        return trueOfDate.getStaticTransformTo(earthFixed, date).transformPosition(SolarPosition.trueOfDate(date));
    }

    public Subpoint subpoint(Vector3D earthFixedPosition) {
        GeodeticPoint point = ellipsoid.transform(earthFixedPosition, earthFixed, AbsoluteDate.ARBITRARY_EPOCH);
        return new Subpoint(Math.toDegrees(point.getLatitude()), Math.toDegrees(point.getLongitude()),
                point.getAltitude() / 1000);
    }
}
