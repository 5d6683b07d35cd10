package org.straddle.ui.map;

import java.io.IOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.straddle.atlas.layer.BaseMap;
import org.straddle.atlas.layer.LaidBaseMap;
import org.straddle.atlas.layer.LaidGrid;
import org.straddle.atlas.layer.UserLayer;
import org.straddle.atlas.picture.MapContents;
import org.straddle.atlas.picture.Sight;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.Projector;
import org.straddle.atlas.scene.EventScene;
import org.straddle.atlas.scene.Look;
import org.straddle.exchange.maps.LayerRole;
import org.straddle.exchange.maps.MapReader;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.StraddleFactory;
import org.straddle.outlook.Outlook;

/**
 * Milliseconds that the window's thread needs for one frame of the map while it is moved and zoomed: 1,000 invented
 * sites, 5,000 squares in demand and a layer of 5 MB, on a canvas of 1400 by 800 pixels. Between frames the next image
 * is drawn in slices; those are measured too, since a frame may have to wait for one.
 */
public final class MapBench {

    private static final int FRAMES = Integer.getInteger("bench.rounds", 400);
    private static final long LAYER_BYTES = "SMALL".equals(System.getProperty("bench.size")) ? 200_000 : 5_000_000;
    private static final long FRAME_NS = 16_000_000;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Display display = new Display();
    private final Shell shell = new Shell(display, SWT.SHELL_TRIM);
    private final MapCanvas map;
    private long painted;
    private double paintMs;
    private double paintCpuMs;

    private MapBench() {
        shell.setLayout(new FillLayout());
        map = new MapCanvas(shell);
        shell.setSize(shell.computeSize(1400, 800));
        shell.open();
        timePainting();
        pumpFor(300_000_000);
    }

    public static void main(String[] args) throws Exception {
        long began = System.nanoTime();
        MapContents contents = contents();
        System.out.printf(Locale.ROOT, "%d sites, %d squares in demand, layer of %d positions, base map of %d; laid in %.1f s%n",
                contents.scene().sites().size(), contents.scene().demand().size(),
                contents.layers().get(0).byRole().values().iterator().next().size(), contents.baseMap().get().land().size(),
                (System.nanoTime() - began) / 1e9);
        new MapBench().run(contents);
    }

    private void run(MapContents contents) {
        map.show(contents);
        untilSharp();
        measure("warming up", frame -> map.pan(3, 0));
        untilSharp();
        measure("moved across, 7 px a frame", frame -> map.pan(frame < FRAMES / 2 ? 7 : -7, frame % 3 - 1));
        untilSharp();
        measure("zoomed in and out, 4 % a frame", frame -> map.zoom(frame / 50 % 2 == 0 ? 1.04 : 1 / 1.04));
        untilSharp();
        map.fitAll();
        untilSharp();
        measure("with the wheel, 25 % every tenth frame", frame -> {
            if (frame % 10 == 0) {
                map.zoom(frame / 50 % 2 == 0 ? 1.25 : 0.8);
            }
        });
        for (double metresPerPx : new double[] {9000, 2000, 500, 100}) {
            map.look(new Sight(0, 0, metresPerPx, map.sight().width(), map.sight().height()));
            long began = System.nanoTime();
            untilSharp();
            System.out.printf(Locale.ROOT, "sharp again at %.0f m to the pixel after %.0f ms, %d instructions%n", metresPerPx,
                    (System.nanoTime() - began) / 1e6, map.picture(map.sight().withMargin(200)).marks().size());
        }
        display.dispose();
    }

    /** Moves the map every 16 ms; a frame is the moving and the painting that follows it. */
    private void measure(String what, IntConsumer motion) {
        List<Double> wall = new ArrayList<>();
        List<Double> cpu = new ArrayList<>();
        List<Double> between = new ArrayList<>();
        for (int frame = 0; frame < FRAMES; frame++) {
            long start = System.nanoTime();
            long cpuStart = THREADS.getCurrentThreadCpuTime();
            painted = 0;
            motion.accept(frame);
            map.control().redraw();
            double moving = (System.nanoTime() - start) / 1e6;
            double movingCpu = (THREADS.getCurrentThreadCpuTime() - cpuStart) / 1e6;
            while (System.nanoTime() - start < FRAME_NS || painted == 0) {
                long workStart = THREADS.getCurrentThreadCpuTime();
                long paintedBefore = painted;
                if (!display.readAndDispatch()) {
                    Thread.onSpinWait();
                } else if (painted == paintedBefore) {
                    between.add((THREADS.getCurrentThreadCpuTime() - workStart) / 1e6);
                } else {
                    wall.add(moving + paintMs);
                    cpu.add(movingCpu + paintCpuMs);
                }
            }
        }
        System.out.printf(Locale.ROOT, "%-40s %d frames %s ms, CPU %s ms; work between frames, CPU %s ms%n", what, wall.size(),
                spread(wall), spread(cpu), spread(between));
    }

