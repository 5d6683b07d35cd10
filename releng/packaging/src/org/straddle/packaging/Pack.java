package org.straddle.packaging;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The steps of {@code releng/package} that a shell script is no good at. */
public final class Pack {

    private Pack() {
    }

    /** @param arguments steps, each with what it needs, with {@code --} between them: one start does them all */
    public static void main(String[] arguments) throws Exception {
        try {
            List<String> step = new ArrayList<>();
            for (String argument : arguments) {
                if (!argument.equals("--")) {
                    step.add(argument);
                } else {
                    run(step.toArray(String[]::new));
                    step.clear();
                }
            }
            run(step.toArray(String[]::new));
        } catch (IOException | IllegalStateException failure) {
            System.err.println(failure.getMessage());
            System.exit(1);
        }
    }

    private static void run(String[] arguments) throws Exception {
        switch (arguments[0]) {
            case "application" -> {
                Application application = new Application(Path.of(arguments[1]), Path.of(arguments[2]), Path.of(arguments[5]), epoch());
                application.make();
                application.addNotices(new Notices(Path.of(arguments[3]), Path.of(arguments[4])));
            }
            case "share" -> Share.make(Path.of(arguments[1]), Path.of(arguments[2]), Path.of(arguments[3]), epoch());
            case "resolve" -> Resolution.check(Path.of(arguments[1]), arguments[2]);
            case "zip" -> Zip.write(Path.of(arguments[1]), Path.of(arguments[2]), epoch());
            default -> throw new IllegalStateException("No such step: " + arguments[0]);
        }
    }

    /** The time of everything that is packed, in milliseconds: that of the commit. */
    private static long epoch() {
        return Long.parseLong(System.getenv("SOURCE_DATE_EPOCH")) * 1000;
    }
}
