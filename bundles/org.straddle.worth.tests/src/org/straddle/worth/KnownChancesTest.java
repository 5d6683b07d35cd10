package org.straddle.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.straddle.model.BirdReport;
import org.straddle.model.BirdState;
import org.straddle.model.Chaser;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.HorizonPoint;
import org.straddle.model.Region;
import org.straddle.model.ReportKind;
import org.straddle.model.Snapshot;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;

/** What turns are worth is handed on from one copy of an event to the next, and is what a fresh look finds. */
class KnownChancesTest {

    private final PlanOnPaper paper = new PlanOnPaper();
    private final Event event = paper.event;

    KnownChancesTest() {
        Team team = paper.team();
        paper.stop(team, paper.site("A", 30, "JJ50"), 400, 600, 430, 450);
        paper.stop(team, paper.site("B", 60, "JJ50", "JJ60"), 700, 900, 730);
        Region region = Fresh.region();
        region.getSquares().addAll(List.of("JJ40", "JJ41"));
        region.setSharePercent(60);
        event.getRegions().add(region);
        Region far = Fresh.region();
        far.getSquares().add("IJ00");
        far.setSharePercent(30);
        event.getRegions().add(far);
        demand(event, "JJ50", 40);
        demand(event, "JJ60", 70);
        demand(event, "JJ00", 10);
    }

    private static void demand(Event event, String square, double percent) {
        Demand demand = StraddleFactory.eINSTANCE.createDemand();
        demand.setSquare(square);
        demand.setSharePercent(percent);
        event.getDemands().add(demand);
    }

    @TestFactory
    List<DynamicTest> isWhatAFreshLookFindsAfterAnEdit() {
        Map<String, Consumer<Event>> edits = new LinkedHashMap<>();
        edits.put("a demand", any -> any.getDemands().get(0).setSharePercent(90));
        edits.put("a demand more", any -> demand(any, "JJ50", 5));
        edits.put("no demands", any -> any.getDemands().clear());
        edits.put("a region's share", any -> any.getRegions().get(0).setSharePercent(10));
        edits.put("a region's place", any -> any.getRegions().get(1).getSquares().set(0, "EJ00"));
        edits.put("a list of chasers", any -> chaser(any, "JJ40aa"));
        edits.put("a mask", KnownChancesTest::mask);
        edits.put("a claim", any -> any.getSites().get(0).getSquares().add("JJ40"));
        edits.put("papers", any -> any.getSites().get(0).getReviews().clear());
        edits.put("a bird's state", any -> any.getBirds().get(0).setState(BirdState.INTERMITTENT));
        edits.put("a report", KnownChancesTest::report);
        edits.put("elements", any -> any.getBirds().get(0).getElementSets().get(0).setMeanAnomalyDeg(1));
        edits.put("a policy", any -> any.getPolicies().setChasers(12));
        edits.put("least elevation of chasers", any -> any.getPolicies().setReachElevationDeg(60));
        edits.put("a turn", any -> turn(any).setEnd(turn(any).getEnd().minusSeconds(240)));
        edits.put("a site of a stop", any -> any.getPlan().getStops().get(0).setSite(any.getSites().get(1)));
        return edits.entrySet().stream().map(edit -> DynamicTest.dynamicTest(edit.getKey(), () ->
                new KnownChancesTest().compare(edit.getValue()))).toList();
    }

    private void compare(Consumer<Event> edit) {
        Outlook outlook = Outlook.of(Snapshot.of(event), null);
        EventWorth worth = EventWorth.of(outlook);
        List<TurnChance> before = chances(worth);
        edit.accept(event);
        Outlook later = outlook.with(Snapshot.of(event));
        EventWorth handedOn = EventWorth.after(worth.known(), later);
        assertEquals(chances(EventWorth.of(Outlook.of(Snapshot.of(event), null))), chances(handedOn));
        assertNotEquals(before, chances(handedOn));
        // Another edit, after which what was taken over twice must still hold.
        event.getPlan().getStops().get(1).getTurns().get(0).setNote("tall mast");
        assertEquals(chances(EventWorth.of(Outlook.of(Snapshot.of(event), null))),
                chances(EventWorth.after(handedOn.known(), later.with(Snapshot.of(event)))));
    }

    @Test
    void isTakenOverWhereNothingChanged() {
        Outlook outlook = Outlook.of(Snapshot.of(event), null);
        EventWorth worth = EventWorth.of(outlook);
        List<TurnChance> before = chances(worth);
        mask(event);
        List<TurnChance> after = chances(EventWorth.after(worth.known(), outlook.with(Snapshot.of(event))));
        assertNotEquals(before.get(0), after.get(0));
        assertSame(before.get(2), after.get(2));
    }

    @Test
    void isNotTakenOverWhereThingsCannotBeToldApart() {
        Outlook outlook = Outlook.of(Snapshot.of(event), null);
        EventWorth worth = EventWorth.of(outlook);
        List<TurnChance> before = chances(worth);
        event.getSites().get(1).setId(event.getSites().get(0).getId());
        Outlook later = outlook.with(Snapshot.of(event));
        List<TurnChance> after = chances(EventWorth.after(worth.known(), later));
        assertEquals(before, after);
        assertNotSame(before.get(2), after.get(2));
    }

    private static List<TurnChance> chances(EventWorth worth) {
        List<TurnChance> chances = new ArrayList<>();
        Itinerary.of(worth.outlook().event()).turns()
                .forEach(work -> chances.add(worth.chance(work.site(), work.bird(), work.window())));
        return chances;
    }

    private static void chaser(Event event, String locator) {
        Chaser chaser = StraddleFactory.eINSTANCE.createChaser();
        chaser.setLocator(locator);
        chaser.getSquares().add("JJ50");
        event.getChaserList().add(chaser);
    }

    private static void mask(Event event) {
        HorizonPoint point = StraddleFactory.eINSTANCE.createHorizonPoint();
        point.setElevationDeg(89.9);
        event.getSites().get(0).getHorizon().add(point);
    }

    private static void report(Event event) {
        BirdReport report = StraddleFactory.eINSTANCE.createBirdReport();
        report.setAt(PlanOnPaper.at(100));
        report.setKind(ReportKind.NOT_HEARD);
        event.getBirds().get(0).getReports().add(report);
    }

    private static Turn turn(Event event) {
        return event.getPlan().getStops().get(0).getTurns().get(0);
    }
}
