package org.straddle.check.rules.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.AgreeDownlink;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Access;
import org.straddle.model.Bird;
import org.straddle.outlook.itinerary.Overlaps;
import org.straddle.outlook.itinerary.SharedTurns;
import org.straddle.outlook.itinerary.Work;

/** Two teams that share a footprint within a passband have not agreed who answers where: their parts may overlap. */
public final class DownlinkNotAgreed extends ScopedRule<Bird> {

    public DownlinkNotAgreed() {
        super(Scope.BIRD, CheckRule.DOWNLINK_NOT_AGREED.id(), Severity.WARNING);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        if (bird.getAccess() == Access.PASSBAND) {
            List<Work> works = in.itinerary().on(bird);
            Overlaps.pairs(works, Work::window, (a, b) -> {
                List<Work> open = Stream.of(a, b).filter(work -> !isAgreed(work)).toList();
                if (!open.isEmpty()) {
                    SharedTurns.of(in.outlook(), a, b).ifPresent(shared -> {
                        Finding finding = Finding.of(this, Statement.of("downlinkNotAgreed.sameTimeIts",
                                "team", a.team(), "team2", b.team(), "bird", bird, "during", shared,
                                "team3", open.size() > 1 ? Statement.of("downlinkNotAgreed.neitherHasDownlink")
                                : Statement.of("downlinkNotAgreed.hasDownlink",
                                "team", open.get(0).team())), a.turn(), b.turn())
                                .restingOn(a.turn().getDownlinkMhz(), b.turn().getDownlinkMhz()).at(shared.start());
                        findings.accept(fix(open, works, in).map(finding::fixedBy).orElse(finding));
                    });
                }
            });
        }
    }

    private static Optional<Fix> fix(List<Work> open, List<Work> works, Inspection in) {
        return AgreeDownlink.clearOf(works.stream().filter(other -> isAgreed(other) && open.stream()
                .anyMatch(work -> SharedTurns.of(in.outlook(), work, other).isPresent()))
                .map(other -> other.turn().getDownlinkMhz()).toList(), open);
    }

    private static boolean isAgreed(Work work) {
        return work.turn().getDownlinkMhz() > 0;
    }
}
