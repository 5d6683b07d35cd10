package org.straddle.exchange.formats;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.words.Catalogue;

/** What a file that somebody wants to bring in seems to be, by how it begins; the reader of that kind then judges it. */
public enum FileKind {

    /** Points that may be sites: CSV, GPX or GeoJSON. */
    SITES,
    /** Element sets, Earth orientation, or nothing that is known. */
    SKY;


    private static final Catalogue TEXTS = Catalogue.of(FileKind.class);

    private static final int LOOK_AT_BYTES = 1 << 16;
    /** @throws ReadException when the file is not there or cannot be read */
    public static FileKind of(Path path) throws ReadException {
        MapSource source = MapSource.of(path, TEXTS.text("fileKind.chooseFileThere"));
        try (InputStream in = Files.newInputStream(path)) {
            return of(new String(in.readNBytes(LOOK_AT_BYTES), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw MapSource.unreadable(source.name(), e);
        }
    }

    private static FileKind of(String start) {
        return FileFormat.of(start).filter(format -> format.purposes().contains(Purpose.SITES)).isPresent() ? SITES : SKY;
    }
}
