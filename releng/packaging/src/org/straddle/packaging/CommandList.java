package org.straddle.packaging;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Commands that run one after the other in this process, each with outputs of its own: to start anew for each takes most of
 * the time. They are read as a word a line, an empty line behind each command.
 */
record CommandList(List<List<String>> commands) {

    /** What runs one command and gives its exit code. */
    interface Way {
        Object run(String... words) throws Throwable;
    }

    static CommandList read(InputStream in) throws IOException {
        List<List<String>> commands = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
            if (!line.isEmpty()) {
                words.add(line);
            } else if (!words.isEmpty()) {
                commands.add(words);
                words = new ArrayList<>();
            }
        }
        return new CommandList(commands);
    }

    /** Leaves NUMBER.out, NUMBER.err and NUMBER.code in a folder, counted from 1. */
    void run(Way way, Path said) throws IOException {
        for (int i = 0; i < commands.size(); i++) {
            Object code = run(way, commands.get(i), said.resolve((i + 1) + ".out"), said.resolve((i + 1) + ".err"));
            Files.writeString(said.resolve((i + 1) + ".code"), code + "\n");
        }
    }

    private static Object run(Way way, List<String> words, Path out, Path err) throws IOException {
        PrintStream usualOut = System.out;
        PrintStream usualErr = System.err;
        try (PrintStream ownOut = stream(out); PrintStream ownErr = stream(err)) {
            System.setOut(ownOut);
            System.setErr(ownErr);
            try {
                return way.run(words.toArray(String[]::new));
            } catch (Throwable failure) {
                // A class that is not found, mostly: the next command is told on its own.
                failure.printStackTrace();
                return "failed";
            }
        } finally {
            System.setOut(usualOut);
            System.setErr(usualErr);
        }
    }

    private static PrintStream stream(Path file) throws IOException {
        return new PrintStream(Files.newOutputStream(file), true, StandardCharsets.UTF_8);
    }
}
