package org.straddle.check.gate;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.straddle.model.Event;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * May a team leave on a day? It is shut while one item is open.
 *
 * @param day local day on which the team sets out
 * @param items one of each kind, in the order in which they are settled best
 */
public record DepartureGate(Team team, LocalDate day, List<GateItem> items) {

    private static final Catalogue TEXTS = Catalogue.of(DepartureGate.class);

    public DepartureGate {
        items = List.copyOf(items);
    }

    /** The day of the team in an event, which may be another state of the one that was asked. */
    public Optional<TeamDay> teamDay(Event event) {
        return event.getTeams().stream().filter(any -> Objects.equals(any.getId(), team.getId())).flatMap(any -> any.getDays().stream())
                .filter(out -> out.getFrom() != null && out.getFrom().atZone(Outlook.zoneOf(event)).toLocalDate().equals(day)).findFirst();
    }

    public GateItem item(GateKind kind) {
        return items.get(kind.ordinal());
    }

    public boolean isShut() {
        return items.stream().anyMatch(GateItem::isOpen);
    }

    /** What keeps it shut. */
    public List<GateItem> open() {
        return items.stream().filter(GateItem::isOpen).toList();
    }

    /** What somebody took on. */
    public List<GateItem> overridden() {
        return items.stream().filter(item -> item.state() == GateItem.State.OVERRIDDEN).toList();
    }

    /** {@code Team 2 on 18 Jun 2027: not cleared, 3 items are open.} */
    public String sentence() {
        return TEXTS.text("gate.sentence", "team", team.getNumber(), "day", day, "open", open().size(), "overridden",
                overridden().size());
    }
}
