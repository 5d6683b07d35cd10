package org.straddle.plan.event;

import java.time.Instant;
import java.util.List;
import java.util.Random;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Ban;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;
import org.straddle.plan.Pinning;
import org.straddle.plan.PlanSettings;

/**
 * Decisions that a coordinator might have made already: one team in three is out for three hours, one site in ten closed
 * on one day, one bird in ten silent for half a day; and one stop in six of a quick plan that keeps to this is pinned.
 */
final class FixedDecisions {

    private static final int HOUR = 3600;

    private final Event event;
    private final Random random;

    private FixedDecisions(Event event, long seed) {
        this.event = event;
        random = new Random(seed + 77);
    }

    static void in(Event event, long seed) {
        FixedDecisions decisions = new FixedDecisions(event, seed);
        decisions.ban();
        decisions.pin(seed);
    }

    private void ban() {
        for (Team team : event.getTeams()) {
            if (random.nextInt(3) == 0) {
                add(3).setTeam(team);
            }
        }
        for (Site site : event.getSites()) {
            if (random.nextInt(10) == 0) {
                add(24).setSite(site);
            }
        }
        event.getBirds().stream().filter(bird -> random.nextInt(10) == 0).forEach(bird -> add(12).setBird(bird));
    }

    private Ban add(int hours) {
        List<Instant> mornings = event.getTeams().get(0).getDays().stream().map(day -> day.getFrom()).toList();
        Ban ban = Fresh.ban();
        ban.setFrom(mornings.get(random.nextInt(mornings.size())).plusSeconds(HOUR * (long) random.nextInt(6)));
        ban.setUntil(ban.getFrom().plusSeconds((long) hours * HOUR));
        event.getPlan().getBans().add(ban);
        return ban;
    }

    private void pin(long seed) {
        EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
        domain.getCommandStack().execute(ApplyProposal.command(domain, event, new NeighbourhoodPlanner().propose(
                Outlook.of(event, null), PlanSettings.ofIterations(0, seed), new NullProgressMonitor())));
        List<Stop> pinned = event.getPlan().getStops().stream().filter(stop -> random.nextInt(6) == 0).toList();
        domain.getCommandStack().execute(Pinning.pinWhole(domain, pinned));
    }
}
