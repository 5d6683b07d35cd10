package org.straddle.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a publication would show to everybody and what to one team alone, to be read before anything is written. */
final class PublicOutline {

    /** Characters of the words to chasers that are repeated. */
    private static final int WORDS = 60;

    private PublicOutline() {
    }

    static List<String> of(Announcement announcement, List<Sheet> sheets) {
        List<String> lines = new ArrayList<>();
        lines.add("For everybody, in the folder " + Audience.PUBLIC.folder() + ": " + names(sheets, Audience.PUBLIC)
                + ". They will say:");
        lines.add("  event: " + announcement.event() + part(", club: ", announcement.club()) + part(", days: ", announcement.dates()));
        String words = String.join(" ", announcement.text());
        if (!words.isEmpty()) {
            lines.add("  words to chasers: \"" + (words.length() > WORDS ? words.substring(0, WORDS) + "…" : words) + "\" ("
                    + words.length() + " characters)");
        }
        for (TeamHead team : announcement.teams()) {
            lines.add("  team " + team.mark().number() + ": " + team.name()
                    + part(", call signs: ", String.join(", ", team.callSigns())));
        }
        long turns = announcement.days().stream().mapToLong(day -> day.entries().size()).sum();
        lines.add("  turns: " + turns + ", each with time, bird, mode, downlink, team and the squares"
                + part(" ", announcement.squares().stream().map(Announcement.SquareEntry::square).collect(Collectors.joining(", "))));
        lines.add("For one team each, in the folder " + Audience.PRIVATE.folder() + " (people, whom to call, places; never upload"
                + " it): " + names(sheets, Audience.PRIVATE));
        return List.copyOf(lines);
    }

    private static String names(List<Sheet> sheets, Audience audience) {
        String names = sheets.stream().filter(sheet -> sheet.audience() == audience).map(Sheet::fileName)
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "none" : names;
    }

    private static String part(String label, String value) {
        return value.isBlank() ? "" : label + value;
    }
}
