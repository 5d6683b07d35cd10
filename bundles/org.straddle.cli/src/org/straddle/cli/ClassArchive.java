package org.straddle.cli;

import java.nio.file.Path;
import java.util.List;

/**
 * Runs the common commands once on a demo event, so that a Java machine that is told to write an archive of its
 * classes at the end finds them loaded. The argument is a folder that does not exist yet.
 */
public final class ClassArchive {

    private ClassArchive() {
    }

    public static void main(String[] arguments) {
        String event = arguments[0];
        Ahead.begin("check", event);
        Ahead.awaitReading();
        String published = Path.of(event).resolveSibling("published").toString();
        for (List<String> command : List.of(List.of("--version"), List.of("demo", event), List.of("check", event),
                List.of("check", event, "--format", "json"), List.of("passes", event), List.of("pack", event),
                List.of("review", event), List.of("publish", event, "--out", published))) {
            StraddleCommand.runSilently(command.toArray(String[]::new));
        }
        System.exit(0);
    }
}
