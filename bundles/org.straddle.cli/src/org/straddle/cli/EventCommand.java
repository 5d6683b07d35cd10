package org.straddle.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What all commands on an event share: the event, which they let go at the end, and where to print. */
@Command(mixinStandardHelpOptions = true, sortOptions = false)
abstract class EventCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    OpenEvent opened;

    @Override
    public final Integer call() throws Exception {
        try (OpenEvent event = opened) {
            int code = work();
            event.migration().ifPresent(migration -> err().println(migration.sentence()));
            return code;
        }
    }

    /** @return the exit code */
    abstract int work() throws Exception;

    final PrintWriter out() {
        return spec.commandLine().getOut();
    }

    final PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
