package org.straddle.sky;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Lines of a committed table of outside values, without its comments; releng/fixtures says how each was made. */
public final class Fixture {

    private Fixture() {
    }

    public static List<String> lines(String name) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(bytes(name), StandardCharsets.UTF_8))) {
            return reader.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The whole of it, as it was published. */
    public static InputStream bytes(String name) {
        return Fixture.class.getResourceAsStream(name);
    }

    public static double[] numbers(String line) {
        return java.util.Arrays.stream(line.trim().split("\\s+")).mapToDouble(Double::parseDouble).toArray();
    }
}
