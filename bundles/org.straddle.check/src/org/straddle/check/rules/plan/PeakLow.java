package org.straddle.check.rules.plan;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.RemoveTurns;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.TurnPass;
import org.straddle.outlook.itinerary.Work;

/** The policy names the least peak of a pass. */
public final class PeakLow extends ScopedRule<Stay> {

    public PeakLow() {
        super(Scope.STAY, CheckRule.PEAK_LOW.id(), Severity.ADVICE);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        double leastDeg = in.policies().minimumPeakElevationDeg();
        for (Work work : stay.turns()) {
            TurnPass.best(in.outlook(), work).filter(pass -> pass.peakElevationDeg() < leastDeg).ifPresent(pass ->
                    findings.accept(Finding.of(this, Statement.of("peakLow.risesOverEvent", "bird", work.bird(),
                            "degrees", Math.floor(pass.peakElevationDeg() * 10) / 10, "site", work.site(),
                            "during", work.window(), "degrees2", leastDeg),
                            work.turn()).restingOn(work.window()).at(work.window().start()).fixedBy(RemoveTurns.of(work))));
        }
    }
}
