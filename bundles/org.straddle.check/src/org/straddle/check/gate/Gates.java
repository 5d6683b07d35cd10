package org.straddle.check.gate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.straddle.check.Finding;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.words.Catalogue;

/** The gates of all teams, one for each day on which the plan sends a team out. */
public record Gates(List<DepartureGate> all) {

    private static final Catalogue TEXTS = Catalogue.of(Gates.class);

    public Gates {
        all = List.copyOf(all);
    }

    /** @param findings what the checks said of the same outlook */
    public static Gates of(Outlook outlook, List<Finding> findings) {
        List<DepartureGate> gates = new ArrayList<>();
        Itinerary itinerary = Itinerary.of(outlook.event());
        for (Team team : outlook.event().getTeams()) {
            Map<LocalDate, List<Stay>> days = new TreeMap<>();
            itinerary.of(team).forEach(stay -> days.computeIfAbsent(day(outlook, stay), any -> new ArrayList<>()).add(stay));
            days.forEach((day, stays) -> gates.add(new GateQuestions(outlook, team, day, stays, findings).gate()));
        }
        return new Gates(gates);
    }

    /** A stop after midnight belongs to the day on which its team set out. */
    static LocalDate day(Outlook outlook, Stay stay) {
        return Drives.dayOf(stay).map(TeamDay::getFrom).orElse(stay.window().start()).atZone(outlook.zone()).toLocalDate();
    }

    public List<DepartureGate> of(Team team) {
        return all.stream().filter(gate -> gate.team() == team).toList();
    }

    public boolean anyShut() {
        return all.stream().anyMatch(DepartureGate::isShut);
    }

    /** {@code Not cleared: team 1, 4 items; team 2, 3 items.} */
    public String summary() {
        Map<Integer, Integer> open = new LinkedHashMap<>();
        all.stream().filter(DepartureGate::isShut)
                .forEach(gate -> open.merge(gate.team().getNumber(), gate.open().size(), Integer::sum));
        if (open.isEmpty()) {
            return TEXTS.text(all.isEmpty() ? "gates.none" : "gates.open");
        }
        return TEXTS.text("gates.shut", "teams", open.entrySet().stream()
                .map(entry -> TEXTS.text("gates.team", "team", entry.getKey(), "open", entry.getValue()))
                .collect(Collectors.joining("; ")));
    }
}
