package org.straddle.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.straddle.grid.Square;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.StraddleFactory;
import org.straddle.model.WorkMode;
import org.straddle.outlook.Demands;
import org.straddle.worth.ChaserGroup;
import org.straddle.worth.GroupMinutes;
import org.straddle.worth.Needs;
import org.straddle.worth.PlanWorth;
import org.straddle.worth.TurnChance;
import org.straddle.worth.WorthFigures;

/** The page "How a plan is valued" tells the figures that are in force, and its example comes out as it says. */
class WorthPageTest {

    private static final WorthFigures USUAL = WorthFigures.of(null);
    private static final Square NEAR = Square.parse("HP83");
    private static final Square FAR = Square.parse("HP93");

    private static String page() {
        return Guide.page("worth").orElseThrow().sections().stream().map(GuidePage.Section::text)
                .collect(Collectors.joining("\n"));
    }

    private static ChaserGroup group(String name, double chasers) {
        Event event = StraddleFactory.eINSTANCE.createEvent();
        demand(event, "HP83", 90);
        demand(event, "HP93", 50);
        return new ChaserGroup(Optional.empty(), name, Optional.empty(), new Needs.ByDemand(chasers, Demands.of(event)));
    }

    private static void demand(Event event, String square, double percent) {
        Demand demand = StraddleFactory.eINSTANCE.createDemand();
        demand.setSquare(square);
        demand.setSharePercent(percent);
        event.getDemands().add(demand);
    }

    private static void says(String what) {
        assertTrue(page().contains(what), what);
    }

    @Test
    void theFiguresAreThoseInForce() {
        says(String.format(Locale.ROOT, "at %.0f° or higher", USUAL.quality().fullDeg()));
        says(String.format(Locale.ROOT, "it counts %.0f %%", 100 * USUAL.quality().low()));
        says(String.format(Locale.ROOT, "%.1f contacts a minute by FM voice, %.1f through a linear bird and %.1f by data",
                USUAL.fmPerMinute(), USUAL.linearPerMinute(), USUAL.dataPerMinute()));
        says(String.format(Locale.ROOT, "%.0f %% turn up and call", 100 * USUAL.callers()));
        says(String.format(Locale.ROOT, "%.0f %% if somebody made a contact in the last %d days, %.0f %% if it is written down"
                + " as working, %.0f %% if nobody knows, %.0f %% if it works now and then, %.0f %% if it was only heard, and"
                + " %.0f %% if it was not heard", 100 * USUAL.workedLately(), USUAL.lately().toDays(), 100 * USUAL.working(),
                100 * USUAL.unknown(), 100 * USUAL.intermittent(), 100 * USUAL.heardOnly(), 100 * USUAL.notHeard()));
        says(String.format(Locale.ROOT, "there in time with %.0f %%", 100 * USUAL.happens()));
        says(String.format(Locale.ROOT, "and with %.0f %% if a visit", 100 * USUAL.unready()));
        assertEquals(100, USUAL.chasers());
    }

    @Test
    void theExampleComesOutAsItSays() {
        List<ChaserGroup> groups = List.of(group("Heather", 60), group("Rim", 40));
        TurnChance line = TurnChance.of(List.of(NEAR, FAR), groups, List.of(new GroupMinutes(8, 1, 8),
                new GroupMinutes(2, 0.5, 4)), 12, USUAL.contactsPerMinute(WorkMode.FM), USUAL.workedLately(), USUAL.happens(),
                1, USUAL);
        TurnChance inside = TurnChance.of(List.of(NEAR), groups, List.of(new GroupMinutes(0, 0, 0),
                new GroupMinutes(6, 1, 6)), 12, USUAL.contactsPerMinute(WorkMode.LINEAR), USUAL.unknown(), USUAL.happens(),
                USUAL.unready(), USUAL);
        PlanWorth plan = new PlanWorth(groups, List.of(NEAR, FAR), List.of(line, inside));
        says(String.format(Locale.ROOT, "= %.1f. Minutes, averaged over callers", line.callers()));
        says(String.format(Locale.ROOT, "= %.0f. Contacts that fit: 1.2 · 7 = %.1f", line.minutes(), line.contacts()));
        says(String.format(Locale.ROOT, "happens with 0.95 · 0.9 = %.1f %%", 100 * line.chance()));
        says(String.format(Locale.ROOT, "= %.2f %% in Heather and half of that, %.3f %%, in Rim",
                100 * line.groups().get(0).probability(), 100 * line.groups().get(1).probability()));
        says(String.format(Locale.ROOT, "= %.1f; contacts: 0.7 · 6 = %.1f", inside.callers(), inside.contacts()));
        says(String.format(Locale.ROOT, "= %.2f %%.\nTogether", 100 * inside.groups().get(1).probability()));
        says(String.format(Locale.ROOT, "In all %.2f of %.0f contacts. Without turn B it would be %.2f less.", plan.served(),
                plan.wanted(), plan.gain(inside)));
    }
}
