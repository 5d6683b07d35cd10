package org.straddle.publish;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;

import org.straddle.words.Catalogue;

/**
 * Sheets that lie whole on the disk, in a folder of their own beside their places. A publication prepares them, then
 * writes the revision down in the event, and puts them in place last. So whatever fails or is interrupted, no sheet is
 * out whose revision the event does not know, and no number is given to two schedules. Close it to remove what was not
 * put in place.
 */
public final class PreparedSheets implements AutoCloseable {

    private static final Catalogue TEXTS = Catalogue.of(PreparedSheets.class);

    private static final String FOLDER = ".straddle-publish";
    private static final String ELSEWHERE = TEXTS.text("preparedSheets.chooseFolderYou");

    private final Path folder;
    private final List<Sheet> sheets;

    private PreparedSheets(Path folder, List<Sheet> sheets) {
        this.folder = folder;
        this.sheets = sheets;
    }

    static PreparedSheets write(Path folder, List<Sheet> sheets) throws PublishException {
        PreparedSheets prepared = new PreparedSheets(folder, sheets);
        try {
            Files.createDirectories(folder);
            prepared.refuseWhatStandsInTheWay();
            // What an earlier publication left when it was interrupted.
            clear(folder.resolve(FOLDER));
            for (Sheet sheet : sheets) {
                Path fresh = prepared.fresh(sheet);
                Files.createDirectories(fresh.getParent());
                force(fresh, sheet.text());
            }
            return prepared;
        } catch (PublishException e) {
            throw e;
        } catch (IOException e) {
            prepared.close();
            throw new PublishException(TEXTS.text("preparedSheets.sheetsCannotWritten", "folder", folder,
                    "reason", reason(e)), ELSEWHERE, e);
        }
    }

    private Path fresh(Sheet sheet) {
        return folder.resolve(FOLDER).resolve(sheet.audience().folder()).resolve(sheet.fileName());
    }

    private Path place(Sheet sheet) {
        return folder.resolve(sheet.audience().folder()).resolve(sheet.fileName());
    }

    /** Found only when half of the sheets are in place, it would leave two revisions side by side. */
    private void refuseWhatStandsInTheWay() throws PublishException {
        for (Sheet sheet : sheets) {
            Path place = place(sheet);
            Path around = place.getParent();
            Path inTheWay = Files.exists(around) && !Files.isDirectory(around) ? around
                    : Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS) ? place : null;
            if (inTheWay != null) {
                throw new PublishException(TEXTS.text("preparedSheets.inTheWay", "folder", folder,
                        "inTheWay", inTheWay),
                        TEXTS.text("preparedSheets.moveAwayChoose"), null);
            }
        }
    }

    /**
     * Puts every sheet in the place of its earlier revision. Other files there stay.
     *
     * @return the files, in the order of {@link Publication#sheets()}
     */
    public List<Path> putInPlace() throws PublishException {
        List<Path> placed = new ArrayList<>();
        try {
            for (Sheet sheet : sheets) {
                Files.createDirectories(place(sheet).getParent());
                Files.move(fresh(sheet), place(sheet), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
                placed.add(place(sheet));
            }
            return placed;
        } catch (IOException e) {
            throw new PublishException(TEXTS.text("preparedSheets.onlySheetsCould", "placed", placed.size(),
                    "sheets", sheets.size(), "folder", folder, "reason", reason(e)),
                    TEXTS.text("preparedSheets.publishAgainThere"), e);
        } finally {
            close();
        }
    }

    private static String reason(IOException e) {
        String kind = e.getClass().getSimpleName().replace("Exception", "");
        if (e instanceof FileSystemException file) {
            return file.getFile() + ": " + (file.getReason() == null ? kind : file.getReason());
        }
        return e.getMessage() == null ? kind : e.getMessage();
    }

    /** Removes what a failure left; what cannot be removed must not hide why it failed. */
    @Override
    public void close() {
        try {
            clear(folder.resolve(FOLDER));
        } catch (IOException e) {
            // The next publication tries again, and says so if it cannot.
        }
    }

    /** Follows no link: what is removed is what lies there. */
    private static void clear(Path fresh) throws IOException {
        if (!Files.exists(fresh, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        Files.walkFileTree(fresh, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path each, IOException failure) throws IOException {
                if (failure != null) {
                    throw failure;
                }
                Files.delete(each);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private static void force(Path file, String text) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }
}
