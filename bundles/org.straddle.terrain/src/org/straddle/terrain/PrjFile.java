package org.straddle.terrain;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.referencing.CRS;
import org.straddle.words.Catalogue;

/** The coordinate reference system that stands in a file beside a raster. */
final class PrjFile {

    private static final Catalogue TEXTS = Catalogue.of(PrjFile.class);

    private static final int LARGEST_BYTES = 1 << 16;
    private static final String RIGHT = TEXTS.text("prjFile.correct");

    private PrjFile() {
    }

    /** Empty when there is no such file. @throws TerrainException when there is one and it cannot be understood */
    static Optional<CoordinateReferenceSystem> beside(Path raster) throws TerrainException {
        String name = raster.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String stem = dot < 0 ? name : name.substring(0, dot);
        for (String extension : new String[] {".prj", ".PRJ"}) {
            Path beside = raster.resolveSibling(stem + extension);
            if (Files.isRegularFile(beside)) {
                return Optional.of(read(beside));
            }
        }
        return Optional.empty();
    }

    private static CoordinateReferenceSystem read(Path file) throws TerrainException {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new TerrainException(file, TEXTS.text("prjFile.tooLarge"), RIGHT);
            }
            return CRS.parseWKT(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
        } catch (FactoryException | RuntimeException e) {
            throw new TerrainException(file, TEXTS.text("prjFile.notUnderstood",
                    "reason", e instanceof FactoryException ? " (" + String.valueOf(e.getMessage()).lines().findFirst().orElse("") + ")." : "."),
                    RIGHT, e);
        } catch (TerrainException e) {
            throw e;
        } catch (IOException e) {
            throw RasterFormat.unreadable(file, e);
        }
    }
}
