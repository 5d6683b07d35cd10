package org.straddle.check.rules.plan;

import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.TrimTurn;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Overlaps;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.TurnGap;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;

/** One team cannot work two birds at once, and needs the gap of the policy to turn to the next. */
public final class TurnsTooClose extends ScopedRule<Team> {

    private static final Duration LONG = Duration.ofDays(1);

    public TurnsTooClose() {
        super(Scope.TEAM, PlanRule.TURNS_TOO_CLOSE.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        TurnGap needed = TurnGap.of(in.policies());
        Duration gap = needed.least();
        List<Work> turns = in.itinerary().turns().stream().filter(work -> work.team() == team).toList();
        Overlaps.pairs(turns, work -> needed.claimed(work.window()), (a, b) -> {
            Duration between = a.window().gapTo(b.window());
            boolean overlap = a.window().overlaps(b.window());
            Window rest = new Window(a.window().end().plus(gap), a.window().end().plus(gap).plus(LONG));
            findings.accept(Finding.of(this, overlap
                    ? Statement.of("turnsTooClose.wouldWorkSame", "team", team, "bird", a.bird(), "bird2", b.bird(),
                    "during", a.window().intersection(b.window()).orElseThrow())
                    : Statement.of("turnsTooClose.hasBetweenNeeds", "team", team, "between", between, "bird", a.bird(),
                            "bird2", b.bird(), "start", b.window().start(),
                            "gap", gap), a.turn(), b.turn()).at(b.window().start())
                    .fixedBy(TrimTurn.to(rest, b, Statement.of("turnsTooClose.beginAfterGap"), in.policies())));
        });
    }
}
