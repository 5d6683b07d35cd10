package org.straddle.packaging;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.adaptor.EclipseStarter;

/**
 * Starts the framework once and runs command after command in it, each with outputs of its own: starting it for each takes
 * most of the time.
 *
 * <p>{@code OneFramework APPLICATION CONFIGURATION SAID <COMMANDS}: a word a line, an empty line behind each command. Leaves
 * NUMBER.out, NUMBER.err and NUMBER.code in SAID.
 */
final class OneFramework {

    public static void main(String[] arguments) throws Exception {
        Path application = Path.of(arguments[0]);
        Path configuration = Files.createDirectories(Path.of(arguments[1]));
        Path said = Path.of(arguments[2]);
        List<List<String>> commands = commands();
        Files.copy(application.resolve("configuration/config.ini"), configuration.resolve("config.ini"));
        Map<String, String> properties = new HashMap<>();
        properties.put("osgi.install.area", application.toUri().toString());
        properties.put("osgi.configuration.area", configuration.toUri().toString());
        properties.put("osgi.configuration.cascaded", "false");
        properties.put("osgi.framework.useSystemProperties", "true");
        EclipseStarter.setInitialProperties(properties);
        EclipseStarter.startup(new String[] {"-data", "@none", "-nosplash", "-application", "org.straddle.cli.application"}, null);
        for (int i = 0; i < commands.size(); i++) {
            Object code = run(commands.get(i), said.resolve((i + 1) + ".out"), said.resolve((i + 1) + ".err"));
            Files.writeString(said.resolve((i + 1) + ".code"), code + "\n");
        }
        EclipseStarter.shutdown();
        System.exit(0);
    }

    private static Object run(List<String> words, Path out, Path err) throws IOException {
        PrintStream usualOut = System.out;
        PrintStream usualErr = System.err;
        try (PrintStream ownOut = stream(out); PrintStream ownErr = stream(err)) {
            System.setOut(ownOut);
            System.setErr(ownErr);
            try {
                return EclipseStarter.run(words.toArray(String[]::new));
            } catch (Exception | LinkageError failure) {
                // A bundle that does not find a class, mostly: the next command is told on its own.
                failure.printStackTrace();
                return "failed";
            }
        } finally {
            System.setOut(usualOut);
            System.setErr(usualErr);
        }
    }

    private static PrintStream stream(Path file) throws IOException {
        OutputStream bytes = Files.newOutputStream(file);
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private static List<List<String>> commands() throws IOException {
        List<List<String>> commands = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (String line : new String(System.in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
            if (!line.isEmpty()) {
                words.add(line);
            } else if (!words.isEmpty()) {
                commands.add(words);
                words = new ArrayList<>();
            }
        }
        return commands;
    }
}
