package org.straddle.safety;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.straddle.model.Event;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.words.Catalogue;

/**
 * May a team leave on a day? The gate is shut while a site that its plan names for the day has no review that holds,
 * or while one person would work alone against the event's policy.
 *
 * @param reasons why it is shut, one plain sentence each
 * @param conditions what the reviews ask for where it is open
 */
public record DepartureGate(List<String> reasons, List<String> conditions) {

    private static final Catalogue TEXTS = Catalogue.of(DepartureGate.class);

    public DepartureGate {
        reasons = List.copyOf(reasons);
        conditions = List.copyOf(conditions);
    }

    /** @param day local day in the zone; a stop belongs to the day on which it begins */
    public static DepartureGate of(Event event, Team team, LocalDate day, ZoneId zone) {
        Policies policies = event.getPolicies() != null ? event.getPolicies()
                : StraddleFactory.eINSTANCE.createPolicies();
        List<String> reasons = new ArrayList<>();
        List<String> conditions = new ArrayList<>();
        List<Site> sites = sites(event, team, day, zone);
        if (!sites.isEmpty() && team.getOperators().size() < 2 && !policies.isLoneOperatorAllowed()) {
            reasons.add(TEXTS.text("departureGate.teamHasIsempty", "isEmpty", team.getOperators().isEmpty()));
        }
        for (Site site : sites) {
            ReviewState state = SafetyNotes.of(site, day, policies).state();
            String name = Words.orElse(site.getName(), TEXTS.text("departureGate.unnamedSite")) + ": ";
            if (!state.holds()) {
                reasons.add(name + state.sentence());
            } else if (state instanceof ReviewState.Valid valid && !valid.conditions().isEmpty()) {
                conditions.add(name + valid.conditions());
            }
        }
        return new DepartureGate(reasons, conditions);
    }

    private static List<Site> sites(Event event, Team team, LocalDate day, ZoneId zone) {
        if (event.getPlan() == null) {
            return List.of();
        }
        return event.getPlan().getStops().stream()
                .filter(stop -> stop.getTeam() == team && stop.getArrival() != null
                        && stop.getArrival().atZone(zone).toLocalDate().equals(day))
                .map(Stop::getSite).filter(Objects::nonNull).distinct().toList();
    }

    /** May the team leave, as far as the plan and the reviews say? */
    public boolean open() {
        return reasons.isEmpty();
    }
}
