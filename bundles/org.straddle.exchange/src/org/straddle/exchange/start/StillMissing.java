package org.straddle.exchange.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.itinerary.Crew;
import org.straddle.words.Catalogue;

/** What an event lacks before anybody can plan it, in the order in which it is best entered. */
public final class StillMissing {

    private static final Catalogue TEXTS = Catalogue.of(StillMissing.class);

    private StillMissing() {
    }

    /** One sentence for each gap: what is missing, and where it is entered; empty when a plan can be searched for. */
    public static List<String> of(Event event) {
        List<String> missing = new ArrayList<>();
        if (event.getFirstDay() == null || event.getLastDay() == null) {
            missing.add(TEXTS.text("stillMissing.days"));
        }
        if (event.getZone() == null) {
            missing.add(TEXTS.text("stillMissing.zone"));
        }
        if (event.getBases().isEmpty()) {
            missing.add(TEXTS.text("stillMissing.bases"));
        }
        if (event.getOperators().isEmpty()) {
            missing.add(TEXTS.text("stillMissing.operators"));
        }
        if (event.getTeams().isEmpty()) {
            missing.add(TEXTS.text("stillMissing.teams"));
        }
        PolicyFigures policies = PolicyFigures.of(event.getPolicies());
        event.getTeams().forEach(team -> {
            String name = Naming.name(team);
            if (team.getOperators().isEmpty()) {
                missing.add(TEXTS.text("stillMissing.crew", "team", name));
            } else if (Crew.isAlone(team, policies)) {
                missing.add(TEXTS.text("stillMissing.alone", "team", name));
            }
            if (team.getDays().isEmpty()) {
                missing.add(TEXTS.text("stillMissing.teamDays", "team", name));
            } else if (team.getDays().stream().anyMatch(day -> day.getStart() == null || day.getEnd() == null)) {
                missing.add(TEXTS.text("stillMissing.teamBase", "team", name));
            }
        });
        if (event.getSites().isEmpty()) {
            missing.add(TEXTS.text("stillMissing.sites"));
        }
        if (event.getBirds().stream().allMatch(bird -> bird.getElementSets().isEmpty())) {
            missing.add(TEXTS.text("stillMissing.elements"));
        }
        List<String> unheard = event.getBirds().stream().filter(bird -> !isHeard(bird)).map(Naming::name).toList();
        if (!unheard.isEmpty()) {
            missing.add(TEXTS.text("stillMissing.downlinks", "birds", unheard));
        }
        if (event.getDemands().isEmpty() && event.getChaserList().isEmpty()) {
            missing.add(TEXTS.text("stillMissing.demand"));
        }
        return List.copyOf(missing);
    }

    /** The same for sites whose squares the event would not believe; nobody asks a plan for those. */
    static Optional<String> of(ReadLines<Site> sites) {
        List<String> open = sites.lines().stream().filter(ReadLines.Line::open)
                .flatMap(line -> line.thing().stream()).map(Naming::name).toList();
        return open.isEmpty() ? Optional.empty() : Optional.of(TEXTS.text("stillMissing.notArgued", "sites", open));
    }

    private static boolean isHeard(Bird bird) {
        return bird.getDownlink() != null && bird.getDownlink().getLowMhz() > 0;
    }
}
