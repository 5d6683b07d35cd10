package org.straddle.publish;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.straddle.words.Catalogue;

/** Puts sheets into a folder: all are written beside their places first, and renamed only when all of them are there. */
final class SheetFolder {

    private static final Catalogue TEXTS = Catalogue.of(SheetFolder.class);

    private SheetFolder() {
    }

    static List<Path> write(Path folder, List<Sheet> sheets) throws IOException {
        Map<Path, Path> written = new LinkedHashMap<>();
        try {
            Files.createDirectories(folder);
            for (Sheet sheet : sheets) {
                Path fresh = folder.resolve("." + sheet.fileName() + ".new");
                written.put(fresh, folder.resolve(sheet.fileName()));
                force(fresh, sheet.text());
            }
            for (Map.Entry<Path, Path> file : written.entrySet()) {
                Files.move(file.getKey(), file.getValue(), StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            }
            return new ArrayList<>(written.values());
        } catch (IOException e) {
            throw new IOException(TEXTS.text("sheetFolder.sheetsCannotWritten", "folder", folder,
                    "reason", e.getMessage()), e);
        } finally {
            written.keySet().forEach(SheetFolder::clear);
        }
    }

    /** Removes what a failure left; what cannot be removed must not hide why it failed. */
    private static void clear(Path fresh) {
        if (Files.isRegularFile(fresh)) {
            fresh.toFile().delete();
        }
    }

    private static void force(Path file, String text) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }
}
