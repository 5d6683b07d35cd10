package org.straddle.cli;

import java.util.List;

/** The blockers in what {@code check} printed. */
final class Blocked {

    private Blocked() {
    }

    /** Rules of those that a plan can do something about: visits, reviews and permissions follow a plan. */
    static List<String> byThePlan(String printed) {
        return printed.lines().filter(line -> line.startsWith("blocker ")).map(line -> line.split("\\s+")[1])
                .filter(rule -> !rule.startsWith("review-") && !rule.startsWith("survey-") && !rule.equals("permission-lapsed"))
                .toList();
    }
}
