package org.straddle.cli;

import picocli.CommandLine;

/** The command line without the framework: it starts in a third of the time. */
public final class Main {

    private Main() {
    }

    /** All commands, for whoever writes their manual. */
    public static CommandLine commandLine() {
        return StraddleCommand.all(new StraddleCommand());
    }

    /**
     * Runs one command, for whoever runs several in one process.
     *
     * @return the exit code
     */
    public static int run(String... arguments) {
        Ahead.begin(arguments);
        return StraddleCommand.run(arguments);
    }

    public static void main(String[] arguments) {
        System.exit(run(arguments));
    }
}
