package org.straddle.check.rules.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.straddle.check.Fact;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.RemoveStop;
import org.straddle.check.fix.RemoveTurns;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Ban;
import org.straddle.model.Stop;
import org.straddle.model.Written;
import org.straddle.outlook.Bans;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;

/** The coordinator forbade it, and the plan does it. */
public final class BanBroken extends ScopedRule<Stop> {

    public BanBroken() {
        super(Scope.STOP, PlanRule.BAN_BROKEN.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stop stop, Inspection in, Consumer<Finding> findings) {
        Bans bans = in.bans();
        Optional<Stay> stay = in.itinerary().of(stop);
        if (bans.all().isEmpty() || stay.isEmpty()) {
            return;
        }
        Stay broken = stay.get();
        List<Ban> onStop = bans.onStop(broken.team(), broken.site(), broken.window());
        onStop.forEach(ban -> findings.accept(Finding.of(this, forbidden(Fact.of(broken), ban), stop, ban).restingOn(terms(ban)).at(broken.window().start())
                .fixedBy(new RemoveStop(Statement.of("banBroken.removeStop", "team", broken.team(),
                        "site", broken.site()), stop.getId()))));
        for (Work work : broken.turns()) {
            bans.onTurn(work.team(), work.site(), work.bird(), work.window()).stream()
                    .filter(ban -> !onStop.contains(ban)).forEach(ban -> findings.accept(Finding.of(this,
                            forbidden(Fact.of(work), ban), work.turn(), ban)
                            .restingOn(terms(ban))
                            .at(work.window().start()).fixedBy(RemoveTurns.of(work))));
        }
    }

    private static List<Object> terms(Ban ban) {
        return Arrays.asList(ban.getSquare(), ban.getFrom(), ban.getUntil());
    }

    private static Statement forbidden(Fact what, Ban ban) {
        return Written.isBlank(ban.getReason()) ? Statement.of("banBroken.banned", "what", what)
                : Statement.of("banBroken.because", "what", what, "reason", ban.getReason().strip().replaceFirst("[.]$", ""));
    }
}
