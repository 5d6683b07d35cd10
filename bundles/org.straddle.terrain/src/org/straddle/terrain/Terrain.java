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
     * A part of a raster.
     *
     * @param raster gives the way from WGS 84 to the raster's own system
     * @param markX where the mark lies in that system: longitudes are taken on its side of the Earth
     * @param shiftX what to add for a part on the other side of the edge of the raster, 0 or ±360°
     * @param near every cell around the mark
     * @param far cells farther away, the highest of several; empty when near holds all
     */
    private record Part(ElevationRaster raster, double markX, double shiftX, HeightGrid near, Optional<HeightGrid> far) {

        double heightM(double[] own) {
            double x = own[0];
            if (raster.isGeographic()) {
                x = markX + Math.IEEEremainder(x - markX, TURN_DEG) + shiftX;
            }
            double height = near.heightM(x, own[1]);
            return Double.isNaN(height) && far.isPresent() ? far.get().heightM(x, own[1]) : height;
        }
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
                parts.add(new Part(piece.raster, piece.markX, piece.shiftX, piece.raster.read(piece.all, 1, progress.split(1000)),
                        Optional.empty()));
            } else {
                HeightGrid near = piece.near.isEmpty() ? new HeightGrid(0, 0, new float[0], new AffineTransform())
                        : piece.raster.read(piece.near, 1, progress.split(100));
                parts.add(new Part(piece.raster, piece.markX, piece.shiftX, near,
                        Optional.of(piece.raster.read(piece.all, pooling, progress.split(900)))));
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
     * How far to go to the next height at a distance from the mark, metres: half a cell, so that a crest is met, and
     * less close by, where passing it by a few metres shows.
     */
    double stepM(double distanceM) {
        double cell = finestM * (distanceM < NEAR_CELLS * finestM ? 1 : pooling);
        return Math.min(cell / 2, distanceM / 300);
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
                    double x = raster.isGeographic() ? markX + Math.IEEEremainder(own[0] - markX, TURN_DEG) : own[0];
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
        double dx = raster.isGeographic() ? Math.IEEEremainder(east[0] - here[0], TURN_DEG) : east[0] - here[0];
        double alongX = Math.hypot(dx, east[1] - here[1]) / probeM;
        double alongY = Math.hypot(raster.isGeographic() ? 0 : north[0] - here[0], north[1] - here[1]) / probeM;
        return Math.max(0.1, Math.min(raster.cellX() / alongX, raster.cellY() / alongY));
    }
}
