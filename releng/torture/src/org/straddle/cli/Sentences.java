package org.straddle.cli;

import java.util.stream.Collectors;

/** Sentences of NMEA 0183 with their checksums: the exclusive or of all characters between $ and *. */
final class Sentences {

    private Sentences() {
    }

    static String of(String between) {
        return String.format("$%s*%02X\r\n", between, between.chars().reduce(0, (a, b) -> a ^ b) & 0xFF);
    }

    /** Spoiled sentences that still add up, so that the fields themselves are looked at. */
    static String withFreshSums(String log) {
        return log.lines().map(line -> line.startsWith("$") ? of(line.substring(1).replaceAll("\\*.*", "")) : line + "\r\n")
                .collect(Collectors.joining());
    }
}
