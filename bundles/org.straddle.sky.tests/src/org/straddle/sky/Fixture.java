package org.straddle.sky;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Lines of a committed table of outside values, without its comments; releng/fixtures says how each was made. */
final class Fixture {

    private Fixture() {
    }

    static List<String> lines(String name) {
        try (InputStream in = Fixture.class.getResourceAsStream(name);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static double[] numbers(String line) {
        return java.util.Arrays.stream(line.trim().split("\\s+")).mapToDouble(Double::parseDouble).toArray();
    }
}
