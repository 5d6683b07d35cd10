package org.straddle.cli;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/** Hardly any room on the disk: a command does its work or says that the disk is full, and the event is whole. */
final class FullDisks extends Campaign {

    private static final int MOST_LEFT = 120_000;

    private final Path disk;

    FullDisks(Bench bench, Path disk) {
        super(bench);
        this.disk = disk;
    }

    @Override
    void run(Random random) throws Exception {
        Path filler = disk.resolve("filler");
        Files.deleteIfExists(filler);
        Bench.remove(disk.resolve("sheets"));
        Path event = Bench.copy(bench.good(), disk.resolve("event"));
        Path sites = Files.writeString(bench.work().resolve("full.csv"), "name,latitude,longitude\nFull 1,64.5,-20.5\nFull 2,64.6,-20.6\n");
        String before = run("export", event).out();
        fill(filler, random.nextInt(MOST_LEFT));
        Console tried = run(Bench.one(List.of(new Object[] {"import", event, sites}, new Object[] {"plan", event, "--rounds", 1},
                new Object[] {"publish", event, "--out", disk.resolve("sheets")}, new Object[] {"demo", disk.resolve("sheets")},
                new Object[] {"export", event, "--out", disk.resolve("sheets.csv")}), random));
        Files.delete(filler);
        Files.deleteIfExists(disk.resolve("sheets.csv"));
        Console after = run("export", event);
        Bench.require(after.code() == 0, "export after a full disk", after.err());
        Bench.require(tried.code() != 2 || after.out().equals(before), "a refused command on a full disk", "changed the event");
        Bench.require(run("import", event, sites).code() == 0, "import after a full disk", "refused");
    }

    private static void fill(Path filler, int left) throws IOException {
        FileStore store = Files.getFileStore(filler.getParent());
        byte[] block = new byte[4096];
        try (var out = Files.newOutputStream(filler)) {
            while (store.getUsableSpace() > left + block.length) {
                out.write(block);
            }
        }
    }
}
