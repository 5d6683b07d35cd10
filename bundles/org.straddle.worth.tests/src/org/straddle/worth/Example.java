package org.straddle.worth;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

import org.straddle.grid.Square;
import org.straddle.model.Event;
import org.straddle.model.StraddleFactory;
import org.straddle.model.WorkMode;
import org.straddle.outlook.Demands;

/** The worked example of the guide page "How a plan is valued", with the usual figures. */
final class Example {

    static final WorthFigures USUAL = WorthFigures.of(null);
    static final Square NEAR = Square.parse("HP83");
    static final Square FAR = Square.parse("HP93");

    /** 60 chasers in the one region, 40 in the other; 90 % need the one square, half of them the other. */
    static final List<ChaserGroup> GROUPS = List.of(group("Heather", 60), group("Rim", 40));

    private Example() {
    }

    private static ChaserGroup group(String name, double chasers) {
        Event event = StraddleFactory.eINSTANCE.createEvent();
        demand(event, NEAR, 90);
        demand(event, FAR, 50);
        return new ChaserGroup(Optional.empty(), name, Optional.empty(), new Needs.ByDemand(chasers, Demands.of(event)));
    }

    private static void demand(Event event, Square square, double percent) {
        var demand = StraddleFactory.eINSTANCE.createDemand();
        demand.setSquare(square.name());
        demand.setSharePercent(percent);
        event.getDemands().add(demand);
    }

    /** FM, from the line between both squares: 8 min that count for the one region, 4 min for half of the other. */
    static TurnChance line() {
        return turn(new TreeSet<>(List.of(NEAR, FAR)), new GroupMinutes(8, 1, 8), new GroupMinutes(2, 0.5, 4),
                WorkMode.FM, USUAL.workedLately(), 1);
    }

    /** Linear, from the one square: 6 min that count for the other region only, at a site without a review. */
    static TurnChance inside() {
        return turn(new TreeSet<>(List.of(NEAR)), new GroupMinutes(0, 0, 0), new GroupMinutes(6, 1, 6), WorkMode.LINEAR,
                USUAL.unknown(), USUAL.unready());
    }

    static TurnChance turn(SortedSet<Square> squares, GroupMinutes first, GroupMinutes second, WorkMode mode, double bird,
            double usable) {
        return TurnChance.of(squares, GROUPS, List.of(first, second), 12, USUAL.contactsPerMinute(mode), bird,
                USUAL.happens(), usable, USUAL);
    }

    static PlanWorth plan(TurnChance... turns) {
        return new PlanWorth(GROUPS, List.of(NEAR, FAR), List.of(turns));
    }
}
