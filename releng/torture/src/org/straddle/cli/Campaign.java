package org.straddle.cli;

import java.util.Random;

/** One way to make trouble. A case throws an assertion error that says what went wrong. */
abstract class Campaign {

    /** What became of the commands. */
    static final class Tally {
        int commands;
        int done;
        int refused;
    }

    final Bench bench;
    private final Tally tally = new Tally();

    Campaign(Bench bench) {
        this.bench = bench;
    }

    abstract void run(Random random) throws Exception;

    Tally tally() {
        return tally;
    }

    final Console run(Object... words) {
        return bench.run(tally, words);
    }
}
