package org.straddle.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Campaigns against the command line: each runs case after case, each case from a seed of its own, until its time is over.
 * Prints every failure with the seed that brings it back, and a table at the end; exits with 1 when something failed.
 *
 * <p>Arguments: a folder to work in, minutes, the first seed, and, to run one case alone, the name of its campaign; a folder
 * on a small disk after {@code --small-disk} where there is one.
 */
public final class Torture {

    private final Map<String, Campaign> campaigns = new LinkedHashMap<>();
    private final ByteArrayOutputStream pastTheGate = new ByteArrayOutputStream();
    private final PrintStream console = System.out;

    public static void main(String[] arguments) throws Exception {
        List<String> words = new ArrayList<>(List.of(arguments));
        int at = words.indexOf("--small-disk");
        Path small = at < 0 ? null : Path.of(words.get(at + 1));
        if (at >= 0) {
            words.subList(at, at + 2).clear();
        }
        PrintStream console = System.out;
        int failed = 1;
        try {
            failed = new Torture(Path.of(words.get(0)), small).run(Double.parseDouble(words.get(1)), Long.parseLong(words.get(2)),
                    words.size() > 3 ? words.get(3) : null);
        } catch (Exception | AssertionError e) {
            e.printStackTrace(console);
        }
        console.flush();
        // Threads of a command that hangs must not keep us.
        Runtime.getRuntime().halt(failed == 0 ? 0 : 1);
    }

    private Torture(Path work, Path smallDisk) throws Exception {
        Bench bench = new Bench(work, pastTheGate);
        System.setErr(new PrintStream(pastTheGate, true, StandardCharsets.UTF_8));
        System.setOut(new PrintStream(pastTheGate, true, StandardCharsets.UTF_8));
        campaigns.put("mutations", new Mutations(bench));
        campaigns.put("events", new MutatedEvents(bench, false));
        campaigns.put("extremes", new MutatedEvents(bench, true));
        campaigns.put("injections", new Injections(bench));
        campaigns.put("kills", new Kills(bench));
        campaigns.put("writers", new TwoWriters(bench));
        campaigns.put("power", new PowerFailures(bench, null));
        if (smallDisk == null) {
            console.println("Full disks, and disks that may only be read, are left out: to make a small disk takes root.");
        } else {
            campaigns.put("full disks", new FullDisks(bench, smallDisk));
            campaigns.put("read-only disks", new PowerFailures(bench, smallDisk));
        }
    }

    private int run(double minutes, long seed, String only) {
        console.printf("Seed %d%n", seed);
        if (only != null) {
            campaigns.keySet().removeIf(name -> !name.equals(only));
        }
        long each = (long) (minutes * 60e9 / campaigns.size());
        Map<String, Integer> cases = new LinkedHashMap<>();
        Map<String, Integer> failures = new LinkedHashMap<>();
        campaigns.forEach((name, campaign) -> {
            long end = System.nanoTime() + each;
            int done = 0;
            int failed = 0;
            while (done == 0 || System.nanoTime() < end && minutes > 0) {
                long own = seed + done;
                try {
                    campaign.run(new Random(own * 0x9E3779B97F4A7C15L + name.hashCode()));
                } catch (Exception | AssertionError e) {
                    failed++;
                    console.printf("%s, seed %d: %s%n", name, own, e instanceof AssertionError ? e.getMessage() : e.toString());
                }
                done++;
            }
            cases.put(name, done);
            failures.put(name, failed);
        });
        console.printf(Locale.ROOT, "%n| campaign | cases | commands | done | refused | failures |%n| --- | --- | --- | --- | --- | --- |%n");
        campaigns.forEach((name, campaign) -> console.printf("| %s | %d | %d | %d | %d | %d |%n", name, cases.get(name), campaign.tally().commands,
                campaign.tally().done, campaign.tally().refused, failures.get(name)));
        int all = failures.values().stream().mapToInt(Integer::intValue).sum();
        console.println(all == 0 ? "Nothing failed." : all + " failures; run one again: releng/torture/run 0 SEED CAMPAIGN");
        console.flush();
        return all;
    }
}
