package org.straddle.daysheet.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.run.Checks;
import org.straddle.daysheet.RandomRove;
import org.straddle.daysheet.Rove;
import org.straddle.daysheet.edit.AddStop;
import org.straddle.daysheet.edit.RefusedEdit;
import org.straddle.daysheet.fits.StopOpenings.StopOpening;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.sky.Window;

/** New stops that are offered, held against the rules on plans made by chance. */
class StopOpeningsTest {

    /** Sites that lie in the squares they claim, and somebody who needs them. */
    private static Event rove(long seed) {
        Event event = RandomRove.of(seed);
        for (Site site : event.getSites()) {
            Square square = Square.of(new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg()));
            site.getSquares().clear();
            site.getSquares().add(square.name());
            if (event.getDemands().stream().noneMatch(demand -> demand.getSquare().equals(square.name()))) {
                Demand demand = StraddleFactory.eINSTANCE.createDemand();
                demand.setSquare(square.name());
                demand.setSharePercent(20 + 10 * event.getDemands().size());
                event.getDemands().add(demand);
            }
        }
        return event;
    }

    private static Set<String> blockers(Event event) {
        return Checks.standard().run(Outlook.of(event, null), null).stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER).map(Finding::key)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatIsOfferedBringsNoBlocker(long seed) throws RefusedEdit {
        Offered offered = offeredWithoutBlocker(rove(seed));
        assertTrue(offered.stops > 10 && offered.turns > 10, offered.toString());
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 3, 10})
    void crewsAreOfferedWhatTheyMayDo(long seed) throws RefusedEdit {
        Event event = RandomRove.withCrews(seed);
        Offered offered = offeredWithoutBlocker(event);
        assertTrue(offered.stops > 0 && offered.turns > 0, offered.toString());
        Outlook outlook = Outlook.of(event, null);
        Team alone = event.getTeams().get(0);
        FreeTime.of(outlook, alone).forEach(free -> StopOpenings.of(outlook, free).forEach(opening -> assertFalse(opening.fits())));
    }

    private record Offered(int stops, int turns) {
    }

    private static Offered offeredWithoutBlocker(Event event) throws RefusedEdit {
        Outlook outlook = Outlook.of(event, null);
        Set<String> before = blockers(event);
        int offered = 0;
        int turns = 0;
        for (Team team : event.getTeams()) {
            for (FreeTime free : FreeTime.of(outlook, team)) {
                for (StopOpening opening : StopOpenings.of(outlook, free)) {
                    if (opening.fits()) {
                        List<AddStop.Work> works = StopOpenings.turns(outlook, free, opening).stream().map(turn ->
                                new AddStop.Work(turn.pass().bird().getId(), turn.window())).toList();
                        assertEquals(opening.passes(), works.size(), "as many as were offered");
                        assertTrue(StopOpenings.turns(outlook, free, opening).stream().allMatch(turn -> turn.pass().pass()
                                .peakElevationDeg() >= outlook.policies().minimumPeakElevationDeg()), "none too low for the event");
                        Event edited = Snapshot.of(event);
                        EditingDomain domain = RandomRove.domain();
                        domain.getCommandStack().execute(AddStop.of(team.getId(), opening.site().getId(),
                                opening.window().orElseThrow(), works).command(domain, edited));
                        Set<String> fresh = blockers(edited);
                        fresh.removeAll(before);
                        assertEquals(Set.of(), fresh, opening.toString());
                        offered++;
                        turns += works.size();
                    }
                }
            }
        }
        return new Offered(offered, turns);
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void theBestComeFirstAndTheRestSaysWhy(long seed) {
        Outlook outlook = Outlook.of(rove(seed), null);
        int without = 0;
        for (Team team : outlook.event().getTeams()) {
            for (FreeTime free : FreeTime.of(outlook, team)) {
                List<StopOpening> openings = StopOpenings.of(outlook, free);
                assertEquals(outlook.event().getSites().size(), openings.size());
                for (int i = 1; i < openings.size(); i++) {
                    StopOpening better = openings.get(i - 1);
                    StopOpening next = openings.get(i);
                    assertTrue(better.fits() || !next.fits());
                    assertTrue(!next.fits() || better.adds() >= next.adds());
                }
                for (StopOpening opening : openings) {
                    assertEquals(opening.fits(), opening.window().isPresent());
                    assertTrue(opening.window().stream().allMatch(free.window()::contains));
                    assertTrue(opening.obstacle().stream().noneMatch(obstacle -> obstacle.sentence().isBlank()));
                    without += opening.fits() ? 0 : 1;
                }
            }
        }
        assertTrue(without > 5, "only " + without + " sites had something against them");
    }

    @Test
    void freeTimeIsWhereNoStopIs() {
        int looked = 0;
        for (long seed = 1; seed < 6; seed++) {
            Outlook outlook = Outlook.of(rove(seed), null);
            for (Team team : outlook.event().getTeams()) {
                List<Stay> stays = Itinerary.of(outlook.event()).byTeam().getOrDefault(team, List.of());
                for (FreeTime free : FreeTime.of(outlook, team)) {
                    looked++;
                    assertTrue(stays.stream().map(Stay::window).noneMatch(free.window()::overlaps), free.toString());
                    assertTrue(team.getDays().stream().anyMatch(day ->
                            new Window(day.getFrom(), day.getUntil()).contains(free.window())));
                }
            }
        }
        assertTrue(looked > 5, "free times: " + looked);
    }

    /** 100 km from base to site at 60 km/h; the day has four hours. */
    @Test
    void aSiteTooFarSaysHowMuchTimeItNeeds() {
        Rove rove = new Rove("UTC").team(1, "08-12");
        rove.stop(1, "Far", 64.02, -18.9, "09-10");
        rove.event().getPlan().getStops().clear();
        rove.event().getSites().get(0).getSquares().set(0, "IP04");
        Outlook outlook = Outlook.of(rove.event(), null);
        FreeTime free = FreeTime.of(outlook, outlook.event().getTeams().get(0)).get(0);
        assertEquals(240, free.window().duration().toMinutes());
        StopOpening opening = StopOpenings.of(outlook, free).get(0);
        assertTrue(opening.fits(), opening.toString());
        assertTrue(opening.window().orElseThrow().duration().toMinutes() < 40, opening.toString());

        rove.event().getTeams().get(0).getDays().get(0).setUntil(Rove.at("11"));
        Outlook shorter = Outlook.of(rove.event(), null);
        StopOpening none = StopOpenings.of(shorter, FreeTime.of(shorter, shorter.event().getTeams().get(0)).get(0)).get(0);
        assertFalse(none.fits());
        assertTrue(none.obstacle().orElseThrow().sentence().matches("the drives and a short stop need 2\\d\\d min, 180 min are free"),
                none.toString());
    }

    @Test
    void theFirstStopOfAnEventMakesItsPlan() throws RefusedEdit {
        Event event = rove(1);
        event.setPlan(null);
        Outlook outlook = Outlook.of(event, null);
        FreeTime free = FreeTime.of(outlook, event.getTeams().get(0)).get(0);
        StopOpening best = StopOpenings.of(outlook, free).get(0);
        assertTrue(best.fits(), best.toString());
        EditingDomain domain = RandomRove.domain();
        AddStop add = AddStop.of(free.team().getId(), best.site().getId(), best.window().orElseThrow(), List.of());
        domain.getCommandStack().execute(add.command(domain, event));
        assertEquals(add.stopId(), event.getPlan().getStops().get(0).getId());
        domain.getCommandStack().undo();
        assertEquals(null, event.getPlan());
    }
}