    /** Takes the time of each painting: a filter comes before the map's listener, a later listener after it. */
    private void timePainting() {
        long[] begun = new long[2];
        display.addFilter(SWT.Paint, event -> {
            begun[0] = System.nanoTime();
            begun[1] = THREADS.getCurrentThreadCpuTime();
        });
        map.control().addListener(SWT.Paint, event -> {
            painted++;
            paintMs = (System.nanoTime() - begun[0]) / 1e6;
            paintCpuMs = (THREADS.getCurrentThreadCpuTime() - begun[1]) / 1e6;
        });
    }

    private static String spread(List<Double> measured) {
        double[] values = measured.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        if (values.length == 0) {
            return "none";
        }
        return String.format(Locale.ROOT, "median %.1f, 95 %% %.1f, most %.1f", values[values.length / 2],
                values[(int) (values.length * 0.95)], values[values.length - 1]);
    }

    private void untilSharp() {
        do {
            pumpFor(20_000_000);
        } while (!map.isSharp());
        pumpFor(20_000_000);
    }

    private void pumpFor(long nanos) {
        long until = System.nanoTime() + nanos;
        while (System.nanoTime() < until) {
            if (!display.readAndDispatch()) {
                Thread.onSpinWait();
            }
        }
    }

    private static MapContents contents() throws IOException {
        Random random = new Random(1);
        Event event = Fresh.event("Bench");
        for (int i = 0; i < 1000; i++) {
            Site site = Fresh.site();
            GeoPosition at = new GeoPosition(35 + 30 * random.nextDouble(), -40 + 60 * random.nextDouble());
            site.setName("Site " + i);
            site.setLatitudeDeg(at.latitudeDeg());
            site.setLongitudeDeg(at.longitudeDeg());
            site.setKind(SiteKind.VALUES.get(i % 3));
            site.getSquares().add(Square.of(at).name());
            event.getSites().add(site);
        }
        for (int row = 0; row < 50; row++) {
            for (int column = 0; column < 100; column++) {
                Demand demand = StraddleFactory.eINSTANCE.createDemand();
                demand.setSquare(Square.of(new GeoPosition(20.5 + row, -99 + 2 * column)).name());
                demand.setSharePercent(100 * random.nextDouble());
                event.getDemands().add(demand);
            }
        }
        Outlook outlook = Outlook.of(event, null);
        Projector projector = new Projector(Plane.about(new GeoPosition(50, -10)));
        LaidGrid grid = new LaidGrid(projector);
        Path file = Files.createTempFile("roads", ".geojson");
        try {
            roads(file, random);
            UserLayer layer = UserLayer.of(MapReader.read(file), "roads", LayerRole.ROADS);
            System.out.printf(Locale.ROOT, "layer of %.1f MB%n", Files.size(file) / 1e6);
            return new MapContents(projector, grid, Optional.of(LaidBaseMap.of(BaseMap.load(null), projector)),
                    List.of(layer.lay(projector, null)), EventScene.of(outlook, projector, grid, Look.PLAIN, null),
                    Optional.empty(), List.of());
        } finally {
            Files.delete(file);
        }
    }

    /** Wandering lines, 5 MB of them in all unless the event is small. */
    private static void roads(Path file, Random random) throws IOException {
        try (Writer out = Files.newBufferedWriter(file)) {
            out.write("{\"type\":\"FeatureCollection\",\"features\":[");
            long written = 0;
            for (int line = 0; written < LAYER_BYTES; line++) {
                StringBuilder text = new StringBuilder(line == 0 ? "" : ",").append(
                        "{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"LineString\",\"coordinates\":[");
                double latitude = 36 + 28 * random.nextDouble();
                double longitude = -40 + 60 * random.nextDouble();
                double heading = 2 * Math.PI * random.nextDouble();
                for (int i = 0; i < 300; i++) {
                    text.append(i == 0 ? "" : ",").append(String.format(Locale.ROOT, "[%.5f,%.5f]", longitude, latitude));
                    heading += 0.3 * random.nextGaussian();
                    latitude += 0.004 * Math.sin(heading);
                    longitude += 0.006 * Math.cos(heading);
                }
                text.append("]}}");
                out.write(text.toString());
                written += text.length();
            }
            out.write("]}");
        }
    }
}
