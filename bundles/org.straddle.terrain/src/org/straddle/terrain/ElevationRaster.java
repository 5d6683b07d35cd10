package org.straddle.terrain;

import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.awt.image.Raster;
import java.awt.image.RenderedImage;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.geotools.api.coverage.grid.GridEnvelope;
import org.geotools.api.parameter.GeneralParameterValue;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.GeographicCRS;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.api.referencing.datum.PixelInCell;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.TransformException;
import org.geotools.coverage.grid.GridCoverage2D;
import org.geotools.coverage.grid.io.AbstractGridCoverage2DReader;
import org.geotools.coverage.grid.io.imageio.geotiff.GeoTiffIIOMetadataDecoder;
import org.geotools.coverage.grid.io.imageio.geotiff.GeoTiffMetadata2CRSAdapter;
import org.geotools.gce.arcgrid.ArcGridReader;
import org.geotools.gce.geotiff.GeoTiffReader;
import org.geotools.referencing.CRS;
import org.geotools.referencing.crs.DefaultEngineeringCRS;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.geotools.util.factory.Hints;
import org.straddle.words.Catalogue;

/**
 * One file of heights, opened but not read: a GeoTIFF or an ArcGrid text file, through GeoTools' coverage readers.
 *
 * <p>Only what lies around a mark is read, tile by tile. Where that is more than fits into memory, each
 * cell that is kept holds the highest of those it stands for, so that no ridge is lost.
 */
final class ElevationRaster implements Closeable {

    private static final Catalogue TEXTS = Catalogue.of(ElevationRaster.class);

    /** Heights kept in memory for one part of a raster: 16 million, 64 MB. */
    static final int MOST_KEPT = 16 << 20;

    /** Text is read from its beginning as a whole: 25 million cells fit. */
    static final long MOST_TEXT_CELLS = 25_000_000;

    /** Lower than the deepest sea and higher than the highest mountain: marks of voids that the file does not name. */
    private static final double LOWEST_M = -12_000;
    private static final double HIGHEST_M = 9_000;

    /** The readers need not know where a raster lies: in search of a .prj file they ask for a library that is not there. */
    private static final Hints NOWHERE = new Hints(Hints.DEFAULT_COORDINATE_REFERENCE_SYSTEM, DefaultEngineeringCRS.GENERIC_2D);

    /** As in the cells of a raster, whatever the register of a system says. */
    private static final Hints LONGITUDE_FIRST = new Hints(Hints.FORCE_LONGITUDE_FIRST_AXIS_ORDER, true);

    private final Path file;
    private final RasterFormat format;
    private final AbstractGridCoverage2DReader reader;
    private final CoordinateReferenceSystem system;
    private final MathTransform fromWgs84;
    private final AffineTransform fromCell;
    private final int width;
    private final int height;
    private final double noData;
    private GridCoverage2D coverage;

    private ElevationRaster(Path file, RasterFormat format, AbstractGridCoverage2DReader reader,
            Optional<CoordinateReferenceSystem> named, double noData, boolean takeForWgs84) throws TerrainException {
        this.file = file;
        this.format = format;
        this.reader = reader;
        GridEnvelope range = reader.getOriginalGridRange();
        this.width = range.getSpan(0);
        this.height = range.getSpan(1);
        this.system = system(named, takeForWgs84);
        this.noData = noData;
        if (!(reader.getOriginalGridToWorld(PixelInCell.CELL_CENTER) instanceof AffineTransform affine)) {
            throw new TerrainException(file, TEXTS.text("elevationRaster.itsCellsDo"), TEXTS.text("elevationRaster.warpRegularRaster"));
        }
        this.fromCell = new AffineTransform(affine);
        // Cells count from the corner of the image, which may be numbered otherwise.
        this.fromCell.translate(range.getLow(0), range.getLow(1));
        double area = Math.abs(fromCell.getDeterminant());
        if (!Double.isFinite(area) || !Double.isFinite(1 / area)) {
            throw new TerrainException(file, TEXTS.text("elevationRaster.cellsWithoutSize", "width", String.valueOf(cellX()),
                    "height", String.valueOf(cellY())), TEXTS.text("elevationRaster.convertPlainGeotiff"));
        }
        try {
            this.fromWgs84 = CRS.findMathTransform(DefaultGeographicCRS.WGS84, system, true);
        } catch (FactoryException e) {
            throw new TerrainException(file, TEXTS.text("elevationRaster.itsCoordinateReference",
                    "code", system.getName().getCode()), TEXTS.text("elevationRaster.convertEpsgUtm"), e);
        }
    }

