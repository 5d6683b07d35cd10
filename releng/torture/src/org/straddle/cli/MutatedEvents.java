package org.straddle.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.exchange.elements.InventedOrientation;

/** Files of an event spoiled, or a value of theirs made extreme: every command does its work or refuses the event. */
final class MutatedEvents extends Campaign {

    private static final Pattern VALUE = Pattern.compile("=\"([^\"]*)\"");
    private static final List<String> EXTREMES = List.of("", "0", "-1", "NaN", "Infinity", "1e308", "-1e308", "1e-320", "2147483647", "-2147483648",
            "9223372036854775808", "9".repeat(400), "+1000000000-12-31T23:59:59.999999999Z", "-1000000000-01-01T00:00:00Z", "+999999999-12-31",
            "0001-01-01", "2027-02-30", "POLYGON((0 0, 1 1, 0 1, 1 0, 0 0))", "GEOMETRYCOLLECTION(".repeat(2000), "//@x.0", "#nowhere", "../../x",
            "x".repeat(100_000), "Mars/Olympus", "ZZ99", "true");

    private final boolean extremes;

    MutatedEvents(Bench bench, boolean extremes) {
        super(bench);
        this.extremes = extremes;
    }

    @Override
    void run(Random random) throws Exception {
        Path event = bench.event();
        Files.writeString(event.resolve("elements/finals2000a.txt"), InventedOrientation.finals());
        Path file = Bench.one(Bench.files(event, "").stream().filter(each -> !each.endsWith(".straddle-lock")).toList(), random);
        byte[] good = Files.readAllBytes(file);
        Files.write(file, extremes ? extreme(new String(good, StandardCharsets.UTF_8), random).getBytes(StandardCharsets.UTF_8)
                : Mutator.spoil(good, random));
        for (int i = 0; i < 2; i++) {
            run(Bench.one(List.of(new Object[] {"check", event}, new Object[] {"passes", event, "--site", "four", "--format", "csv"},
                    new Object[] {"pack", event}, new Object[] {"lines", event, "--top", 5},
                    new Object[] {"split", event}, new Object[] {"review", event}, new Object[] {"export", event},
                    new Object[] {"plan", event, "--rounds", 1, "--dry-run"}, new Object[] {"reach", event, "--bird", "1"},
                    new Object[] {"publish", event, "--out", fresh("sheets")}), random));
        }
    }

    private Path fresh(String name) {
        Path folder = bench.work().resolve(name);
        Bench.remove(folder);
        return folder;
    }

    private static String extreme(String text, Random random) {
        List<Matcher> all = new java.util.ArrayList<>();
        Matcher each = VALUE.matcher(text);
        List<int[]> spans = new java.util.ArrayList<>();
        while (each.find()) {
            spans.add(new int[] {each.start(1), each.end(1)});
        }
        if (spans.isEmpty()) {
            return text;
        }
        int[] span = Bench.one(spans, random);
        return text.substring(0, span[0]) + Bench.one(EXTREMES, random) + text.substring(span[1]);
    }
}
