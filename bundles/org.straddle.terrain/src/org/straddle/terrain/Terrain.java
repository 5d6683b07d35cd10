package org.straddle.terrain;

import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.geotools.api.referencing.operation.TransformException;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.words.Catalogue;

/**
 * The heights around a mark out of one or more rasters; where several have one, the raster with the finest cells
 * counts.
 */
final class Terrain {

    private static final Catalogue TEXTS = Catalogue.of(Terrain.class);

    /** How far around the mark every cell is kept when farther ones must be pooled. */
    private static final int NEAR_CELLS = 1000;
    private static final double TURN_DEG = 360;

    /**
     * A cell is no wider than this part of its distance once it stands for several: 0.06°.
     */
    private static final double CELLS_IN_DISTANCE = 1000;

    /** Close by, passing a crest by a few metres shows. */
    private static final double STEPS_IN_DISTANCE = 300;

    /** Some projections stretch lengths towards their edges: of a way across one only this part is trusted. */
    private static final double TRUSTED = 0.25;

    /** A thousandth less than the least radius of curvature of WGS 84. */
    private static final double LEAST_RADIUS_M = 6_329_000;

    /**
     * A part of a raster.
     *
     * @param raster gives the way from WGS 84 to the raster's own system
     * @param markX where the mark lies in that system: longitudes are taken on its side of the Earth
     * @param shiftX what to add for a part on the other side of the edge of the raster, 0 or ±360°
     * @param cellM side of a cell at the mark, metres
     * @param near every cell around the mark
     * @param far cells farther away, the highest of several; empty when near holds all
     * @param pooling how many cells in each direction were kept as one in far
     */
    private record Part(ElevationRaster raster, double markX, double shiftX, double cellM, HeightGrid near, Optional<HeightGrid> far,
            int pooling) {

        private double x(double[] own) {
            return raster.isGeographic() ? markX + turned(own[0] - markX) + shiftX : own[0];
        }

        double heightM(double[] own) {
            double height = near.heightM(x(own), own[1]);
            return Double.isNaN(height) && far.isPresent() ? far.get().heightM(x(own), own[1]) : height;
        }

        /** As far away as this, with a step that meets every crest. */
        Seen seen(double[] own, double distanceM) {
            double x = x(own);
            Seen seen = seen(near, cellM, x, own[1], distanceM);
            return Double.isNaN(seen.heightM) && far.isPresent() ? seen(far.get(), cellM * pooling, x, own[1], distanceM) : seen;
        }

        private static Seen seen(HeightGrid grid, double cellM, double x, double y, double distanceM) {
            int halvings = Math.max(0, Math.getExponent(distanceM / CELLS_IN_DISTANCE / cellM));
            return halvings == 0 ? new Seen(grid.heightM(x, y), cellM / 2)
                    : new Seen(grid.highestNearM(x, y, halvings), cellM / 2 * (1L << halvings));
        }

        /** How far it is at least from a place without a height to one that may have one, metres. */
        double awayM(double[] own, GeoPosition place) {
            double x = x(own);
            HeightGrid all = far.orElse(near);
            if (all.covers(x, own[1])) {
                return 0;
            }
            double[] outside = all.outside(x, own[1]);
            if (!raster.isGeographic()) {
                return TRUSTED * cellM * Math.max(outside[0] / raster.cellX(), outside[1] / raster.cellY());
            }
            // On the sphere: to the meridian that bounds the raster, and to the parallel.
            double east = Math.toRadians(Math.min(90, outside[0]));
            double toMeridian = Math.asin(Math.sin(east) * Math.cos(Math.toRadians(place.latitudeDeg())));
            return LEAST_RADIUS_M * Math.max(toMeridian, Math.toRadians(outside[1]));
        }
    }

    /**
     * The ground at a place, as it counts for somebody far away.
     *
     * @param heightM metres; NaN where no raster has a height
     * @param stepM   how far to go on from there, metres
     */
    record Seen(double heightM, double stepM) {
    }

    /** A difference of longitudes the short way round, −180 to 180. The remainder, asked at every step, takes long. */
    private static double turned(double deg) {
        return Math.abs(deg) < TURN_DEG / 2 ? deg : Math.IEEEremainder(deg, TURN_DEG);
    }

    /** Where a part lies, before it is read. */
    private record Piece(ElevationRaster raster, double markX, double shiftX, Rectangle near, Rectangle all) {
    }

