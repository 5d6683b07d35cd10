package org.straddle.terrain;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.straddle.words.Catalogue;

/** The formats of elevation rasters that can be read, known by their content. */
enum RasterFormat {

    GEOTIFF, ARC_GRID;


    private static final Catalogue TEXTS = Catalogue.of(RasterFormat.class);

    private static final String RIGHT_FILE =
            TEXTS.text("rasterFormat.chooseElevationRaster");

    /** @throws TerrainException when the file is not there, empty, or neither */
    static RasterFormat of(Path file) throws TerrainException {
        if (!Files.isRegularFile(file)) {
            throw new TerrainException(file, Files.exists(file) ? TEXTS.text("rasterFormat.notPlainFile")
                    : TEXTS.text("rasterFormat.thereSuchFile"),
                    RIGHT_FILE);
        }
        byte[] start;
        try (InputStream in = Files.newInputStream(file)) {
            start = in.readNBytes(64);
        } catch (IOException e) {
            throw unreadable(file, e);
        }
        if (start.length == 0) {
            throw new TerrainException(file, TEXTS.text("rasterFormat.fileEmpty"), RIGHT_FILE);
        }
        if (isTiff(start)) {
            return GEOTIFF;
        }
        String text = new String(start, StandardCharsets.ISO_8859_1).stripLeading().toLowerCase(Locale.ROOT);
        if (text.startsWith("ncols") || text.startsWith("nrows")) {
            return ARC_GRID;
        }
        throw new TerrainException(file, TEXTS.text("rasterFormat.neitherGeotiffNor"), RIGHT_FILE);
    }

    /** TIFF 6.0, section 2: a byte order and 42; 43 in files above 4 GB. */
    private static boolean isTiff(byte[] start) {
        if (start.length < 4 || start[0] != start[1] || start[0] != 'I' && start[0] != 'M') {
            return false;
        }
        short version = ByteBuffer.wrap(start, 2, 2)
                .order(start[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN).getShort();
        return version == 42 || version == 43;
    }

    static TerrainException unreadable(Path file, Exception cause) {
        // What a library says when it stumbles, such as "For input string", helps nobody; a disk's words do.
        boolean telling = cause instanceof IOException && cause.getCause() == null && cause.getMessage() != null
                && !cause.getMessage().isBlank();
        return new TerrainException(file, TEXTS.text("rasterFormat.damaged",
                "findFirst", telling ? " (" + cause.getMessage().lines().findFirst().orElse("") + ")." : "."),
                TEXTS.text("rasterFormat.fetchAgainFrom"), cause);
    }
}
