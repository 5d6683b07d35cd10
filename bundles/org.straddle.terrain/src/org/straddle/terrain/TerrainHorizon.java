package org.straddle.terrain;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.geotools.gce.geotiff.GeoTiffReader;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.GeodesicRay;
import org.straddle.sky.Horizon;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * What the ground around a mark hides, computed from elevation rasters.
 *
 * <p>In every direction a ray walks outwards along the geodesic, half the side of a cell at a step or less, in steps that
 * grow with the distance and end with the rasters ({@link Terrain#look}), and keeps the highest elevation at which it meets
 * the ground, by the curvature of the ellipsoid in that direction and the bending of light in air ({@link BentRay}). It starts one cell away: nearer ground is not resolved. Trees and
 * houses are there only if the raster has them. Where the rasters have no height the ground is not known, and the
 * mask can only be too low: the share of such places is told.
 *
 * @param mask with few points, nowhere lower than the skyline
 * @param skylineDeg elevations as computed, from north over east in steps of {@link #STEP_DEG}
 * @param groundM height of the ground at the mark, by the rasters
 * @param unknownShare share of the way looked along that has no height, 0 to 1
 * @param remarks what one should know about the rasters
 * @param origin how the mask was found, for the visit
 */
public record TerrainHorizon(Horizon mask, List<Double> skylineDeg, double groundM, double unknownShare,
        List<String> remarks, String origin) {

    private static final Catalogue TEXTS = Catalogue.of(TerrainHorizon.class);

    /** Directions are this far apart: 440 m at 50 km. */
    public static final double STEP_DEG = 0.5;

    /** It logs traces of what it also throws, and what is thrown is told here. Held, or its level would be lost. */
    private static final List<Logger> LIBRARY = List.of(Logger.getLogger("org.geotools"), Logger.getLogger("javax.media.jai"),
            Logger.getLogger("com.sun.media"), Logger.getLogger("it.geosolutions"),
            // Some of its loggers are named by the text of a class, which begins so.
            Logger.getLogger("class" + ' ' + "it.geosolutions"));

    private static final int CANCEL_CHECK_STEPS = 4096;
    private static final int DIRECTIONS = (int) (360 / STEP_DEG);

    /** Semi-major axis in metres and flattening of WGS 84 (NIMA TR8350.2). */
    private static final double AXIS_M = 6_378_137;
    private static final double FLATTENING = 1 / 298.257223563;

    public TerrainHorizon {
        skylineDeg = List.copyOf(skylineDeg);
        remarks = List.copyOf(remarks);
    }

    /**
     * @param files GeoTIFF or ArcGrid, one or more
     * @param monitor may be null
     * @throws TerrainException when a file cannot be used, or none has a height at the mark; nothing was changed
     * @throws OperationCanceledException soon after the monitor was cancelled
     */
    public static TerrainHorizon compute(List<Path> files, HorizonRequest request, IProgressMonitor monitor)
            throws TerrainException {
        return compute(files, request, ElevationRaster.MOST_KEPT, monitor);
    }

    static TerrainHorizon compute(List<Path> files, HorizonRequest request, int mostKept, IProgressMonitor monitor)
            throws TerrainException {
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        // The library looks its own parts up by the loader of the thread, which in OSGi knows nothing of it.
        thread.setContextClassLoader(GeoTiffReader.class.getClassLoader());
        LIBRARY.forEach(logger -> logger.setLevel(Level.OFF));
        List<ElevationRaster> rasters = new ArrayList<>();
        try {
            if (files.isEmpty()) {
                throw new TerrainException(null, TEXTS.text("terrainHorizon.elevationRasterChosen"), TEXTS.text("terrainHorizon.chooseOneMore"));
            }
            SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("terrainHorizon.computingHorizon"), 100);
            for (Path file : files) {
                rasters.add(ElevationRaster.open(file, request.takeForWgs84()));
            }
            Terrain terrain = Terrain.around(request.mark(), request.farthestM(), rasters, mostKept, progress.split(60));
            return look(terrain, rasters, request, progress.split(40));
        } finally {
            rasters.forEach(ElevationRaster::close);
            thread.setContextClassLoader(before);
        }
    }

    private static TerrainHorizon look(Terrain terrain, List<ElevationRaster> rasters, HorizonRequest request,
            IProgressMonitor monitor) throws TerrainException {
        double groundM = terrain.heightM(request.mark());
        if (Double.isNaN(groundM)) {
            throw new TerrainException(null, TEXTS.text("terrainHorizon.rastersHaveHeight",
                    "names", Terrain.names(rasters), "mark", request.mark()), TEXTS.text("terrainHorizon.addTileMark"));
        }
        double eyeM = groundM + request.antennaM();
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("terrainHorizon.lookingAround"), DIRECTIONS);
        List<Double> skyline = new ArrayList<>();
        double lookedM = 0;
        double unknownM = 0;
        for (int direction = 0; direction < DIRECTIONS; direction++) {
            double azimuthDeg = direction * STEP_DEG;
            BentRay ray = new BentRay(curvatureM(request.mark().latitudeDeg(), azimuthDeg), request.refraction());
            GeodesicRay way = GeodesicRay.from(request.mark(), azimuthDeg);
            double highest = -90;
            double distanceM = terrain.finestM();
            for (long steps = 0; distanceM <= request.farthestM(); steps++) {
                if (steps % CANCEL_CHECK_STEPS == 0 && progress.isCanceled()) {
                    throw new OperationCanceledException();
                }
                Terrain.Seen ground = terrain.look(way.pointAt(distanceM), distanceM);
                double wayM = Math.min(ground.stepM(), request.farthestM() - distanceM);
                lookedM += wayM;
                if (Double.isNaN(ground.heightM())) {
                    unknownM += wayM;
                } else {
                    highest = Math.max(highest, ray.elevationDeg(eyeM, distanceM, ground.heightM()));
                }
                distanceM += ground.stepM();
            }
            skyline.add(highest);
            progress.worked(1);
        }
        return result(terrain, rasters, request, groundM, skyline, lookedM == 0 ? 1 : unknownM / lookedM);
    }

    private static TerrainHorizon result(Terrain terrain, List<ElevationRaster> rasters, HorizonRequest request,
            double groundM, List<Double> skyline, double unknownShare) {
        List<String> remarks = new ArrayList<>();
        if (unknownShare > 0) {
            remarks.add(TEXTS.text("terrainHorizon.wayLookedAlong", "unknownShare", Math.max(0.1, 100 * unknownShare)));
        }
        long blind = skyline.stream().filter(elevation -> elevation == -90).count();
        if (blind > 0) {
            remarks.add(TEXTS.text("terrainHorizon.directionsHaveHeight", "blind", blind, "directions", DIRECTIONS));
        }
        if (terrain.pooling() > 1) {
            remarks.add(TEXTS.text("terrainHorizon.rastersFinerThan", "pooling", terrain.pooling()));
        }
        remarks.add(TEXTS.text("terrainHorizon.heightsTakenMetres"));
        double[] known = skyline.stream().mapToDouble(elevation -> elevation == -90 ? 0 : elevation).toArray();
        String origin = TEXTS.text("terrainHorizon.computedFromCells", "names", Terrain.names(rasters),
                "systems", systems(rasters), "figure", figure(terrain.finestM()),
                "farthestM", request.farthestM() / 1000, "figure2", figure(request.antennaM()), "groundM", groundM,
                "figure3", figure(request.refraction()), "figure4", figure(STEP_DEG),
                "figure5", figure(2 * HorizonReduction.TOLERANCE_DEG));
        return new TerrainHorizon(HorizonReduction.of(known), skyline, groundM, unknownShare, remarks, origin);
    }

    private static String systems(List<ElevationRaster> rasters) {
        return String.join(", ", rasters.stream().map(ElevationRaster::systemName).distinct().toList());
    }

    private static String figure(double value) {
        return FigureText.inCurrent().atMost(value >= 10 ? 0 : 2, value);
    }

    /** Radius of curvature of the ellipsoid in a direction, metres: Euler's formula. */
    static double curvatureM(double latitudeDeg, double azimuthDeg) {
        double squared = FLATTENING * (2 - FLATTENING);
        double sine = Math.sin(Math.toRadians(latitudeDeg));
        double w = 1 - squared * sine * sine;
        double meridian = AXIS_M * (1 - squared) / Math.pow(w, 1.5);
        double normal = AXIS_M / Math.sqrt(w);
        double cosine = Math.cos(Math.toRadians(azimuthDeg));
        return 1 / (cosine * cosine / meridian + (1 - cosine * cosine) / normal);
    }
}