    /**
     * @param takeForWgs84 whether a file that does not say its coordinate reference system holds longitudes and
     *     latitudes on WGS 84
     * @throws TerrainException when it is no raster of heights, does not say where it lies, or is damaged
     */
    static ElevationRaster open(Path file, boolean takeForWgs84) throws TerrainException {
        RasterFormat format = RasterFormat.of(file);
        AbstractGridCoverage2DReader reader = null;
        try {
            double noData;
            Optional<CoordinateReferenceSystem> named;
            if (format == RasterFormat.ARC_GRID) {
                noData = ArcGridText.check(file);
                named = Optional.empty();
                reader = new ArcGridReader(file.toFile(), NOWHERE);
            } else {
                GeoTiffReader tiff = new GeoTiffReader(file.toFile(), NOWHERE);
                reader = tiff;
                named = systemInside(tiff.getMetadata());
                noData = tiff.getMetadata().hasNoData() ? tiff.getMetadata().getNoData() : Double.NaN;
            }
            return new ElevationRaster(file, format, reader, named, noData, takeForWgs84);
        } catch (TerrainException e) {
            dispose(reader);
            throw e;
        } catch (IOException | RuntimeException | OutOfMemoryError e) {
            // A hostile header makes the library ask for more memory than there is.
            dispose(reader);
            throw damaged(file, e);
        }
    }