    private final List<Part> parts;
    private final double finestM;
    private final int pooling;

    private Terrain(List<Part> parts, double finestM, int pooling) {
        this.parts = parts;
        this.finestM = finestM;
        this.pooling = pooling;
    }

    /**
     * @param rasters open; they are still needed for their coordinates while heights are asked for
     * @param mostKept how many heights may be kept in memory before cells are pooled
     * @throws TerrainException when none of them reaches the mark, or one is damaged
     */
    static Terrain around(GeoPosition mark, double farthestM, List<ElevationRaster> rasters, int mostKept,
            IProgressMonitor monitor) throws TerrainException {
        List<Piece> pieces = new ArrayList<>();
        double finestM = Double.POSITIVE_INFINITY;
        for (ElevationRaster raster : rasters) {
            double cellM = cellM(raster, mark);
            List<Piece> found = pieces(raster, mark, farthestM, cellM);
            pieces.addAll(found);
            finestM = found.isEmpty() ? finestM : Math.min(finestM, cellM);
        }
        if (pieces.isEmpty()) {
            throw new TerrainException(null, TEXTS.text("terrain.noneRastersReaches", "names", names(rasters),
                    "farthestM", Math.round(farthestM / 1000), "mark", mark),
                    TEXTS.text("terrain.chooseTilesAround"));
        }
        pieces.sort(Comparator.comparingDouble(piece -> cellM(piece.raster, mark)));
        double cells = pieces.stream().mapToDouble(piece -> (double) piece.all.width * piece.all.height).sum();
        int pooling = (int) Math.max(1, Math.ceil(Math.sqrt(cells / mostKept)));
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("terrain.readingHeights"), 1000 * pieces.size());
        List<Part> parts = new ArrayList<>();
        for (Piece piece : pieces) {
            if (pooling == 1) {
                parts.add(new Part(piece.raster, piece.markX, piece.shiftX, cellM(piece.raster, mark),
                        piece.raster.read(piece.all, 1, progress.split(1000)), Optional.empty(), 1));
            } else {
                HeightGrid near = piece.near.isEmpty() ? new HeightGrid(0, 0, new float[0], new AffineTransform())
                        : piece.raster.read(piece.near, 1, progress.split(100));
                parts.add(new Part(piece.raster, piece.markX, piece.shiftX, cellM(piece.raster, mark), near,
                        Optional.of(piece.raster.read(piece.all, pooling, progress.split(900))), pooling));
            }
        }
        return new Terrain(parts, finestM, pooling);
    }

    /** Height of the ground, metres; NaN where no raster has one. */
    double heightM(GeoPosition place) {
        double[] own = null;
        ElevationRaster of = null;
        for (Part part : parts) {
            if (part.raster != of) {
                own = own(part.raster, place);
                of = part.raster;
            }
            double height = own == null ? Double.NaN : part.heightM(own);
            if (!Double.isNaN(height)) {
                return height;
            }
        }
        return Double.NaN;
    }

    /** Side of the finest cells, metres. */
    double finestM() {
        return finestM;
    }

    /**
     * The ground at a place, and how far to go to the next: half a cell, so that a crest is met, and less close by; but
     * where the rasters end, to where they may begin again.
     *
     * <p>From a distance of 2000 cells the highest of 2 × 2 cells is taken for all of them, from 4000 of 4 × 4, and so on:
     * a crest may then count as if it stood up to {@code 1.5 √2 / 1000} of its distance from where it is, 0.12° to the side,
     * and appears at most so much nearer: higher by 0.12° times the tangent of its elevation, never lower. A direction costs
     * at most some {@code 300 ln 150} heights close by, then 4000, then 2000 each time the distance doubles: for cells of
     * half a metre and 50 km some 17,000, whatever the size of the raster.
     */
    Seen look(GeoPosition place, double distanceM) {
        double[] own = null;
        ElevationRaster of = null;
        double stepM = Double.POSITIVE_INFINITY;
        for (Part part : parts) {
            if (part.raster != of) {
                own = own(part.raster, place);
                of = part.raster;
            }
            Seen seen = own == null ? new Seen(Double.NaN, part.cellM / 2) : part.seen(own, distanceM);
            // Finer cells that begin a little farther on must not be stepped over.
            double halfACellM = Math.min(seen.stepM, distanceM / STEPS_IN_DISTANCE);
            stepM = Math.min(stepM, Double.isNaN(seen.heightM) && own != null ? Math.max(halfACellM, part.awayM(own, place)) : halfACellM);
            if (!Double.isNaN(seen.heightM)) {
                return new Seen(seen.heightM, stepM);
            }
        }
        return new Seen(Double.NaN, stepM);
    }

    /** How many cells in each direction were kept as one away from the mark. */
    int pooling() {
        return pooling;
    }

    static String names(List<ElevationRaster> rasters) {
        return String.join(", ", rasters.stream().map(ElevationRaster::file).map(Path::getFileName).map(String::valueOf).toList());
    }

    private static double[] own(ElevationRaster raster, GeoPosition place) {
        try {
            double[] own = raster.toOwn(place.longitudeDeg(), place.latitudeDeg());
            return Double.isFinite(own[0]) && Double.isFinite(own[1]) ? own : null;
        } catch (TransformException e) {
            // The other side of the Earth has no place in a map projection: no height there.
            return null;
        }
    }

    /** The rectangles of a raster that hold what is within a distance of the mark; several where longitudes jump. */
    private static List<Piece> pieces(ElevationRaster raster, GeoPosition mark, double farthestM, double cellM) {
        double[] own = own(raster, mark);
        if (own == null) {
            return List.of();
        }
        double[] near = box(raster, mark, Math.min(farthestM, NEAR_CELLS * cellM), own[0]);
        double[] all = box(raster, mark, farthestM, own[0]);
        List<Piece> pieces = new ArrayList<>();
        for (double shift : raster.isGeographic() ? new double[] {0, TURN_DEG, -TURN_DEG} : new double[] {0}) {
            Rectangle cells = raster.cells(all[0] + shift, all[1], all[2] + shift, all[3]);
            if (!cells.isEmpty()) {
                pieces.add(new Piece(raster, own[0], shift,
                        raster.cells(near[0] + shift, near[1], near[2] + shift, near[3]), cells));
            }
        }
        return pieces;
    }

    private static double[] box(ElevationRaster raster, GeoPosition mark, double farthestM, double markX) {
        double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int azimuth = 0; azimuth < 360; azimuth += 5) {
            for (int quarter = 0; quarter <= 4; quarter++) {
                double[] own = own(raster, Geodesic.destination(mark, azimuth, farthestM * quarter / 4));
                if (own != null) {
                    double x = raster.isGeographic() ? markX + turned(own[0] - markX) : own[0];
                    widen(box, x, own[1]);
                }
            }
        }
        for (int pole = -90; pole <= 90; pole += 180) {
            if (raster.isGeographic() && Geodesic.distanceM(mark, new GeoPosition(pole, 0)) <= farthestM) {
                widen(box, markX - TURN_DEG / 2, pole);
                widen(box, markX + TURN_DEG / 2, pole);
            }
        }
        // Between the directions that were tried the circle bulges by less than a hundredth.
        double rimX = (box[2] - box[0]) / 100;
        double rimY = (box[3] - box[1]) / 100;
        return new double[] {box[0] - rimX, box[1] - rimY, box[2] + rimX, box[3] + rimY};
    }

    private static void widen(double[] box, double x, double y) {
        box[0] = Math.min(box[0], x);
        box[1] = Math.min(box[1], y);
        box[2] = Math.max(box[2], x);
        box[3] = Math.max(box[3], y);
    }

    /** Shorter side of a cell at the mark, measured on the ground. */
    private static double cellM(ElevationRaster raster, GeoPosition mark) {
        double probeM = 1000;
        double[] here = own(raster, mark);
        double[] north = own(raster, Geodesic.destination(mark, mark.latitudeDeg() > 0 ? 180 : 0, probeM));
        double[] east = own(raster, Geodesic.destination(mark, 90, probeM));
        if (here == null || north == null || east == null) {
            return Double.POSITIVE_INFINITY;
        }
        double dx = raster.isGeographic() ? turned(east[0] - here[0]) : east[0] - here[0];
        double alongX = Math.hypot(dx, east[1] - here[1]) / probeM;
        double alongY = Math.hypot(raster.isGeographic() ? 0 : north[0] - here[0], north[1] - here[1]) / probeM;
        return Math.max(0.1, Math.min(raster.cellX() / alongX, raster.cellY() / alongY));
    }
}
