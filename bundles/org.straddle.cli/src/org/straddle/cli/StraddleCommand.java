package org.straddle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.ResourceBundle;
import java.util.regex.Pattern;

import org.straddle.words.Catalogue;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command line as a whole: its commands, its exit codes, and how it reports what went wrong. */
@Command(name = "straddle", version = "Straddle 0.1.0", mixinStandardHelpOptions = true, sortOptions = false)
final class StraddleCommand implements Runnable {

    private static final Catalogue TEXTS = Catalogue.of(StraddleCommand.class);

    /** In the order in which the help names them. */
    private static final List<Class<?>> COMMANDS = List.of(DemoCommand.class, ImportCommand.class, PassesCommand.class,
            ReachCommand.class, PlanCommand.class, CheckCommand.class, SplitCommand.class, PackCommand.class,
            ReviewCommand.class, CallCommand.class, PublishCommand.class, LinesCommand.class, ExportCommand.class,
            HorizonCommand.class, GuideCommand.class);

    static final int DONE = 0;
    static final int BLOCKED = 1;
    static final int WRONG_INPUT = 2;

    /** What the system says when the program that reads, such as a pager, has ended: no trouble of anybody. */
    private static final Pattern NOBODY_READS = Pattern.compile("Broken.pipe");

    @Option(names = "--trace", scope = ScopeType.INHERIT)
    private boolean trace;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), TEXTS.text("straddleCommand.whichCommandGive"));
    }

    /** @return the exit code */
    static int run(String... arguments) {
        // UTF-8 whatever the locale says: names of places are rarely ASCII.
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        return run(out, err, arguments);
    }

    /** Runs a command for what it loads, not for what it says. */
    static int runSilently(String... arguments) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return run(nowhere, nowhere, arguments);
    }

    /** @return the exit code */
    static int run(PrintWriter toOut, PrintWriter toErr, String... arguments) {
        InertWriter inert = new InertWriter(toOut);
        PrintWriter out = new PrintWriter(inert, true);
        PrintWriter err = new PrintWriter(new InertWriter(toErr), true);
        StraddleCommand command = new StraddleCommand();
        CommandLine line = translated(withCommands(command, needed(arguments)));
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(100);
        line.setParameterExceptionHandler((failure, given) -> {
            CommandLine at = failure.getCommandLine();
            at.getErr().println(failure.getMessage());
            if (!CommandLine.UnmatchedArgumentException.printSuggestions(failure, at.getErr())) {
                at.getErr().println(TEXTS.text("straddleCommand.tryHelp",
                        "command", at.getCommandSpec().qualifiedName()));
            }
            return WRONG_INPUT;
        });
        line.setExecutionExceptionHandler((failure, at, parsed) -> {
            if (command.trace) {
                failure.printStackTrace(at.getErr());
            } else {
                at.getErr().println(Complaint.of(failure));
            }
            return WRONG_INPUT;
        });
        int code = line.execute(arguments);
        boolean failed = out.checkError();
        toOut.flush();
        failed |= toOut.checkError();
        if (failed && inert.failure().map(IOException::getMessage).filter(NOBODY_READS.asPredicate()).isEmpty()) {
            err.println(TEXTS.text("straddleCommand.whatPrintedDid",
                    "reason", inert.failure().map(e -> " (" + e.getMessage() + ")").orElse("")));
        }
        err.flush();
        toErr.flush();
        return failed ? WRONG_INPUT : code;
    }

    /** The command line with all its commands and texts, such as tests look at. */
    static CommandLine line(StraddleCommand command) {
        return translated(all(command));
    }

    /** The same without texts. */
    static CommandLine all(StraddleCommand command) {
        return withCommands(command, COMMANDS);
    }

    /**
     * To describe all commands takes longer than most of them run, so one that is named first is described alone. It is
     * known by its class, {@code check} by {@code CheckCommand}: to read what stands above all classes takes long too.
     */
    private static List<Class<?>> needed(String... arguments) {
        List<Class<?>> named = COMMANDS.stream().filter(each -> arguments.length > 0
                && each.getSimpleName().equalsIgnoreCase(arguments[0] + "Command")).toList();
        return named.isEmpty() ? COMMANDS : named;
    }

    private static CommandLine withCommands(StraddleCommand command, List<Class<?>> commands) {
        CommandLine line = new CommandLine(command);
        commands.forEach(line::addSubcommand);
        return line;
    }

    private static CommandLine translated(CommandLine line) {
        translate(line, Catalogue.of(StraddleCommand.class, "commands").asResourceBundle());
        return line;
    }

    private static void translate(CommandLine line, ResourceBundle texts) {
        line.setResourceBundle(texts);
        line.getSubcommands().values().forEach(command -> translate(command, texts));
    }
}
