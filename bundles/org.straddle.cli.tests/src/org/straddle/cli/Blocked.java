package org.straddle.cli;

import java.util.List;

import org.straddle.check.CheckRule;

/** The blockers in what {@code check} printed. */
final class Blocked {

    private Blocked() {
    }

    /** Rules of those that a plan can do something about: visits, reviews and permissions follow a plan. */
    static List<String> byThePlan(String printed) {
        return printed.lines().filter(line -> line.startsWith("blocker ")).map(line -> line.split("\\s+")[1])
                .filter(rule -> !CheckRule.PAPERS.contains(rule))
                .toList();
    }
}
