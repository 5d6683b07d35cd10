package org.straddle.check;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.run.Checked;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.HorizonPoint;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.event.SyntheticEvent;
import org.straddle.plan.event.ApplyProposal;
import org.straddle.plan.event.NeighbourhoodPlanner;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.PassSearch;

/** Times the check of a large event: a whole one, and what follows a single edit. */
final class CheckBench {

    private static final int MEASURED = Integer.getInteger("bench.rounds", 101);
    private static final int WARM_UP = MEASURED * 3 / 5;

    private final PassSearch search = new PassSearch();
    private final Event event = SyntheticEvent.of(SyntheticEvent.Size.valueOf(System.getProperty("bench.size", "LARGE")), 1);
    private final Random random = new Random(1);

    public static void main(String[] args) {
        new CheckBench().run();
    }

    private void run() {
        event.getSites().forEach(CheckBench::mask);
        EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(),
                new BasicCommandStack());
        domain.getCommandStack().execute(ApplyProposal.command(domain, event, new NeighbourhoodPlanner().propose(
                Outlook.of(event, search, null), PlanSettings.ofIterations(2000, 1), PlanProgress.SILENT, null)));
        table("a plan without blockers");
        crowd();
        table("a first draft on top of it, full of blockers");
    }

    private void table(String plan) {
        System.out.printf("%n%s: %d stops, %d turns, %d findings%n", plan, event.getPlan().getStops().size(),
                event.getPlan().getStops().stream().mapToInt(stop -> stop.getTurns().size()).sum(),
                Checks.standard().run(Outlook.of(Snapshot.of(event), search, null), null).size());
        System.out.println("| what | copy, ms | outlook, ms | check, ms | all, ms | all, CPU ms | looked at |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- |");
        measure("whole check", () -> { }, true);
        measure("a turn moved", this::moveTurn, false);
        measure("a stop moved", this::moveStop, false);
        measure("a mask changed", this::changeMask, false);
        measure("a demand changed", () -> event.getDemands().get(random.nextInt(event.getDemands().size()))
                .setSharePercent(random.nextInt(100)), false);
    }

    /** Three stops more for each day of each team, at sites taken by chance, with the first passes that fall into them. */
    private void crowd() {
        Outlook outlook = Outlook.of(event, search, null);
        for (Team team : event.getTeams()) {
            for (TeamDay day : team.getDays()) {
                for (int i = 0; i < 3; i++) {
                    Window stay = Window.of(day.getFrom().plus(Duration.ofHours(1 + 3 * i)), Duration.ofHours(2));
                    Site site = event.getSites().get(random.nextInt(event.getSites().size()));
                    Stop stop = Fresh.stop(team, site, stay.start(), stay.end());
                    outlook.passes(stop.getSite()).stream().filter(pass -> stay.contains(pass.pass().window())).limit(3)
                            .forEach(pass -> stop.getTurns().add(turn(pass)));
                    event.getPlan().getStops().add(stop);
                }
            }
        }
    }

    private static Turn turn(SitePass pass) {
        return Fresh.turn(pass.bird(), pass.pass().window().start(), pass.pass().window().end());
    }

    private void measure(String what, Runnable edit, boolean whole) {
        double[][] times = new double[5][MEASURED];
        Outlook outlook = Outlook.of(Snapshot.of(event), search, null);
        Checked checked = Checks.standard().check(outlook, null);
        for (int i = -WARM_UP; i < MEASURED; i++) {
            edit.run();
            long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            long start = System.nanoTime();
            Event copy = Snapshot.of(event);
            long copied = System.nanoTime();
            outlook = whole ? Outlook.of(copy, search, null) : Outlook.after(outlook, copy, search, null);
            long seen = System.nanoTime();
            checked = whole ? Checks.standard().check(outlook, null) : checked.again(outlook, null);
            long end = System.nanoTime();
            if (i >= 0) {
                times[0][i] = copied - start;
                times[1][i] = seen - copied;
                times[2][i] = end - seen;
                times[3][i] = end - start;
                times[4][i] = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu;
            }
        }
        StringBuilder row = new StringBuilder("| " + what);
        for (double[] time : times) {
            Arrays.sort(time);
            row.append(String.format(Locale.ROOT, " | %.1f", time[MEASURED / 2] / 1e6));
        }
        System.out.println(row + " | " + checked.looked() + " of " + checked.subjects() + " |");
    }

    private void moveTurn() {
        Stop stop = anyStop();
        while (stop.getTurns().isEmpty()) {
            stop = anyStop();
        }
        Turn turn = stop.getTurns().get(random.nextInt(stop.getTurns().size()));
        long seconds = random.nextInt(120) - 60;
        turn.setStart(turn.getStart().plusSeconds(seconds));
        turn.setEnd(turn.getEnd().plusSeconds(seconds));
    }

    private void moveStop() {
        Stop stop = anyStop();
        long seconds = random.nextInt(120) - 60;
        stop.setArrival(stop.getArrival().plusSeconds(seconds));
        stop.setDeparture(stop.getDeparture().plusSeconds(seconds));
    }

    private Stop anyStop() {
        return event.getPlan().getStops().get(random.nextInt(event.getPlan().getStops().size()));
    }

    private void changeMask() {
        Site site = event.getSites().get(random.nextInt(event.getSites().size()));
        site.getHorizon().get(random.nextInt(site.getHorizon().size())).setElevationDeg(random.nextInt(100) / 10.0);
    }

    /** Thirty-six points, as somebody with a compass writes them down. */
    private static void mask(Site site) {
        for (int i = 0; i < 36; i++) {
            HorizonPoint point = StraddleFactory.eINSTANCE.createHorizonPoint();
            point.setAzimuthDeg(10 * i);
            point.setElevationDeg(i % 7);
            site.getHorizon().add(point);
        }
    }
}
