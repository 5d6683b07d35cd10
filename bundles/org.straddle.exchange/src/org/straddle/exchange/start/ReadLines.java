package org.straddle.exchange.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Things that were written one on a line.
 *
 * @param lines those that are not blank
 */
public record ReadLines<T>(List<Line<T>> lines) {

    /**
     * @param number of the line, from 1
     * @param thing  empty when the line cannot be read
     * @param told   how it was understood, or what is wrong with it and what to write
     * @param open   whether it was understood and still lacks something, which {@code told} says
     */
    public record Line<T>(int number, String text, Optional<T> thing, String told, boolean open) {
    }

    /** What one line says. */
    record Understood<T>(T thing, String told, boolean open) {

        Understood(T thing, String told) {
            this(thing, told, false);
        }
    }

    public ReadLines {
        lines = List.copyOf(lines);
    }

    /** @param read throws an IllegalArgumentException that says what is wrong */
    static <T> ReadLines<T> of(String text, Function<String, Understood<T>> read) {
        List<Line<T>> lines = new ArrayList<>();
        List<String> all = text.lines().toList();
        for (int i = 0; i < all.size(); i++) {
            String line = all.get(i).strip();
            if (!line.isEmpty()) {
                lines.add(line(i + 1, line, read));
            }
        }
        return new ReadLines<>(lines);
    }

    private static <T> Line<T> line(int number, String text, Function<String, Understood<T>> read) {
        try {
            Understood<T> understood = read.apply(text);
            return new Line<>(number, text, Optional.of(understood.thing), understood.told, understood.open);
        } catch (IllegalArgumentException wrong) {
            return new Line<>(number, text, Optional.empty(), wrong.getMessage(), false);
        }
    }

    public List<T> things() {
        return lines.stream().flatMap(line -> line.thing.stream()).toList();
    }

    /** Whether every line could be read. */
    public boolean isRead() {
        return lines.stream().allMatch(line -> line.thing.isPresent());
    }
}
