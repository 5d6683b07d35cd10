package org.straddle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The command line in a process of its own. */
final class Child {

    private Child() {
    }

    static Process start(Path log, Object... words) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1", "-Xmx512m", "-Dstraddle.user=" + System.getProperty("straddle.user"), "-Djava.library.path=" + System.getProperty("java.library.path"), "-cp",
                System.getProperty("java.class.path"), "org.straddle.cli.Main"));
        for (Object word : words) {
            command.add(word.toString());
        }
        return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    }
}
