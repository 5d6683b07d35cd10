package org.straddle.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.stream.Collectors;

import org.straddle.check.gate.GateEntry;
import org.straddle.check.gate.GateKind;
import org.straddle.model.Event;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Option;

/** Options of {@code review} by which somebody puts their name to an item of a departure gate. */
final class SettleOptions {

    private static final Catalogue TEXTS = Catalogue.of(SettleOptions.class);

    @Option(names = "--settle", paramLabel = "ITEM")
    private String item;

    @Option(names = "--override", paramLabel = "ITEM")
    private String overridden;

    @Option(names = "--team", paramLabel = "T")
    private String team;

    @Option(names = "--day", paramLabel = "YYYY-MM-DD")
    private LocalDate day;

    @Option(names = "--by", paramLabel = "NAME")
    private String by;

    @Option(names = "--reason", paramLabel = "TEXT")
    private String reason;

    boolean isGiven() {
        return item != null || overridden != null;
    }

    /** @throws WrongInput with what is missing or wrong */
    GateEntry entry() {
        if (item != null && overridden != null || team == null || day == null) {
            throw new WrongInput(TEXTS.text("settleOptions.missing"));
        }
        String word = item != null ? item : overridden;
        GateKind kind = GateKind.of(word).orElseThrow(() -> new WrongInput(TEXTS.text("settleOptions.item", "item", word, "items",
                Arrays.stream(GateKind.values()).map(GateKind::word).collect(Collectors.joining(", ")))));
        GateEntry entry = new GateEntry(kind, by, Instant.now().truncatedTo(ChronoUnit.MINUTES), overridden != null, reason);
        entry.problems().stream().findFirst().ifPresent(problem -> {
            throw new WrongInput(problem);
        });
        return entry;
    }

    /** The day that is meant, by the local date on which it begins. */
    TeamDay day(Event event) {
        Team leaving = OpenEvent.team(team, event);
        return leaving.getDays().stream()
                .filter(out -> out.getFrom() != null && out.getFrom().atZone(Outlook.zoneOf(event)).toLocalDate().equals(day)).findFirst()
                .orElseThrow(() -> new WrongInput(TEXTS.text("settleOptions.day", "team", leaving.getNumber(), "day", day.toString())));
    }
}
