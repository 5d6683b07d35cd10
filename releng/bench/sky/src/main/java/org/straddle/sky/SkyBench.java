package org.straddle.sky;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.hipparchus.ode.events.Action;
import org.hipparchus.util.FastMath;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.frames.TopocentricFrame;
import org.orekit.propagation.analytical.tle.TLEPropagator;
import org.orekit.propagation.events.ElevationDetector;
import org.orekit.time.AbsoluteDate;
import org.straddle.sky.prediction.PassSearch;
import org.straddle.sky.prediction.PassTable;
import org.straddle.sky.track.EarthFrames;
import org.straddle.sky.track.Sgp4;

import com.sun.management.OperatingSystemMXBean;

/** Pass search, ours and Orekit's stock detectors. Each shot is one whole search; the heap is 1 GB. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
public class SkyBench {

    static final Rove LARGE = Rove.of(30, 1000, 10);
    static final Rove MASKED = LARGE.masked(7);
    static final Rove HALF_THE_BIRDS = Rove.of(15, 1000, 10);
    static final Rove HALF_THE_SITES = Rove.of(30, 500, 10);
    static final Rove HALF_THE_DAYS = Rove.of(30, 1000, 5);
    static final Rove SAMPLE = Rove.of(5, 20, 1);

    /** What one shot did besides taking time. */
    @AuxCounters(AuxCounters.Type.EVENTS)
    @State(Scope.Thread)
    public static class Counts {
        public double passes;
        public double cpuMs;

        private final OperatingSystemMXBean system =
                (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        private long cpuBefore;

        void begin() {
            cpuBefore = system.getProcessCpuTime();
        }

        void end(long found) {
            cpuMs += (system.getProcessCpuTime() - cpuBefore) / 1e6;
            passes += found;
        }
    }

    /** A search that has found everything once, and another mask at one site for each shot. */
    @State(Scope.Benchmark)
    public static class Found {
        private final PassSearch search = new PassSearch();
        private final List<Viewpoint> sites = new ArrayList<>(LARGE.sites());
        private int edits;

        @Setup(Level.Trial)
        public void find() {
            search.find(LARGE.window(), LARGE.birds(), sites, null);
        }

        @Setup(Level.Invocation)
        public void edit() {
            int site = edits * 37 % sites.size();
            sites.set(site, new Viewpoint(sites.get(site).place(),
                    Horizon.parse("0:5 40:2 90:12 120:8 150:20 180:3 270:" + (1 + edits % 30))));
            edits++;
        }
    }

    @Benchmark
    public PassTable oursLarge(Counts counts) {
        return search(LARGE, counts);
    }

    @Benchmark
    public PassTable oursMasked(Counts counts) {
        return search(MASKED, counts);
    }

    @Benchmark
    public PassTable oursHalfTheBirds(Counts counts) {
        return search(HALF_THE_BIRDS, counts);
    }

    @Benchmark
    public PassTable oursHalfTheSites(Counts counts) {
        return search(HALF_THE_SITES, counts);
    }

    @Benchmark
    public PassTable oursHalfTheDays(Counts counts) {
        return search(HALF_THE_DAYS, counts);
    }

    @Benchmark
    @Warmup(iterations = 30)
    @Measurement(iterations = 30)
    public PassTable oursSample(Counts counts) {
        return search(SAMPLE, counts);
    }

    private static PassTable search(Rove rove, Counts counts) {
        counts.begin();
        PassTable table = new PassSearch().find(rove.window(), rove.birds(), rove.sites(), null);
        counts.end(table.passCount());
        return table;
    }

    @Benchmark
    @Warmup(iterations = 200)
    @Measurement(iterations = 100)
    public PassTable oursOneMask(Found found, Counts counts) {
        counts.begin();
        PassTable table = found.search.find(LARGE.window(), LARGE.birds(), found.sites, null);
        counts.end(0);
        return table;
    }

    /** As its manual has it: a detector for each bird and site, checked every 30 s, to a millisecond; one thread. */
    @Benchmark
    @Warmup(iterations = 1)
    @Measurement(iterations = 2)
    public int orekitSample(Counts counts) {
        counts.begin();
        int[] passes = new int[1];
        EarthFrames frames = EarthFrames.withoutOrientation();
        AbsoluteDate start = frames.date(SAMPLE.window().start());
        for (ElementSet bird : SAMPLE.birds()) {
            for (Viewpoint site : SAMPLE.sites()) {
                Place place = site.place();
                TopocentricFrame frame = new TopocentricFrame(frames.ellipsoid(), new GeodeticPoint(
                        FastMath.toRadians(place.latitudeDeg()), FastMath.toRadians(place.longitudeDeg()),
                        place.altitudeM()), "site");
                TLEPropagator propagator = new Sgp4(bird, frames).propagator();
                // Arrive at the start first: events on the way there are not of the window.
                propagator.propagate(start);
                if (frame.getElevation(propagator.getPVCoordinates(start).getPosition(), frames.teme(), start) > 0) {
                    passes[0]++;
                }
                propagator.addEventDetector(new ElevationDetector(30, 1e-3, frame).withConstantElevation(0)
                        .withHandler((state, detector, rising) -> {
                            passes[0] += rising ? 1 : 0;
                            return Action.CONTINUE;
                        }));
                propagator.propagate(start, frames.date(SAMPLE.window().end()));
            }
        }
        counts.end(passes[0]);
        return passes[0];
    }
}
