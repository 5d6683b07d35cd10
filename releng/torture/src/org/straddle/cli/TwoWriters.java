package org.straddle.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/** Two processes change one event at once: who says done has done it, who may not says so, and nothing is lost. */
final class TwoWriters extends Campaign {

    private static final int LONGEST_S = 120;
    private static final int APART_MS = 400;

    TwoWriters(Bench bench) {
        super(bench);
    }

    @Override
    void run(Random random) throws Exception {
        Path event = bench.event();
        Process[] writers = new Process[2];
        for (int i = 0; i < writers.length; i++) {
            Path sites = Files.writeString(bench.work().resolve("writer" + i + ".csv"), "name,latitude,longitude\nWriter " + i + ",64.5,-20.5\n");
            writers[i] = Child.start(bench.work().resolve("writer" + i + ".txt"), "import", event, sites);
            Thread.sleep(random.nextInt(APART_MS));
        }
        for (Process writer : writers) {
            Bench.require(writer.waitFor(LONGEST_S, TimeUnit.SECONDS), "import", "does not end");
        }
        String after = run("export", event).out();
        for (int i = 0; i < writers.length; i++) {
            tally().commands++;
            int code = writers[i].exitValue();
            String said = Files.readString(bench.work().resolve("writer" + i + ".txt"));
            Bench.require(code == 0 || code == 2 && said.lines().count() <= 2, "writer " + i, "ends with " + code + ": " + said);
            Bench.require(after.contains("Writer " + i) == (code == 0), "writer " + i, "ended with " + code + ", but its site is "
                    + (after.contains("Writer " + i) ? "" : "not ") + "there: " + said);
            if (code == 0) {
                tally().done++;
            } else {
                tally().refused++;
            }
        }
    }
}
