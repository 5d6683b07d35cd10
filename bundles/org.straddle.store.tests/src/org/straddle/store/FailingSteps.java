package org.straddle.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedList;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * A disk on which power fails after a given number of steps. A write that it hits leaves half a file. What was not
 * forced when power failed is lost in part, as chance has it: new entries, renames and removals come undone. A rename
 * counts as one step also between two folders, as on every file system with a journal. Nothing is forced in earnest,
 * because that is slow and tells a test nothing.
 */
final class FailingSteps implements FileSteps {

    /** Stands for the end of the process: nothing of ours may catch it. */
    static final class PowerFailure extends Error {

        private static final long serialVersionUID = 1L;
    }

    private interface Step {
        void take() throws IOException;
    }

    /** What was there before steps that were not forced yet, newest first, by the folder whose force makes them last. */
    private final Map<Path, LinkedList<Map<Path, byte[]>>> unforced = new LinkedHashMap<>();
    private final SplittableRandom chance;
    private final int last;
    private final boolean asError;
    private int taken;

    private FailingSteps(int last, long seed, boolean asError) {
        this.last = last;
        this.chance = new SplittableRandom(seed);
        this.asError = asError;
    }

    static FailingSteps powerFailsAt(int step, long seed) {
        return new FailingSteps(step, seed, false);
    }

    /** Nothing fails; faster than a real disk, because nothing is forced. */
    static FailingSteps never() {
        return powerFailsAt(Integer.MAX_VALUE, 0);
    }

    /** The step fails with an error of the disk, and the program lives on; later steps work. */
    static FailingSteps diskFailsAt(int step) {
        return new FailingSteps(step, 0, true);
    }

    int taken() {
        return taken;
    }

    private void step(Step step, Step half) throws IOException {
        taken++;
        if (taken == last) {
            if (half != null) {
                half.take();
            }
            if (asError) {
                throw new IOException("No space left on device");
            }
            lose();
            throw new PowerFailure();
        }
        if (taken > last && !asError) {
            throw new PowerFailure();
        }
        step.take();
    }

    /** @param files that one step changes together, so that it comes undone for all or none; the last in the folder */
    private void remember(Path... files) throws IOException {
        Map<Path, byte[]> before = new HashMap<>();
        for (Path file : files) {
            before.put(file, Files.isRegularFile(file) ? Files.readAllBytes(file) : null);
        }
        unforced.computeIfAbsent(files[files.length - 1].getParent(), each -> new LinkedList<>()).addFirst(before);
    }

    private void lose() throws IOException {
        for (LinkedList<Map<Path, byte[]>> steps : unforced.values()) {
            for (Map<Path, byte[]> before : steps) {
                if (chance.nextInt(2) == 0) {
                    undo(before);
                }
            }
        }
    }

    private static void undo(Map<Path, byte[]> before) throws IOException {
        for (Map.Entry<Path, byte[]> file : before.entrySet()) {
            if (file.getValue() == null) {
                Files.deleteIfExists(file.getKey());
            } else if (Files.isDirectory(file.getKey().getParent())) {
                Files.write(file.getKey(), file.getValue());
            }
        }
    }

    @Override
    public void createFolder(Place folder) throws IOException {
        step(() -> {
            folder.tree().createRoot();
            folder.tree().createFolders(folder);
        }, null);
    }

    @Override
    public void write(Place file, byte[] bytes) throws IOException {
        step(() -> {
            remember(file.path());
            create(file, bytes);
        }, () -> create(file, Arrays.copyOf(bytes, bytes.length / 2)));
    }

    private static void create(Place file, byte[] bytes) throws IOException {
        try (OutputStream out = Channels.newOutputStream(file.tree().create(file))) {
            out.write(bytes);
        }
    }

    @Override
    public void copy(Place from, Place to) throws IOException {
        try (InputStream in = from.tree().read(from)) {
            write(to, in.readAllBytes());
        }
    }

    @Override
    public void rename(Place from, Place to) throws IOException {
        step(() -> {
            remember(from.path(), to.path());
            from.tree().rename(from, to);
        }, null);
    }

    @Override
    public void deleteIfExists(Place fileOrEmptyFolder) throws IOException {
        step(() -> {
            if (!Files.isDirectory(fileOrEmptyFolder.path())) {
                remember(fileOrEmptyFolder.path());
            }
            fileOrEmptyFolder.tree().delete(fileOrEmptyFolder);
        }, null);
    }

    @Override
    public void forceFolder(Place folder) throws IOException {
        step(() -> unforced.remove(folder.path()), null);
    }
}
