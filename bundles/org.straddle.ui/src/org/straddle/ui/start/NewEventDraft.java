package org.straddle.ui.start;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.straddle.exchange.elements.ElementFile;
import org.straddle.exchange.start.EventStart;
import org.straddle.model.StraddleFactory;

/** What the user has answered so far; nothing of it is on the disk. */
final class NewEventDraft {

    /** Answers that are written one on a line. */
    enum Lines {
        BASES, OPERATORS, TEAMS, SITES, DOWNLINKS, DEMAND
    }

    private final Map<Lines, String> lines = new EnumMap<>(Lines.class);
    final List<ElementFile> elements = new ArrayList<>();
    String name = "";
    String club = "";
    LocalDate firstDay = LocalDate.now().plusMonths(1);
    LocalDate lastDay = firstDay.plusDays(1);
    String zone = ZoneId.systemDefault().getId();
    Path folder;
    double stationSpanM = StraddleFactory.eINSTANCE.createPolicies().getStationSpanM();

    String lines(Lines kind) {
        return lines.getOrDefault(kind, "");
    }

    void set(Lines kind, String text) {
        lines.put(kind, text);
    }

    /** Whether anything would be lost. */
    boolean isBegun() {
        return !name.isBlank() || !elements.isEmpty() || lines.values().stream().anyMatch(text -> !text.isBlank());
    }

    EventStart start() {
        return new EventStart(name, club, firstDay, lastDay, zone, lines(Lines.BASES), lines(Lines.OPERATORS),
                lines(Lines.TEAMS), lines(Lines.SITES), stationSpanM, elements, lines(Lines.DOWNLINKS), lines(Lines.DEMAND));
    }
}
