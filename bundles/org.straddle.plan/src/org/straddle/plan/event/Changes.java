package org.straddle.plan.event;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;

import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.plan.PlanChange;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.Sentence;

/**
 * Holds a proposal against the present plan: which turns it keeps, moves, drops and adds. Turns of the same team at the
 * same site on the same pass belong together first; then those on the same pass from a square that both work, because
 * to chasers that is the same promise; the rest is dropped or added.
 */
final class Changes {

    private static final Catalogue TEXTS = Catalogue.of(Changes.class);

    private static final Duration ROUNDING = Duration.ofSeconds(1);

    private record Old(Stop stop, Turn turn, Window window) {
    }

    private record Fresh(int stop, int turn) {
    }

    private final EventProblem event;
    private final List<PlannedStop> stops;
    private final List<Old> old;
    private final Map<Fresh, Old> before = new HashMap<>();
    private final Set<Fresh> sameStop = new HashSet<>();
    private final List<PlanChange> changes = new ArrayList<>();

    private Changes(EventProblem event, List<PlannedStop> stops) {
        this.event = event;
        this.stops = stops;
        old = changeable();
        match((is, was) -> is.team() == was.stop.getTeam() && is.site() == was.stop.getSite());
        sameStop.addAll(before.keySet());
        match((is, was) -> is.site().getSquares().stream().anyMatch(was.stop.getSite().getSquares()::contains));
    }

    /** The proposed stops with what they continue, and what changes, in order of time. */
    record Told(List<PlannedStop> stops, List<PlanChange> changes) {
    }

    static Told of(EventProblem event, List<PlannedStop> stops) {
        Changes changes = new Changes(event, stops);
        Restored restored = Restored.of(event, changes.continuing());
        changes.tell(restored.stops());
        changes.changes.addAll(BrokenPromises.tell(event, restored));
        changes.changes.sort(Comparator.comparing(PlanChange::at).thenComparing(PlanChange::sentence));
        return new Told(restored.stops(), changes.changes);
    }

    private List<Old> changeable() {
        Event live = event.outlook().event();
        Set<Turn> kept = stops.stream().flatMap(stop -> stop.turns().stream()).flatMap(turn -> turn.kept().stream())
                .collect(Collectors.toSet());
        List<Old> turns = new ArrayList<>();
        if (live.getPlan() != null) {
            for (Stop stop : live.getPlan().getStops()) {
                for (Turn turn : stop.getTurns()) {
                    if (!turn.isPinned() && !kept.contains(turn) && !KeptStop.isMissing(stop.getTeam()) && !KeptStop.isMissing(stop.getSite())) {
                        KeptStop.usable(turn).ifPresent(window -> turns.add(new Old(stop, turn, window)));
                    }
                }
            }
        }
        return turns;
    }

    private void match(BiPredicate<PlannedStop, Old> fits) {
        Set<Old> taken = new HashSet<>(before.values());
        for (int s = 0; s < stops.size(); s++) {
            PlannedStop stop = stops.get(s);
            for (int t = 0; t < stop.turns().size(); t++) {
                PlannedTurn turn = stop.turns().get(t);
                Fresh fresh = new Fresh(s, t);
                if (turn.kept().isPresent() || before.containsKey(fresh)) {
                    continue;
                }
                old.stream().filter(was -> !taken.contains(was) && was.turn.getBird() == turn.bird()
                        && was.window.overlaps(turn.window()) && fits.test(stop, was))
                        .max(Comparator.comparing(was -> was.window.intersection(turn.window()).orElseThrow().duration()))
                        .ifPresent(was -> {
                            before.put(fresh, was);
                            taken.add(was);
                        });
            }
        }
    }

    /** Each free stop continues the old one that it shares most turns with; no old one is continued twice. */
    private List<PlannedStop> continuing() {
        List<PlannedStop> continuing = new ArrayList<>();
        Set<Stop> taken = new HashSet<>();
        for (int s = 0; s < stops.size(); s++) {
            PlannedStop stop = stops.get(s);
            int number = s;
            Optional<Stop> continued = stop.kept().isPresent() ? stop.kept() : sameStop.stream()
                    .filter(fresh -> fresh.stop == number).sorted(Comparator.comparingInt(Fresh::turn))
                    .map(fresh -> before.get(fresh).stop)
                    .filter(was -> !taken.contains(was) && !KeptStop.isKept(was, event.replan().from()))
                    .collect(Collectors.groupingBy(was -> was, LinkedHashMap::new, Collectors.counting()))
                    .entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
            continued.ifPresent(taken::add);
            List<PlannedTurn> turns = new ArrayList<>();
            for (int t = 0; t < stop.turns().size(); t++) {
                Old was = before.get(new Fresh(s, t));
                boolean same = was != null && continued.isPresent() && continued.get() == was.stop
                        && sameStop.contains(new Fresh(s, t));
                turns.add(same ? stop.turns().get(t).continuing(was.turn) : stop.turns().get(t));
            }
            continuing.add(stop.continuing(stop.kept().isPresent() ? Optional.empty() : continued, turns));
        }
        return continuing;
    }

