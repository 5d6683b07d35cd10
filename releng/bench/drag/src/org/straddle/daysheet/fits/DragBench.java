package org.straddle.daysheet.fits;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.event.ApplyProposal;
import org.straddle.plan.event.NeighbourhoodPlanner;
import org.straddle.plan.event.SyntheticEvent;
import org.straddle.sky.prediction.PassSearch;

/** Carries every stop and turn of a large planned event over all lanes, and tells how long one move of the hand takes. */
final class DragBench {

    private static final int MOVES = Integer.getInteger("bench.rounds", 2000);
    private static final int WARM_UP = Math.min(500, MOVES);

    private final Event event = SyntheticEvent.of(SyntheticEvent.Size.valueOf(System.getProperty("bench.size", "LARGE")), 1);
    private final Random random = new Random(1);

    public static void main(String[] args) {
        new DragBench().run();
    }

    private void run() {
        PassSearch search = new PassSearch();
        EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(),
                new BasicCommandStack());
        domain.getCommandStack().execute(ApplyProposal.command(domain, event, new NeighbourhoodPlanner().propose(
                Outlook.of(event, search, null), PlanSettings.ofIterations(2000, 1), PlanProgress.SILENT, null)));
        Outlook outlook = Outlook.of(event, search, null);
        List<Stop> stops = event.getPlan().getStops();
        List<Turn> turns = stops.stream().flatMap(stop -> stop.getTurns().stream()).toList();
        System.out.println("| in hand | median, ms | 99 of 100, ms | CPU of one, ms |");
        System.out.println("| --- | --- | --- | --- |");
        measure("a stop", stops.stream().flatMap(stop -> Carried.stop(outlook, stop, Grip.WHOLE).stream()).toList());
        measure("a turn", turns.stream().flatMap(turn -> Carried.turn(outlook, turn, Grip.WHOLE).stream()).toList());
    }

    private void measure(String what, List<? extends Carried> carried) {
        double[] times = new double[MOVES];
        long cpu = 0;
        for (int i = -WARM_UP; i < MOVES; i++) {
            Carried held = carried.get(random.nextInt(carried.size()));
            Team team = event.getTeams().get(random.nextInt(event.getTeams().size()));
            if (i == 0) {
                cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            }
            long start = System.nanoTime();
            held.land(team, held.window().start().plusSeconds(random.nextInt(20_000) - 10_000L), List.of(), Duration.ZERO);
            if (i >= 0) {
                times[i] = (System.nanoTime() - start) / 1e6;
            }
        }
        double each = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e6 / MOVES;
        Arrays.sort(times);
        System.out.printf(Locale.ROOT, "| %s | %.2f | %.2f | %.2f |%n", what, times[MOVES / 2], times[MOVES * 99 / 100], each);
    }
}
