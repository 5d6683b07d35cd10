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

    public static void main(String[] arguments) {
        Ahead.begin(arguments);
        System.exit(StraddleCommand.run(arguments));
    }
}
