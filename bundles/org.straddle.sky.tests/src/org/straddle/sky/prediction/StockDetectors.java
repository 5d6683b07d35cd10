package org.straddle.sky.prediction;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.hipparchus.ode.events.Action;
import org.hipparchus.util.FastMath;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.frames.TopocentricFrame;
import org.orekit.propagation.analytical.tle.TLEPropagator;
import org.orekit.propagation.events.ElevationDetector;
import org.orekit.propagation.events.EventDetector;
import org.orekit.utils.ElevationMask;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Horizon;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.track.EarthFrames;
import org.straddle.sky.track.Seconds;
import org.straddle.sky.track.Sgp4;

/** The independent way: Orekit's own event detectors on the propagator itself, with a short step. Slow. */
final class StockDetectors {

    /** Those of ours: near a leap second the library's frames depend on which dates they were asked for before. */
    private static final EarthFrames FRAMES = EarthOrientation.none().frames();

    private StockDetectors() {
    }

    /** Rises (+) and sets (−) as seconds after the window's start. */
    static List<Double> riseAndSet(ElementSet bird, Window window, Place place, Horizon horizon, double stepS) {
        TopocentricFrame site = new TopocentricFrame(FRAMES.ellipsoid(), new GeodeticPoint(
                FastMath.toRadians(place.latitudeDeg()), FastMath.toRadians(place.longitudeDeg()), place.altitudeM()),
                "site");
        ElevationDetector plain = new ElevationDetector(stepS, 1e-5, site);
        ElevationDetector detector = horizon.isFlat()
                ? plain.withConstantElevation(FastMath.toRadians(horizon.lowestDeg()))
                : plain.withElevationMask(new ElevationMask(horizon.points().stream().map(p -> new double[] {
                    FastMath.toRadians(p.azimuthDeg()), FastMath.toRadians(p.elevationDeg())}).toArray(double[][]::new)));
        List<Double> events = new ArrayList<>();
        Instant start = window.start();
        run(bird, window, detector.withHandler((state, d, increasing) -> {
            double t = state.getDate().durationFrom(FRAMES.date(start));
            events.add(increasing ? t : -t);
            return Action.CONTINUE;
        }));
        return events;
    }

    static void run(ElementSet bird, Window window, EventDetector detector) {
        TLEPropagator propagator = new Sgp4(bird, FRAMES).propagator();
        // Arrive at the start first: events on the way there are not of the window.
        propagator.propagate(FRAMES.date(window.start()));
        propagator.addEventDetector(detector);
        propagator.propagate(FRAMES.date(window.start()), FRAMES.date(window.end()));
    }

    /** The same of ours. */
    static List<Double> riseAndSet(List<Pass> passes, Instant start) {
        List<Double> events = new ArrayList<>();
        for (Pass pass : passes) {
            if (!pass.startsBefore()) {
                events.add(Seconds.between(start, pass.aos()));
            }
            if (!pass.endsAfter()) {
                events.add(-Seconds.between(start, pass.los()));
            }
        }
        return events;
    }

    static String text(List<Double> events) {
        StringBuilder text = new StringBuilder();
        events.forEach(e -> text.append(String.format(Locale.ROOT, "%+.2f ", e)));
        return text.toString();
    }
}
