package org.straddle.check.rules.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.straddle.check.Fact;
import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.AgreeDownlink;
import org.straddle.check.fix.Pins;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Access;
import org.straddle.model.Bird;
import org.straddle.outlook.itinerary.Overlaps;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.SharedTurns;
import org.straddle.outlook.itinerary.Work;

/** Two teams that share a footprint agreed on nearly the same downlink within a passband. */
public final class SameFrequency extends ScopedRule<Bird> {

    public SameFrequency() {
        super(Scope.BIRD, PlanRule.SAME_FREQUENCY.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        if (bird.getAccess() == Access.PASSBAND) {
            List<Work> agreed = in.itinerary().on(bird).stream().filter(work -> work.turn().getDownlinkMhz() > 0).toList();
            Overlaps.pairs(agreed, Work::window, (a, b) -> {
                SharedTurns.onSameFrequency(in.outlook(), a, b).ifPresent(shared -> {
                    Finding finding = Finding.of(this, Statement.of("sameFrequency.agreedMhzWhich", "team", a.team(),
                            "team2", b.team(), "mhz", Fact.mhz(a.turn().getDownlinkMhz()),
                            "mhz2", Fact.mhz(b.turn().getDownlinkMhz()), "bird", bird, "during", shared),
                            a.turn(), b.turn())
                            .restingOn(a.turn().getDownlinkMhz(), b.turn().getDownlinkMhz()).at(shared.start());
                    findings.accept(Pins.toChange(a, b).flatMap(work -> fix(work, agreed, in)).map(finding::fixedBy)
                            .orElse(finding));
                });
            });
        }
    }

    private static Optional<Fix> fix(Work work, List<Work> agreed, Inspection in) {
        return AgreeDownlink.clearOf(agreed.stream().filter(other -> SharedTurns.of(in.outlook(), work, other).isPresent())
                .map(other -> other.turn().getDownlinkMhz()).toList(), List.of(work));
    }
}
