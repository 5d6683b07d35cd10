package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;

/** The steps on a real disk. */
final class DiskSteps implements FileSteps {

    @Override
    public void createFolder(Place folder) throws IOException {
        for (Path made : folder.tree().createRoot()) {
            OpenFolder.force(made.getParent());
        }
        for (Place fresh : folder.tree().createFolders(folder)) {
            forceFolder(fresh.parent());
        }
    }

    @Override
    public void write(Place file, byte[] bytes) throws IOException {
        try (FileChannel channel = file.tree().create(file)) {
            writeAll(channel, ByteBuffer.wrap(bytes));
            channel.force(true);
        }
    }

    @Override
    public void copy(Place from, Place to) throws IOException {
        try (InputStream in = from.tree().read(from); FileChannel channel = to.tree().create(to)) {
            byte[] block = new byte[1 << 16];
            for (int read = in.read(block); read >= 0; read = in.read(block)) {
                writeAll(channel, ByteBuffer.wrap(block, 0, read));
            }
            channel.force(true);
        }
    }

    private static void writeAll(FileChannel channel, ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }

    @Override
    public void rename(Place from, Place to) throws IOException {
        from.tree().rename(from, to);
    }

    @Override
    public void deleteIfExists(Place fileOrEmptyFolder) throws IOException {
        fileOrEmptyFolder.tree().delete(fileOrEmptyFolder);
    }

    @Override
    public void forceFolder(Place folder) throws IOException {
        folder.tree().force(folder);
    }
}
