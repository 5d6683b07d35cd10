package org.straddle.check.rules.plan;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ShiftStop;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.outlook.keeping.PlanKeeping;
import org.straddle.sky.Window;

/** A published turn that the team may well miss, because the drives before it may take longer than there is time. */
public final class TurnMaySlip extends ScopedRule<Team> {

    /** How much earlier an arrival is tried, minutes. */
    private static final List<Integer> EARLIER = List.of(5, 10, 15, 20, 30, 45, 60);

    public TurnMaySlip() {
        super(Scope.TEAM, CareRule.TURN_MAY_SLIP.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        Map<Turn, Double> chances = in.keeping(team).chances();
        for (Stay stay : in.itinerary().of(team)) {
            List<Work> doubtful = stay.turns().stream().filter(work -> isDoubtful(work, stay, chances, in)).toList();
            doubtful.stream().min(Comparator.comparing(work -> work.window().start())).ifPresent(first -> {
                Finding finding = Finding.of(this, Statement.of("turnMaySlip.chance", "team", team, "bird", first.bird(),
                        "site", stay.site(), "during", first.window(),
                        "chance", PlanKeeping.percent(chances.get(first.turn())),
                        "least", Math.round(100 * in.hold().leastKeeping())), first.turn(), stay.stop())
                        .at(first.window().start());
                findings.accept(earlier(stay, in).map(finding::fixedBy).orElse(finding));
            });
        }
    }

    /** A turn that begins before the station is up is another rule's. */
    private static boolean isDoubtful(Work work, Stay stay, Map<Turn, Double> chances, Inspection in) {
        Double chance = chances.get(work.turn());
        return chance != null && chance < in.hold().leastKeeping()
                && !work.window().start().isBefore(StationUp.of(in.policies()).ready(stay.window()));
    }

    /** The least change of the arrival that settles it. */
    private static Optional<Fix> earlier(Stay stay, Inspection in) {
        for (int minutes : EARLIER) {
            Duration by = Duration.ofMinutes(minutes);
            Optional<Fix> fix = ShiftStop.arriveEarlier(stay, by, in);
            if (fix.isEmpty() || settles(stay, by, in)) {
                return fix;
            }
        }
        return Optional.empty();
    }

    private static boolean settles(Stay stay, Duration by, Inspection in) {
        Stay moved = new Stay(stay.stop(), stay.team(), stay.site(),
                new Window(stay.window().start().minus(by), stay.window().end()), stay.turns());
        Map<Turn, Double> chances = in.chances(stay.team(), in.itinerary().of(stay.team()).stream()
                .map(other -> other == stay ? moved : other).toList());
        return moved.turns().stream().noneMatch(work -> isDoubtful(work, moved, chances, in));
    }
}
