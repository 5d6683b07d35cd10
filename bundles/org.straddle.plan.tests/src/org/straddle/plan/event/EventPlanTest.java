package org.straddle.plan.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.run.Checks;
import org.straddle.model.Ban;
import org.straddle.model.BirdState;
import org.straddle.model.Base;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Operator;
import org.straddle.model.Snapshot;
import org.straddle.model.Team;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.Verdict;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.Replan;
import org.straddle.plan.UncoveredSquare.Reason;
import org.straddle.plan.UncoveredSquare;
import org.straddle.plan.WhatIf;

/** From an event to a plan in the event, judged by the checks, which know nothing of the planner. */
class EventPlanTest {

    /** Milder findings that the planner must not cause either. */
    private static final Set<String> ITS_BUSINESS =
            Set.of("driving-limit", "turn-short", "peak-low", "same-frequency", "bird-off", "bird-unlit");

    private static final EditingDomain DOMAIN =
            new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());

    private static Proposal proposal(Event live, long seed) {
        return new NeighbourhoodPlanner().propose(Outlook.of(Snapshot.of(live), null),
                PlanSettings.ofIterations(40, seed), new NullProgressMonitor());
    }

    private static Proposal planned(Event live, long seed) {
        Proposal proposal = proposal(live, seed);
        DOMAIN.getCommandStack().execute(ApplyProposal.command(DOMAIN, live, proposal));
        return proposal;
    }

    private static Set<String> complaints(Event event) {
        return Checks.standard().run(Outlook.of(Snapshot.of(event), null), new NullProgressMonitor()).stream()
                .filter(f -> f.severity() == Severity.BLOCKER || ITS_BUSINESS.contains(f.rule()))
                .map(Finding::key).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Event small(long seed) {
        int size = (int) (seed % 3);
        return RandomEvent.of(seed, 1 + size, 1 + (int) (seed % 2), 4 + 3 * size, 3 + 2 * size);
    }

    /** A crew of one could drive anywhere: what keeps it at home is the event's own rule. */
    @Test
    void anOperatorAloneIsToldSo() {
        Event event = RandomEvent.of(7, 3, 1, 7, 5);
        event.getPolicies().setLoneOperatorAllowed(false);
        Team alone = event.getTeams().get(1);
        Operator operator = Fresh.operator();
        operator.setCallSign("Q0AAR");
        event.getOperators().add(operator);
        alone.getOperators().clear();
        alone.getOperators().add(operator);
        assertTrue(proposal(event, 1).idle().stream().anyMatch(idle -> idle.team().getId().equals(alone.getId())
                && idle.why().startsWith("It is one operator alone")));
    }

    /** Whom a plan leaves at home is told with a reason: no days, or a base from which nothing is near enough. */
    @Test
    void aTeamThatStaysAtHomeIsToldWhy() {
        Event event = RandomEvent.of(7, 3, 1, 7, 5);
        event.getTeams().get(1).getDays().clear();
        Base far = Fresh.base();
        far.setLatitudeDeg(-64);
        far.setLongitudeDeg(160);
        event.getBases().add(far);
        event.getTeams().get(2).getDays().forEach(day -> {
            day.setStart(far);
            day.setEnd(far);
        });
        Proposal proposal = proposal(event, 1);
        assertTrue(proposal.stops().stream().anyMatch(stop -> stop.team().getId().equals(event.getTeams().get(0).getId())));
        assertEquals(List.of(event.getTeams().get(1).getId(), event.getTeams().get(2).getId()),
                proposal.idle().stream().map(idle -> idle.team().getId()).toList());
        assertTrue(proposal.idle().get(0).why().startsWith("It has no days."), proposal.idle().get(0).why());
        assertTrue(proposal.idle().get(1).why().startsWith("No pass is in its reach"), proposal.idle().get(1).why());
    }

    @Test
    void checksFindNothingAgainstAPlan() {
        int stops = 0;
        for (long seed = 0; seed < 18; seed++) {
            Event event = small(seed);
            planned(event, seed);
            assertEquals(Set.of(), complaints(event), "seed " + seed);
            stops += event.getPlan().getStops().size();
        }
        assertTrue(stops > 30, "only " + stops + " stops in all: nothing was tried");
    }

    @Test
    void pinnedThingsStayAndNothingNewCollidesWithThem() {
        int kept = 0;
        for (long seed = 0; seed < 12; seed++) {
            Event event = small(seed);
            planned(event, seed);
            RandomEvent.pinSome(event, seed);
            List<String> pinned = pinned(event);
            planned(event, seed + 100);
            assertEquals(pinned, pinned(event), "seed " + seed);
            assertEquals(Set.of(), complaints(event), "seed " + seed);
            kept += pinned.size();
        }
        assertTrue(kept > 10, "only " + kept + " pinned things in all: nothing was tried");
    }

    @Test
    void plansWithABoundKeepTheChecksAndThePinsAsWell() {
        for (long seed = 0; seed < 9; seed++) {
            Event event = small(seed);
            planned(event, seed);
            RandomEvent.pinSome(event, seed);
            List<String> pinned = pinned(event);
            Proposal proposal = EventPlanner.standard().propose(Outlook.of(Snapshot.of(event), null),
                    PlanSettings.ofIterations(600, seed), new NullProgressMonitor());
            DOMAIN.getCommandStack().execute(ApplyProposal.command(DOMAIN, event, proposal));
            assertEquals(pinned, pinned(event), "seed " + seed);
            assertEquals(Set.of(), complaints(event), "seed " + seed);
            assertEquals(Proposal.Way.WITH_BOUND, proposal.way());
            assertTrue(proposal.upperBound().getAsDouble() >= proposal.worth(), "seed " + seed);
            assertTrue(proposal.gap().getAsDouble() < 0.2, "seed " + seed + ": gap " + proposal.gap());
        }
    }

    @Test
    void withoutTheSolverThereIsAPlanThatSaysSo() {
        Proposal proposal = new EventPlanner(() -> false).propose(Outlook.of(Snapshot.of(small(5)), null),
                PlanSettings.ofIterations(40, 5), new NullProgressMonitor());
        assertEquals(described(proposal(small(5), 5)).size(), proposal.stops().size());
        assertTrue(proposal.upperBound().isEmpty() && proposal.gap().isEmpty());
        assertEquals(Proposal.Way.SOLVER_MISSING, proposal.way());
    }

    private static List<String> pinned(Event event) {
        return event.getPlan().getStops().stream().filter(KeptStop::isPinned)
                .map(stop -> stop.getId() + stop.getArrival() + stop.getDeparture() + stop.getSite().getId()
                        + stop.getTurns().stream().filter(Turn::isPinned)
                                .map(turn -> turn.getId() + turn.getStart() + turn.getEnd()).sorted().toList())
                .sorted().toList();
    }

    @Test
    void proposalSaysWhatIsApplied() {
        Event event = small(5);
        Proposal proposal = planned(event, 5);
        assertEquals(
                proposal.stops().stream().map(s -> s.team().getId() + s.site().getId() + s.stay()
                        + s.turns().stream().map(t -> t.bird().getId() + t.window()).toList()).sorted().toList(),
                event.getPlan().getStops().stream().map(s -> s.getTeam().getId() + s.getSite().getId()
                        + s.getArrival() + "/" + s.getDeparture()
                        + s.getTurns().stream().map(t -> t.getBird().getId() + t.getStart() + "/" + t.getEnd()).toList())
                        .sorted().toList());
        assertTrue(proposal.stops().stream().allMatch(stop -> stop.gain() > 0));
    }

    @Test
    void samePlanForTheSameSeed() {
        Event event = small(8);
        assertEquals(described(proposal(event, 3)), described(proposal(event, 3)));
    }

    private static List<String> described(Proposal proposal) {
        return proposal.stops().stream().map(s -> s.team().getId() + s.site().getId() + s.stay() + s.turns().stream()
                .map(t -> t.bird().getId() + t.window()).toList()).toList();
    }

    @Test
    void applyingIsUndoneAsOne() {
        Event event = small(8);
        planned(event, 8);
        RandomEvent.pinSome(event, 8);
        // A search that finds the same plan again would change nothing.
        assertTrue(event.getPlan().getStops().removeIf(stop -> !stop.isPinned()));
        Event before = Snapshot.of(event);
        Command command = ApplyProposal.command(DOMAIN, event, proposal(event, 6));
        DOMAIN.getCommandStack().execute(command);
        assertFalse(EcoreUtil.equals(before, event));
        DOMAIN.getCommandStack().undo();
        assertTrue(EcoreUtil.equals(before, event));
    }

    @Test
    void proposalForAnEventThatChangedCannotBeApplied() {
        Event event = small(5);
        planned(event, 5);
        event.getPlan().getStops().get(0).setPinned(true);
        Proposal proposal = proposal(event, 5);
        assertTrue(ApplyProposal.command(DOMAIN, event, proposal).canExecute());

        Stop pinned = event.getPlan().getStops().get(0);
        pinned.setArrival(pinned.getArrival().minusSeconds(60));
        assertFalse(ApplyProposal.command(DOMAIN, event, proposal).canExecute(), "a pinned stop was moved");
        pinned.setArrival(pinned.getArrival().plusSeconds(60));
        event.getPlan().getStops().get(1).setPinned(true);
        assertFalse(ApplyProposal.command(DOMAIN, event, proposal).canExecute(), "another stop was pinned");
        event.getPlan().getStops().get(1).setPinned(false);
        event.getTeams().removeIf(team -> team.getId().equals(proposal.stops().get(0).team().getId()));
        assertFalse(ApplyProposal.command(DOMAIN, event, proposal).canExecute(), "a team is gone");
    }

    @Test
    void everyNeededSquareIsWorkedOrExplained() {
        for (long seed = 0; seed < 6; seed++) {
            Event event = small(seed);
            Proposal proposal = planned(event, seed);
            Set<String> worked = event.getPlan().getStops().stream().flatMap(s -> s.getSite().getSquares().stream())
                    .collect(Collectors.toSet());
            Map<String, UncoveredSquare> explained = proposal.uncovered().stream()
                    .collect(Collectors.toMap(u -> u.square().name(), u -> u));
            event.getDemands().stream().filter(d -> d.getSharePercent() > 0).forEach(d ->
                    assertTrue(worked.contains(d.getSquare()) != explained.containsKey(d.getSquare()), d.getSquare()));
            assertEquals(Reason.NO_SITE, explained.get("HP99").reason());
        }
    }

    @Test
    void withoutAWorkingBirdNoSquareHasAPass() {
        Event event = small(5);
        event.getBirds().forEach(bird -> bird.setState(BirdState.NOT_WORKING));
        assertEquals(Set.of(Reason.NO_SITE, Reason.NO_PASS), reasons(proposal(event, 1)));
    }

    @Test
    void whatStandsInTheWayIsToldPrecisely() {
        Event event = small(5);
        assertTrue(whys(event).contains("No site claims this square."));
        Ban ban = Fresh.ban();
        ban.setReason("No permission.");
        ban.setFrom(event.getTeams().get(0).getDays().get(0).getFrom().minusSeconds(1));
        event.getPlan().getBans().add(ban);
        assertEquals(Set.of(Reason.NO_SITE, Reason.BANNED), reasons(proposal(event, 1)));
        assertTrue(whys(event).contains("Only bans stand in the way: No permission."));
        event.getPlan().getBans().clear();
        event.getPolicies().setMinimumPeakElevationDeg(89);
        assertTrue(whys(event).stream().anyMatch(why -> why.contains("89° is the least")), () -> whys(event).toString());
        event.getPolicies().setMinimumPeakElevationDeg(10);
        event.getPolicies().setRoadSpeedKmh(1);
        assertTrue(whys(event).stream().anyMatch(why -> why.startsWith("Out of reach")), () -> whys(event).toString());
    }

    private static Set<String> whys(Event event) {
        return proposal(event, 1).uncovered().stream().map(UncoveredSquare::why).collect(Collectors.toSet());
    }

    @Test
    void atWalkingSpeedNoSquareIsInReach() {
        Event event = small(5);
        event.getPolicies().setRoadSpeedKmh(1);
        assertEquals(Set.of(Reason.NO_SITE, Reason.NO_TIME), reasons(proposal(event, 1)));
    }

    @Test
    void whatTheOnlyTeamHasNoTimeForIsContested() {
        Event event = RandomEvent.of(11, 1, 1, 16, 5);
        assertTrue(reasons(proposal(event, 1)).contains(Reason.CONTESTED));
    }

    @Test
    void refusedSitesAreLeftOut() {
        Event event = small(5);
        event.getSites().forEach(site -> site.getReviews().forEach(r -> r.setVerdict(Verdict.DO_NOT_USE)));
        Proposal proposal = proposal(event, 1);
        assertEquals(List.of(), proposal.stops());
        assertEquals(Set.of(Reason.NO_SITE), reasons(proposal));
    }

    private static Set<Reason> reasons(Proposal proposal) {
        return proposal.uncovered().stream().map(UncoveredSquare::reason).collect(Collectors.toSet());
    }

    @Test
    void whatNobodyNeedsIsNotPlanned() {
        Event event = small(5);
        event.getDemands().forEach(demand -> demand.setSharePercent(0));
        assertEquals(Proposal.Ending.NOTHING_WANTED, proposal(event, 1).ending());
    }

    @Test
    void withoutElementSetsThereIsNothingToWork() {
        Event event = small(5);
        event.getBirds().forEach(bird -> bird.getElementSets().clear());
        Proposal proposal = proposal(event, 1);
        assertEquals(Proposal.Ending.NOTHING_TO_WORK, proposal.ending());
        assertTrue(proposal.bringsNothing());
        assertTrue(proposal.uncovered().stream().anyMatch(square -> square.why().contains("No bird with an element set")));
    }

    /** Then the plan that is banned has to go, though nothing takes its place. */
    @Test
    void aWhatIfThatLeavesNothingStillBringsItsBans() {
        Event snapshot = Snapshot.of(small(5));
        Replan replan = new Replan(Optional.empty(), Replan.USUAL_KEEPING, snapshot.getBirds().stream()
                .<WhatIf>map(bird -> new WhatIf.DeadBird(bird, Optional.empty(), Optional.empty())).toList());
        Proposal proposal = new NeighbourhoodPlanner().propose(Outlook.of(snapshot, null),
                PlanSettings.ofIterations(5, 1).with(replan), new NullProgressMonitor());
        assertEquals(Proposal.Ending.NOTHING_TO_WORK, proposal.ending());
        assertFalse(proposal.bringsNothing());
    }

    @Test
    void anEmptyEventHasNothingToPlan() {
        Proposal proposal = proposal(Fresh.event("Empty"), 1);
        assertEquals(Proposal.Ending.NOBODY_OUT, proposal.ending());
        assertEquals(List.of(), proposal.stops());
        assertTrue(proposal.bringsNothing());
    }
}
