package org.straddle.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/** A command that changes the event is killed at some moment: the event is as before, or as after, and can be changed. */
final class Kills extends Campaign {

    private static final int SITES = 60;
    private static final int LATEST_MS = 4000;
    private static final int BEFORE = 20;

    Kills(Bench bench) {
        super(bench);
    }

    @Override
    void run(Random random) throws Exception {
        Path event = bench.event();
        StringBuilder sites = new StringBuilder("name,latitude,longitude\n");
        for (int i = 0; i < SITES; i++) {
            sites.append("Killed ").append(i).append(",64.").append(10 + i).append(",-20.5\n");
        }
        Path file = Files.writeString(bench.work().resolve("killed.csv"), sites);
        Process command = Child.start(bench.work().resolve("child.txt"), "import", event, file);
        tally().commands++;
        if (!command.waitFor(random.nextInt(LATEST_MS), TimeUnit.MILLISECONDS)) {
            command.destroyForcibly().waitFor();
            tally().refused++;
        } else {
            tally().done++;
        }
        Console now = run("export", event);
        long lines = now.out().lines().count() - 1;
        Bench.require(now.code() == 0 && (lines == BEFORE || lines == BEFORE + SITES), "export after a kill",
                "ends with " + now.code() + " and has " + lines + " sites: " + now.err());
        Console again = run("import", event, file);
        Bench.require(again.code() == 0, "import after a kill", again.err());
        Bench.require(run("export", event).out().lines().count() - 1 == BEFORE + SITES, "import after a kill", "not all sites are there");
        Bench.require(run("check", event).code() <= 1, "check after a kill", "refused");
    }
}
