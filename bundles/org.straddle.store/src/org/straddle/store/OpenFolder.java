package org.straddle.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.SecureDirectoryStream;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributeView;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A folder that is held open. Where the system can, every step is taken relative to the open folder, so that it stays
 * the same one whatever somebody does to its path; elsewhere by its path. No step follows a link.
 */
final class OpenFolder implements AutoCloseable {

    private final Path path;
    /** Null where the system has none. */
    private final SecureDirectoryStream<Path> held;

    private OpenFolder(Path path, SecureDirectoryStream<Path> held) {
        this.path = path;
        this.held = held;
    }

    static OpenFolder of(Path path) throws IOException {
        DirectoryStream<Path> stream = Files.newDirectoryStream(path);
        if (stream instanceof SecureDirectoryStream<Path> secure) {
            return new OpenFolder(path, secure);
        }
        stream.close();
        return new OpenFolder(path, null);
    }

    boolean isHeld() {
        return held != null;
    }

    private static Path relative(String name) {
        return Path.of(name);
    }

    OpenFolder enter(String name) throws IOException {
        return new OpenFolder(path.resolve(name), held == null ? null
                : held.newDirectoryStream(relative(name), LinkOption.NOFOLLOW_LINKS));
    }

    BasicFileAttributes attributes(String name) throws IOException {
        return held == null
                ? Files.readAttributes(path.resolve(name), BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                : held.getFileAttributeView(relative(name), BasicFileAttributeView.class, LinkOption.NOFOLLOW_LINKS)
                        .readAttributes();
    }

    FileChannel open(String name, Set<OpenOption> how) throws IOException {
        Set<OpenOption> options = new HashSet<>(how);
        options.add(LinkOption.NOFOLLOW_LINKS);
        if (held != null) {
            SeekableByteChannel channel = held.newByteChannel(relative(name), options);
            if (channel instanceof FileChannel file) {
                return file;
            }
            channel.close();
        }
        return FileChannel.open(path.resolve(name), options);
    }

    /** By its path on every system: at worst, an empty folder is made elsewhere. */
    void createFolder(String name) throws IOException {
        Files.createDirectory(path.resolve(name));
    }

    void move(String name, OpenFolder target, String newName) throws IOException {
        if (held != null && target.held != null) {
            held.move(relative(name), target.held, relative(newName));
            return;
        }
        try {
            Files.move(path.resolve(name), target.path.resolve(newName), StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            // Some network drives: the journal still holds the new file until it is in place.
            Files.move(path.resolve(name), target.path.resolve(newName), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    void delete(String name, boolean folder) throws IOException {
        if (held == null) {
            Files.delete(path.resolve(name));
        } else if (folder) {
            held.deleteDirectory(relative(name));
        } else {
            held.deleteFile(relative(name));
        }
    }

    List<String> list() throws IOException {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> inside = held == null ? Files.newDirectoryStream(path)
                : held.newDirectoryStream(relative("."), LinkOption.NOFOLLOW_LINKS)) {
            inside.forEach(each -> names.add(each.getFileName().toString()));
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        return names;
    }

    void forceFolder(String name) throws IOException {
        try (FileChannel channel = open(name, Set.of(StandardOpenOption.READ))) {
            channel.force(true);
        } catch (IOException e) {
            throwUnlessUsual(path, e);
        }
    }

    static void force(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            throwUnlessUsual(folder, e);
        }
    }

    /** Windows cannot open a folder; its renames are ordered by the file system's own journal. */
    private static void throwUnlessUsual(Path folder, IOException e) throws IOException {
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            throw e;
        }
    }

    @Override
    public void close() throws IOException {
        if (held != null) {
            held.close();
        }
    }
}
