package org.straddle.exchange.start;

import java.util.ArrayList;
import java.util.List;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/** What an event lacks before anybody can plan it, in the order in which it is best entered. */
public final class StillMissing {

    private static final Catalogue TEXTS = Catalogue.of(StillMissing.class);

    private StillMissing() {
    }

    /** One sentence for each gap: what is missing, and where it is entered; empty when a plan can be searched for. */
    public static List<String> of(Event event) {
        List<String> missing = new ArrayList<>();
        add(missing, event.getFirstDay() == null || event.getLastDay() == null, "stillMissing.days");
        add(missing, event.getZone() == null, "stillMissing.zone");
        add(missing, event.getBases().isEmpty(), "stillMissing.bases");
        add(missing, event.getOperators().isEmpty(), "stillMissing.operators");
        add(missing, event.getTeams().isEmpty(), "stillMissing.teams");
        event.getTeams().forEach(team -> {
            String name = Naming.name(team);
            if (team.getOperators().isEmpty()) {
                missing.add(TEXTS.text("stillMissing.crew", "team", name));
            }
            if (team.getDays().isEmpty()) {
                missing.add(TEXTS.text("stillMissing.teamDays", "team", name));
            } else if (team.getDays().stream().anyMatch(day -> day.getStart() == null || day.getEnd() == null)) {
                missing.add(TEXTS.text("stillMissing.teamBase", "team", name));
            }
        });
        add(missing, event.getSites().isEmpty(), "stillMissing.sites");
        add(missing, event.getBirds().stream().allMatch(bird -> bird.getElementSets().isEmpty()), "stillMissing.elements");
        List<String> unheard = event.getBirds().stream().filter(bird -> !isHeard(bird)).map(Naming::name).toList();
        if (!unheard.isEmpty()) {
            missing.add(TEXTS.text("stillMissing.downlinks", "birds", unheard));
        }
        add(missing, event.getDemands().isEmpty() && event.getChaserList().isEmpty(), "stillMissing.demand");
        return List.copyOf(missing);
    }

    private static boolean isHeard(Bird bird) {
        return bird.getDownlink() != null && bird.getDownlink().getLowMhz() > 0;
    }

    private static void add(List<String> missing, boolean lacks, String key) {
        if (lacks) {
            missing.add(TEXTS.text(key));
        }
    }
}
