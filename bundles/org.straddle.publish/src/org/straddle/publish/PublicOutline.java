package org.straddle.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.straddle.words.Catalogue;

/** What a publication would show to everybody and what to one team alone, to be read before anything is written. */
final class PublicOutline {

    private static final Catalogue TEXTS = Catalogue.of(PublicOutline.class);

    /** Characters of the words to chasers that are repeated. */
    private static final int WORDS = 60;

    private PublicOutline() {
    }

    static List<String> of(Announcement announcement, List<Sheet> sheets) {
        List<String> lines = new ArrayList<>();
        lines.add(TEXTS.text("publicOutline.everybodyFolderThey", "folder", Audience.PUBLIC.folder(),
                "names", names(sheets, Audience.PUBLIC)));
        lines.add(TEXTS.text("publicOutline.event", "event", announcement.event(),
                "part", part(TEXTS.text("publicOutline.club"), announcement.club()),
                "part2", part(TEXTS.text("publicOutline.days"), announcement.dates())));
        String words = String.join(" ", announcement.text());
        if (!words.isEmpty()) {
            lines.add(TEXTS.text("publicOutline.wordsChasersCharacters",
                    "words", words.length() > WORDS ? words.substring(0, WORDS) + "…" : words, "words2", words.length()));
        }
        for (TeamHead team : announcement.teams()) {
            lines.add(TEXTS.text("publicOutline.team", "mark", team.mark().number(), "team", team.name(),
                    "part", part(TEXTS.text("publicOutline.callSigns"), String.join(", ", team.callSigns()))));
        }
        long turns = announcement.days().stream().mapToLong(day -> day.entries().size()).sum();
        lines.add(TEXTS.text("publicOutline.turnsEachTime", "turns", turns,
                "part", part(" ", announcement.squares().stream().map(Announcement.SquareEntry::square).collect(Collectors.joining(", ")))));
        lines.add(TEXTS.text("publicOutline.oneTeamEach", "folder", Audience.PRIVATE.folder(),
                "names", names(sheets, Audience.PRIVATE)));
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
