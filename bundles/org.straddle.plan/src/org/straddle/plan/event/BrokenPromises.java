package org.straddle.plan.event;

import java.util.List;
import java.util.Optional;

import org.straddle.check.Promise;
import org.straddle.model.naming.Naming;
import org.straddle.plan.PlanChange;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;
import org.straddle.words.Catalogue;
import org.straddle.words.Sentence;

/** Says of each published turn that neither the present plan nor a proposal works as published, what becomes of it. */
final class BrokenPromises {

    private static final Catalogue TEXTS = Catalogue.of(BrokenPromises.class);

    private final EventProblem event;
    private final List<PlannedStop> stops;

    private BrokenPromises(EventProblem event, List<PlannedStop> stops) {
        this.event = event;
        this.stops = stops;
    }

    static List<PlanChange> tell(EventProblem event, Restored restored) {
        BrokenPromises broken = new BrokenPromises(event, restored.stops());
        return restored.broken().stream().map(broken::tell).toList();
    }

    private PlanChange tell(HeldTurn held) {
        Promise promise = held.published().orElseThrow();
        for (PlannedStop stop : stops) {
            for (PlannedTurn turn : stop.turns()) {
                if (isInsteadOf(promise, stop, turn)) {
                    return new PlanChange(PlanChange.Kind.MOVED, Optional.empty(), Optional.of(turn), promise.start(),
                            TEXTS.text("broken.moved", "revision", event.held().revision(), "promise", promise.line(),
                                    "team", Sentence.begun(Naming.number(stop.team())), "site", SiteText.of(stop.site()),
                                    "during", event.during(turn.window())));
                }
            }
        }
        return new PlanChange(PlanChange.Kind.DROPPED, Optional.empty(), Optional.empty(), promise.start(),
                TEXTS.text("broken.dropped", "revision", event.held().revision(), "promise", promise.line(),
                        "reason", reason(held)));
    }

    /** To chasers a bird from all squares that they were told of, if only for a part of the time. */
    private boolean isInsteadOf(Promise promise, PlannedStop stop, PlannedTurn turn) {
        return turn.restored().isEmpty() && promise.birdId().equals(turn.bird().getId())
                && turn.window().overlaps(promise.longest()) && Promised.isIn(promise, stop.site(), event.outlook());
    }

    private String reason(HeldTurn held) {
        Promised promised = Promised.of(held.published().orElseThrow(), event.outlook());
        if (promised.team().isEmpty() || promised.bird().isEmpty()) {
            return TEXTS.text("broken.gone", "what", promised.team().isEmpty() ? "team" : "bird");
        }
        if (promised.sites().isEmpty()) {
            return TEXTS.text("broken.noSite", "squares", promised.promise().squares().size());
        }
        List<Optional<String>> bans = promised.sites().stream().map(site -> event.whyForbidden(promised.team().get(), site,
                promised.bird().get(), promised.promise().longest())).toList();
        return bans.stream().allMatch(Optional::isPresent) ? bans.get(0).get()
                : EventProblem.whyNotWorked(!held.ways().isEmpty());
    }
}
