package org.straddle.plan.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.run.Checks;
import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Stop;
import org.straddle.model.TeamDay;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Planner;
import org.straddle.plan.Replan;
import org.straddle.plan.WhatIf;

/** Every plan made of a thousand random events is accepted by the rules, which know nothing of the planner. */
class ManyEventsTest {

    private static final EditingDomain DOMAIN =
            new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());

    private static final int EVENTS = 1000;

    /** One team or two, a day, two to four sites and birds; some with bans. */
    private static Event tiny(long seed) {
        Random random = new Random(seed);
        Event event = RandomEvent.of(seed, 1 + random.nextInt(2), 1, 2 + random.nextInt(3), 3 + random.nextInt(3));
        for (int bans = random.nextInt(3); bans > 0; bans--) {
            event.getPlan().getBans().add(ban(event, random));
        }
        return event;
    }

    private static Ban ban(Event event, Random random) {
        Ban ban = Fresh.ban();
        TeamDay day = event.getTeams().get(0).getDays().get(0);
        ban.setFrom(day.getFrom().plusSeconds(random.nextInt(5 * 3600)));
        ban.setUntil(ban.getFrom().plusSeconds(1 + random.nextInt(3 * 3600)));
        int kind = random.nextInt(4);
        if (kind == 0) {
            ban.setTeam(event.getTeams().get(0));
        } else if (kind == 1) {
            ban.setSite(event.getSites().get(0));
        } else if (kind == 2) {
            ban.setBird(event.getBirds().get(0));
        } else {
            ban.setSquare(event.getSites().get(0).getSquares().get(0));
        }
        return ban;
    }

    /** Planned; then, for every second event, published, edited, some of it pinned, and planned again from an instant on. */
    private static void plan(Event event, Outlook outlook, long seed) {
        Planner planner = seed % 25 == 0 ? EventPlanner.standard() : new NeighbourhoodPlanner();
        PlanSettings settings = PlanSettings.ofIterations(5, seed);
        DOMAIN.getCommandStack().execute(ApplyProposal.command(DOMAIN, event,
                planner.propose(outlook, settings, new NullProgressMonitor())));
        if (seed % 2 == 0) {
            Published.now(event);
            List<Stop> stops = event.getPlan().getStops();
            if (!stops.isEmpty()) {
                stops.remove(new Random(seed).nextInt(stops.size()));
            }
            RandomEvent.pinSome(event, seed);
            Bird bird = event.getBirds().get(1);
            boolean pinned = event.getPlan().getStops().stream().flatMap(stop -> stop.getTurns().stream())
                    .anyMatch(turn -> turn.isPinned() && turn.getBird() == bird);
            Replan replan = new Replan(Optional.of(outlook.span().start().plusSeconds(4 * 3600)), Replan.USUAL_KEEPING,
                    pinned ? List.of() : List.of(new WhatIf.DeadBird(bird,
                            Optional.of(outlook.span().start().plusSeconds(5 * 3600)), Optional.empty())));
            DOMAIN.getCommandStack().execute(ApplyProposal.command(DOMAIN, event,
                    planner.propose(outlook, settings.with(replan), new NullProgressMonitor())));
        }
    }

    @Test
    void everyPlanIsAcceptedByTheRules() {
        long turns = 0;
        for (long seed = 0; seed < EVENTS; seed++) {
            Event event = tiny(seed);
            Outlook outlook = Outlook.of(event, null); // the plan does not bear on it
            plan(event, outlook, seed);
            List<String> blockers = Checks.standard().run(outlook, new NullProgressMonitor()).stream()
                    .filter(finding -> finding.severity() == Severity.BLOCKER).map(Finding::sentence).toList();
            assertEquals(List.of(), blockers, "seed " + seed);
            turns += event.getPlan().getStops().stream().mapToLong(stop -> stop.getTurns().size()).sum();
        }
        assertTrue(turns > 2 * EVENTS, "only " + turns + " turns in all: nothing was tried");
    }
}
