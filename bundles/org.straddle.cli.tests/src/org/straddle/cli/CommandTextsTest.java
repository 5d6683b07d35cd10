package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.straddle.words.Catalogue;

import picocli.CommandLine;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Every command and every option says what it is for, and no text is left of one that is gone. */
class CommandTextsTest {

    private final List<CommandLine> commands = new ArrayList<>();

    CommandTextsTest() {
        collect(StraddleCommand.line(new StraddleCommand()));
    }

    private void collect(CommandLine line) {
        commands.add(line);
        line.getSubcommands().values().forEach(this::collect);
    }

    @Test
    void everythingIsDescribed() {
        List<String> silent = new ArrayList<>();
        for (CommandLine line : commands) {
            String name = line.getCommandSpec().qualifiedName();
            if (line.getCommandSpec().usageMessage().description().length == 0) {
                silent.add(name);
            }
            for (OptionSpec option : line.getCommandSpec().options()) {
                if (option.description().length == 0 || option.description()[0].isBlank()) {
                    silent.add(name + " " + option.longestName());
                }
            }
            for (PositionalParamSpec parameter : line.getCommandSpec().positionalParameters()) {
                if (parameter.description().length == 0) {
                    silent.add(name + " " + parameter.paramLabel());
                }
            }
        }
        assertEquals(List.of(), silent);
    }

    /** By its class a command is found without describing the others. */
    @Test
    void everyCommandIsKnownByItsClass() {
        CommandLine all = StraddleCommand.line(new StraddleCommand());
        assertTrue(all.getSubcommands().size() > 10);
        all.getSubcommands().forEach((name, line) -> assertEquals(name + "command",
                line.getCommandSpec().userObject().getClass().getSimpleName().toLowerCase(Locale.ROOT)));
    }

    @Test
    void noTextIsOfAnOptionThatIsGone() {
        Set<String> known = new TreeSet<>();
        for (CommandLine line : commands) {
            String name = line.getCommandSpec().qualifiedName(".");
            known.addAll(List.of(name + ".usage.description", name + ".usage.footer", name + ".usage.footerHeading"));
            for (OptionSpec option : line.getCommandSpec().options()) {
                add(known, name, option.longestName().replaceFirst("^--(\\[no-\\])?", ""));
            }
            for (PositionalParamSpec parameter : line.getCommandSpec().positionalParameters()) {
                add(known, name, parameter.paramLabel() + "[" + parameter.index() + "]");
            }
            line.getCommandSpec().argGroups().stream().map(ArgGroupSpec::headingKey).filter(key -> key != null).forEach(known::add);
        }
        List<String> left = new ArrayList<>(Collections.list(
                Catalogue.of(StraddleCommand.class, "commands").asResourceBundle().getKeys()));
        left.removeIf(key -> known.contains(key.replaceFirst("\\.\\d+$", "")));
        assertEquals(List.of(), left);
    }

    private static void add(Set<String> known, String command, String key) {
        known.add(key);
        known.add(command + "." + key);
    }
}
