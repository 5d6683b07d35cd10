package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The steps on a real disk. */
final class DiskSteps implements FileSteps {

    @Override
    public void createFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Path parent = folder.toAbsolutePath().getParent();
            createFolder(parent);
            Files.createDirectory(folder);
            forceFolder(parent);
        }
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = create(file)) {
            writeAll(channel, ByteBuffer.wrap(bytes));
            channel.force(true);
        }
    }

    @Override
    public void copy(Path from, Path to) throws IOException {
        try (InputStream in = Files.newInputStream(from); FileChannel channel = create(to)) {
            byte[] block = new byte[1 << 16];
            for (int read = in.read(block); read >= 0; read = in.read(block)) {
                writeAll(channel, ByteBuffer.wrap(block, 0, read));
            }
            channel.force(true);
        }
    }

    private static FileChannel create(Path file) throws IOException {
        return FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    private static void writeAll(FileChannel channel, ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            // Some network drives: the journal still holds the new file until it is in place.
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void deleteIfExists(Path fileOrEmptyFolder) throws IOException {
        Files.deleteIfExists(fileOrEmptyFolder);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Windows cannot open a folder; its renames are ordered by the file system's own journal.
            if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
                throw e;
            }
        }
    }
}
