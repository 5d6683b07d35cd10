package org.straddle.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.model.InertText;

/** Characters that act, markup and formulas in the texts of an event: nothing of it acts where it is printed or published. */
final class Injections extends Campaign {

    private static final Pattern TEXT = Pattern.compile("\\b(?:name|label|notes|text|by|callSign|club|title|announcementText)=\"([^\"]+)");
    private static final List<String> HOSTILE = List.of("&#x9b;31m", "&#x9d;0;x&#x9c;", "&#x202e;", "&#x2066;", "&#x2028;", "&#x85;", "&#x7f;", "&#xa;FORGED",
            "&#xd;", "&#x9;", "=1+1", "@SUM(1)", "&lt;script>alert(1)&lt;/script>", "${7*7}", "&lt;#list 1..9 as x>", "%s%n", "{0}", "'; --",
            "\u202E", "𝄞");

    Injections(Bench bench) {
        super(bench);
    }

    @Override
    void run(Random random) throws Exception {
        Path event = bench.event();
        for (Path file : Bench.files(event, ".xmi")) {
            Matcher text = TEXT.matcher(Files.readString(file));
            Files.writeString(file, text.replaceAll(match -> Matcher.quoteReplacement(random.nextInt(3) > 0 ? match.group()
                    : match.group().replace("=\"", "=\"" + Bench.one(HOSTILE, random)) + Bench.one(HOSTILE, random))));
        }
        String format = Bench.one(List.of("table", "csv", "json"), random);
        Path sheets = bench.work().resolve("sheets");
        Bench.remove(sheets);
        for (Object[] words : List.of(new Object[] {"check", event, "--format", format}, new Object[] {"pack", event, "--format", format},
                new Object[] {"export", event, "--format", Bench.one(List.of("csv", "gpx", "geojson"), random)},
                new Object[] {"publish", event, "--out", sheets})) {
            run(words);
        }
        for (Path sheet : Files.exists(sheets) ? Bench.files(sheets, "") : List.<Path>of()) {
            if (sheet.toString().matches(".*\\.(txt|html|csv|ics|json)")) {
                String text = Files.readString(sheet).replace("\r\n", "").replaceAll("[\n\t]", "");
                Bench.require(InertText.isPlain(text), sheet.toString(), "holds what acts");
                Bench.require(!sheet.toString().endsWith(".html") || !text.contains("<script>alert"), sheet.toString(), "holds a script");
            }
        }
    }
}
