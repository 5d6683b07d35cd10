package org.straddle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

import org.straddle.store.BrokenSave;

/**
 * Power fails in the middle of a save. The event is then as before it or as after it; on a disk that may only be read, whoever
 * looks sees that too, whoever wants to change it is refused, and nothing moves until the disk may be written again.
 */
final class PowerFailures extends Campaign {

    private static final int STEPS = 110;

    private final Path disk;

    /** @param disk a disk of its own that may be mounted again, or null for a plain folder that stays writable */
    PowerFailures(Bench bench, Path disk) {
        super(bench);
        this.disk = disk;
    }

    @Override
    void run(Random random) throws Exception {
        Path event = Bench.copy(bench.good(), (disk == null ? bench.work() : disk).resolve("power"));
        Path sites = Files.writeString(bench.work().resolve("power.csv"), "name,latitude,longitude\nAfter power,64.5,-20.6\n");
        int before = lines(event);
        boolean done = BrokenSave.of(event, 1 + random.nextInt(STEPS), random.nextLong());
        int seen = disk == null ? lines(event) : frozen(event, sites, random);
        Bench.require(seen == before + 1 || seen == before && !done, "export after power failed", "has " + seen + " lines, before " + before);
        Bench.require(run("import", event, sites).code() == 0, "import after power failed", "refused");
        Bench.require(lines(event) == seen + 1, "import after power failed", "made " + lines(event) + " of " + seen + " lines");
        Bench.require(!Files.exists(event.resolve(".straddle-save")), "import after power failed", "left something behind");
        Bench.remove(event);
    }

    /** What is seen while the disk may only be read. */
    private int frozen(Path event, Path sites, Random random) throws IOException, InterruptedException {
        Map<String, Long> content = content(event);
        mount("ro");
        try {
            int seen = lines(event);
            Bench.require(run("import", event, sites, "--dry-run").code() == 0, "a dry run on a disk that may only be read", "refused");
            Console change = run(Bench.one(java.util.List.of(new Object[] {"import", event, sites}, new Object[] {"plan", event, "--rounds", 1},
                    new Object[] {"publish", event, "--out", bench.work().resolve("frozen")}), random));
            Bench.require(change.code() == 2, "a change on a disk that may only be read", "ends with " + change.code());
            Bench.require(!Files.exists(bench.work().resolve("frozen")), "publish on a disk that may only be read", "left sheets");
            Bench.require(run("check", event).code() <= 1, "check on a disk that may only be read", "refused");
            Bench.require(lines(event) == seen, "export on a disk that may only be read", "sees something else the second time");
            return seen;
        } finally {
            mount("rw");
            Bench.require(content(event).equals(content), "a disk that may only be read", "has changed");
        }
    }

    private void mount(String how) throws IOException, InterruptedException {
        Process mount = new ProcessBuilder("mount", "-o", "remount," + how, disk.toString()).redirectErrorStream(true).start();
        String said = new String(mount.getInputStream().readAllBytes());
        Bench.require(mount.waitFor() == 0, "mount", said);
    }

    private int lines(Path event) {
        Console export = run("export", event);
        Bench.require(export.code() == 0, "export after power failed", export.err());
        return (int) export.out().lines().count();
    }

    private static Map<String, Long> content(Path event) throws IOException {
        Map<String, Long> content = new TreeMap<>();
        for (Path file : Bench.files(event, "")) {
            content.put(file.toString(), Files.size(file) * 1_000_003 + java.util.Arrays.hashCode(Files.readAllBytes(file)));
        }
        return content;
    }
}