    private void tell(List<PlannedStop> continuing) {
        for (int s = 0; s < continuing.size(); s++) {
            PlannedStop stop = continuing.get(s);
            for (int t = 0; t < stop.turns().size(); t++) {
                PlannedTurn turn = stop.turns().get(t);
                Old was = before.get(new Fresh(s, t));
                if (turn.kept().isPresent()) {
                    tellCut(stop, turn);
                } else if (was == null && turn.restored().isPresent()) {
                    changes.add(new PlanChange(PlanChange.Kind.RESTORED, Optional.empty(), Optional.of(turn),
                            turn.window().start(), Sentence.begun(TEXTS.text("changes.restored",
                                    "team", Naming.number(stop.team()), "turn", words(stop, turn)))));
                } else if (was == null) {
                    changes.add(new PlanChange(PlanChange.Kind.ADDED, Optional.empty(), Optional.of(turn),
                            turn.window().start(), Sentence.begun(TEXTS.text("changes.added",
                                    "team", Naming.number(stop.team()), "turn", words(stop, turn)))));
                } else {
                    tell(stop, turn, was, sameStop.contains(new Fresh(s, t)));
                }
            }
        }
        old.stream().filter(was -> !before.containsValue(was)).forEach(was -> changes.add(new PlanChange(
                PlanChange.Kind.DROPPED, Optional.of(was.turn), Optional.empty(), was.window.start(),
                Sentence.begun(TEXTS.text("changes.dropped", "team", Naming.number(was.stop.getTeam()), "turn", words(was),
                        "published", isPublished(was), "reason", reason(was))))));
    }

    private void tellCut(PlannedStop stop, PlannedTurn turn) {
        KeptStop.usable(turn.kept().orElseThrow()).filter(planned -> planned.end().isAfter(turn.window().end()))
                .ifPresent(planned -> changes.add(new PlanChange(PlanChange.Kind.MOVED, turn.kept(), Optional.of(turn),
                        planned.start(), Sentence.begun(TEXTS.text("changes.cut",
                                "team", Naming.number(stop.team()), "turn", words(stop, turn))))));
    }

    private void tell(PlannedStop stop, PlannedTurn turn, Old was, boolean same) {
        boolean kept = same && near(was.window, turn.window());
        String team = Naming.number(stop.team());
        String works = words(stop, turn);
        boolean restored = turn.restored().isPresent();
        String sentence = kept ? TEXTS.text("changes.kept", "team", team, "turn", works, "published", restored || isPublished(was))
                : same ? TEXTS.text("changes.otherTime", "team", team, "turn", works, "restored", restored,
                        "before", event.during(was.window), "published", isPublished(was))
                : TEXTS.text("changes.otherTeam", "team", team, "turn", works, "restored", restored,
                        "before", Naming.number(was.stop.getTeam()), "site", SiteText.of(was.stop.getSite()),
                        "published", isPublished(was));
        changes.add(new PlanChange(kept ? PlanChange.Kind.KEPT : PlanChange.Kind.MOVED, Optional.of(was.turn),
                Optional.of(turn), was.window.start(), Sentence.begun(sentence)));
    }

    private static boolean near(Window one, Window other) {
        return Duration.between(one.start(), other.start()).abs().compareTo(ROUNDING) < 0
                && Duration.between(one.end(), other.end()).abs().compareTo(ROUNDING) < 0;
    }

    private String words(PlannedStop stop, PlannedTurn turn) {
        return TEXTS.text("changes.turn", "bird", Naming.name(turn.bird()), "site", SiteText.of(stop.site()),
                "during", event.during(turn.window()));
    }

    private String words(Old was) {
        return TEXTS.text("changes.turn", "bird", Naming.name(was.turn.getBird()), "site", SiteText.of(was.stop.getSite()),
                "during", event.during(was.window));
    }

    private String reason(Old was) {
        return event.whyForbidden(was.stop.getTeam(), was.stop.getSite(), was.turn.getBird(), was.window)
                .orElseGet(() -> EventProblem.whyNotWorked(event.held().canBeWorked(was.turn)));
    }

    private boolean isPublished(Old was) {
        return event.held().published(was.turn).isPresent();
    }
}