    private static Optional<CoordinateReferenceSystem> systemInside(GeoTiffIIOMetadataDecoder tags) throws IOException {
        if (!tags.hasGeoKey()) {
            return Optional.empty();
        }
        try {
            return Optional.ofNullable(new GeoTiffMetadata2CRSAdapter(LONGITUDE_FIRST).createCoordinateSystem(tags));
        } catch (IOException | RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private CoordinateReferenceSystem system(Optional<CoordinateReferenceSystem> named, boolean takeForWgs84)
            throws TerrainException {
        Optional<CoordinateReferenceSystem> said = named.filter(ElevationRaster::isOnEarth);
        if (said.isEmpty()) {
            said = PrjFile.beside(file).filter(ElevationRaster::isOnEarth);
        }
        if (said.isPresent()) {
            return said.get();
        }
        if (!takeForWgs84) {
            throw new TerrainException(file, TEXTS.text("elevationRaster.doesNotSay"),
                    TEXTS.text("elevationRaster.sayEpsg"));
        }
        var extent = reader.getOriginalEnvelope();
        if (extent.getMinimum(1) < -90.1 || extent.getMaximum(1) > 90.1 || extent.getMinimum(0) < -360
                || extent.getMaximum(0) > 360) {
            throw new TerrainException(file, TEXTS.text("elevationRaster.saidEpsgBut", "minimum", extent.getMinimum(0),
                    "minimum2", extent.getMinimum(1), "maximum", extent.getMaximum(0),
                    "maximum2", extent.getMaximum(1)), TEXTS.text("elevationRaster.putPrjFile"));
        }
        return DefaultGeographicCRS.WGS84;
    }

    private static boolean isOnEarth(CoordinateReferenceSystem system) {
        return system instanceof GeographicCRS || system instanceof ProjectedCRS;
    }

    Path file() {
        return file;
    }

    String systemName() {
        return system.getName().getCode();
    }

    boolean isGeographic() {
        return system instanceof GeographicCRS;
    }

    /** Length of the sides of a cell in the raster's own system. */
    double cellX() {
        return Math.hypot(fromCell.getScaleX(), fromCell.getShearY());
    }

    double cellY() {
        return Math.hypot(fromCell.getScaleY(), fromCell.getShearX());
    }

    /**
     * The cells within a rectangle of the raster's own system, with a rim of two; empty when it misses the raster.
     */
    Rectangle cells(double minX, double minY, double maxX, double maxY) {
        try {
            AffineTransform toCell = fromCell.createInverse();
            Rectangle2D area = toCell.createTransformedShape(
                    new Rectangle2D.Double(minX, minY, maxX - minX, maxY - minY)).getBounds2D();
            int left = (int) Math.max(0, Math.floor(area.getMinX()) - 2);
            int top = (int) Math.max(0, Math.floor(area.getMinY()) - 2);
            int right = (int) Math.min(width, Math.ceil(area.getMaxX()) + 3);
            int bottom = (int) Math.min(height, Math.ceil(area.getMaxY()) + 3);
            return new Rectangle(left, top, right - left, bottom - top);
        } catch (NoninvertibleTransformException e) {
            return new Rectangle();
        }
    }

    /**
     * Reads a part of the raster.
     *
     * @param pooling how many cells in each direction are kept as one, the highest of them
     * @throws OperationCanceledException soon after the monitor was cancelled
     */
    HeightGrid read(Rectangle cells, int pooling, IProgressMonitor monitor) throws TerrainException {
        int columns = (cells.width + pooling - 1) / pooling;
        int rows = (cells.height + pooling - 1) / pooling;
        float[] metres = new float[columns * rows];
        Arrays.fill(metres, Float.NaN);
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("elevationRaster.reading",
                "file", file.getFileName()), cells.height);
        RenderedImage image = image();
        // Tile by tile as the file has them: nothing is decoded twice, and never the whole.
        for (int tileY = tile(cells.y - image.getTileGridYOffset(), image.getTileHeight()); tileY
                * (long) image.getTileHeight() + image.getTileGridYOffset() < cells.y + cells.height; tileY++) {
            for (int tileX = tile(cells.x - image.getTileGridXOffset(), image.getTileWidth()); tileX
                    * (long) image.getTileWidth() + image.getTileGridXOffset() < cells.x + cells.width; tileX++) {
                if (progress.isCanceled()) {
                    throw new OperationCanceledException();
                }
                pool(samples(image, tileX, tileY), cells, pooling, columns, metres, progress);
            }
            progress.worked(image.getTileHeight());
        }
        AffineTransform fromKept = new AffineTransform(fromCell);
        fromKept.translate(cells.x + (pooling - 1) / 2.0, cells.y + (pooling - 1) / 2.0);
        fromKept.scale(pooling, pooling);
        try {
            return new HeightGrid(columns, rows, metres, fromKept.createInverse());
        } catch (NoninvertibleTransformException e) {
            throw RasterFormat.unreadable(file, e);
        }
    }

    private static int tile(int cell, int size) {
        return Math.floorDiv(cell, size);
    }

    private void pool(Raster samples, Rectangle all, int pooling, int columns, float[] metres, IProgressMonitor monitor) {
        Rectangle part = samples.getBounds().intersection(all);
        if (part.isEmpty()) {
            return;
        }
        float[] row = new float[part.width];
        for (int y = part.y; y < part.y + part.height; y++) {
            if (y % 256 == 0 && monitor.isCanceled()) {
                throw new OperationCanceledException();
            }
            samples.getSamples(part.x, y, part.width, 1, 0, row);
            int into = (y - all.y) / pooling * columns;
            for (int x = 0; x < part.width; x++) {
                float value = row[x];
                if (value >= LOWEST_M && value <= HIGHEST_M && value != (float) noData) {
                    int cell = into + (part.x - all.x + x) / pooling;
                    // So written that the first height replaces "none".
                    if (!(metres[cell] >= value)) {
                        metres[cell] = value;
                    }
                }
            }
        }
    }

    /** The raster as an image whose tiles are decoded when they are asked for. */
    private RenderedImage image() throws TerrainException {
        try {
            if (coverage == null) {
                coverage = reader.read((GeneralParameterValue[]) null);
            }
            if (coverage == null) {
                throw new TerrainException(file, TEXTS.text("elevationRaster.itsReaderFound"), TEXTS.text("elevationRaster.convertPlainGeotiff"));
            }
            RenderedImage image = coverage.getRenderedImage();
            int bands = image.getSampleModel().getNumBands();
            if (bands != 1) {
                throw new TerrainException(file, TEXTS.text("elevationRaster.hasBandsLike", "bands", bands),
                        TEXTS.text("elevationRaster.chooseRasterHeights"));
            }
            return image;
        } catch (TerrainException e) {
            throw e;
        } catch (IOException | RuntimeException | OutOfMemoryError e) {
            throw damaged(file, e);
        }
    }

    private Raster samples(RenderedImage image, int tileX, int tileY) throws TerrainException {
        try {
            return image.getTile(tileX, tileY);
        } catch (RuntimeException | OutOfMemoryError e) {
            throw damaged(file, e);
        }
    }

    private static TerrainException damaged(Path file, Throwable failure) {
        return RasterFormat.unreadable(file, failure instanceof Exception cause ? cause
                : new IOException(TEXTS.text("elevationRaster.asksMoreMemory")));
    }

    /**
     * x and y in the raster's own system.
     *
     * @throws TransformException when the place has none there
     */
    double[] toOwn(double longitudeDeg, double latitudeDeg) throws TransformException {
        double[] own = {longitudeDeg, latitudeDeg};
        fromWgs84.transform(own, 0, own, 0, 1);
        return own;
    }

    @Override
    public void close() {
        if (coverage != null) {
            coverage.dispose(true);
        }
        dispose(reader);
    }

    private static void dispose(AbstractGridCoverage2DReader reader) {
        if (reader != null) {
            reader.dispose();
        }
    }
}
