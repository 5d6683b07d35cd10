package org.straddle.packaging;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * Man pages and shell completion, made from what picocli knows of the commands: a page for the tool, one for each
 * command. The pages are in the man macros of groff_man(7).
 */
final class Manual {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final CommandLine tool;
    private final long time;

    Manual(CommandLine tool, long time) {
        this.tool = tool;
        this.time = time;
        // Else a synopsis is folded to the width of a terminal.
        tool.setUsageHelpWidth(4000);
    }

    void write(Path pages, Path completion) throws IOException {
        Files.createDirectories(pages);
        Files.writeString(pages.resolve("straddle.1"), page("straddle", tool));
        for (CommandLine command : tool.getSubcommands().values()) {
            String name = "straddle-" + command.getCommandName();
            Files.writeString(pages.resolve(name + ".1"), page(name, command));
        }
        Files.createDirectories(completion.getParent());
        Files.writeString(completion, AutoComplete.bash("straddle", tool), StandardCharsets.UTF_8);
    }

    private String page(String name, CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        CommandLine.Help help = command.getHelp();
        StringBuilder page = new StringBuilder();
        page.append(".TH ").append(name.toUpperCase(Locale.ROOT).replace("-", "\\-")).append(" 1 ")
                .append(DAY.format(Instant.ofEpochMilli(time))).append(" \"").append(tool.getCommandSpec().version()[0])
                .append("\" \"Straddle\"\n");
        // Long words of a synopsis leave holes in lines that are justified.
        page.append(".nh\n.ad l\n");
        String[] description = spec.usageMessage().description();
        page.append(".SH NAME\n").append(text(name)).append(" \\- ").append(text(firstSentence(description))).append('\n');
        page.append(".SH SYNOPSIS\n");
        if (command == tool) {
            page.append(".B straddle\n.br\n.B straddle\n.I EVENT\n.br\n");
        }
        page.append(text(help.synopsis(0).strip())).append('\n');
        page.append(".SH DESCRIPTION\n");
        if (command == tool) {
            page.append("Without arguments, or with nothing but the folder of an event, it opens the window; everything else"
                    + " is for the command line tool.\n.PP\n");
        }
        page.append(text(String.join(" ", description))).append('\n');
        if (!spec.positionalParameters().isEmpty()) {
            page.append(".SH ARGUMENTS\n");
            for (PositionalParamSpec parameter : spec.positionalParameters()) {
                entry(page, parameter.paramLabel(), parameter);
            }
        }
        page.append(".SH OPTIONS\n");
        for (OptionSpec option : spec.options()) {
            if (!option.hidden()) {
                String names = String.join(", ", option.names());
                entry(page, option.arity().max() == 0 ? names : names + "=" + option.paramLabel(), option);
            }
        }
        if (command == tool) {
            page.append(".SH COMMANDS\n");
            tool.getSubcommands().forEach((word, sub) -> page.append(".TP\n.BR straddle\\-").append(text(word)).append(" (1)\n")
                    .append(text(firstSentence(sub.getCommandSpec().usageMessage().description()))).append('\n'));
            page.append(".SH ENVIRONMENT\n");
            variable(page, "STRADDLE_JAVA", "The Java to use, instead of the first one that is found and new enough.");
            variable(page, "STRADDLE_JAVA_OPTIONS", "More options for it.");
            variable(page, "STRADDLE_CACHE", "Folder for what can be made anew.");
            variable(page, "STRADDLE_STATE", "Folder for the layout of the window and for templates of kits.");
            variable(page, "STRADDLE_ARCHIVE", "With the value no, no archive of classes is made; commands start slower then.");
        }
        page.append(".SH EXIT STATUS\n");
        exit(page, 0, "done");
        exit(page, 1, "done, but blockers were found");
        exit(page, 2, "wrong input or usage");
        if (command != tool) {
            page.append(".SH SEE ALSO\n.BR straddle (1)\n");
        }
        return page.toString();
    }

    private static void entry(StringBuilder page, String term, ArgSpec argument) {
        String[] rows = argument.description();
        page.append(".TP\n\\fB").append(text(term)).append("\\fR\n").append(text(String.join(" ", rows))).append('\n');
    }

    private static void variable(StringBuilder page, String name, String meaning) {
        page.append(".TP\n.B ").append(name).append('\n').append(text(meaning)).append('\n');
    }

    private static void exit(StringBuilder page, int code, String meaning) {
        page.append(".TP\n.B ").append(code).append('\n').append(meaning).append('\n');
    }

    private static String firstSentence(String[] description) {
        String all = plain(String.join(" ", description));
        int end = all.indexOf(". ");
        String sentence = end < 0 ? all : all.substring(0, end);
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    private static String plain(String words) {
        return Ansi.OFF.string(String.format(words)).strip();
    }

    /** Escapes what the macros would read as commands, and folds lines, so that none begins with a dot. */
    private static String text(String words) {
        StringBuilder out = new StringBuilder();
        for (String line : Ansi.OFF.string(words).strip().replace("%n", "\n").split("\\s*\n\\s*")) {
            String escaped = line.replace("\\", "\\e").replace("-", "\\-").replace("'", "\\(aq").replace("%%", "%");
            out.append(escaped.startsWith(".") ? "\\&" + escaped : escaped).append('\n');
        }
        return out.toString().strip();
    }
}
