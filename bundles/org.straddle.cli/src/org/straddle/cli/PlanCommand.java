package org.straddle.cli;

import java.time.Duration;

import org.straddle.model.Event;
import org.straddle.model.Snapshot;
import org.straddle.outlook.Outlook;
import org.straddle.plan.ApplyProposal;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.Planner;
import org.straddle.plan.Proposal;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code plan EVENT}: proposes stops and turns for all teams and writes them into the event. */
@Command(name = "plan", description = { "Fill all teams' days with stops and turns, without collisions.",
    "What is pinned stays; the rest of the plan is replaced." })
final class PlanCommand extends EventCommand {

    @Mixin
    private Rows rows;

    @Option(names = "--seconds", paramLabel = "N", defaultValue = "20",
            description = "Search for this long (default ${DEFAULT-VALUE}).")
    private double seconds;

    @Option(names = "--seed", paramLabel = "S", defaultValue = "1",
            description = "Seed of the search; the same seed and number of rounds give the same plan (default ${DEFAULT-VALUE}).")
    private long seed;

    @Option(names = "--rounds", paramLabel = "N", description = "Stop after this many rounds, however long they take.")
    private Long rounds;

    @Option(names = "--dry-run", description = "Print the proposal; change nothing.")
    private boolean dryRun;

    @Override
    int work() throws Exception {
        if (!(seconds >= 0) || seconds > Duration.ofDays(7).toSeconds()) {
            throw new WrongInput("--seconds " + seconds + " is out of range.\nGive a number from 0 to 604800.");
        }
        Event event = dryRun ? opened.event() : opened.toChange().event();
        Outlook outlook = opened.outlook(Snapshot.of(event), err());
        outlook.troubles().forEach(trouble -> err().println(trouble.sentence()));
        Proposal proposal = Planner.standard().propose(outlook, settings(), new Told(), new ConsoleProgress(err()));
        if (!dryRun) {
            Edit.execute(domain -> ApplyProposal.command(domain, event, proposal));
            opened.toChange().save();
        }
        rows.print(table(proposal), out());
        if (rows.forPeople()) {
            out().printf("%d stops with %d turns, worth %.3f; seed %d, %d rounds, %.1f s%n", proposal.stops().size(),
                    proposal.stops().stream().mapToInt(stop -> stop.turns().size()).sum(), proposal.worth(),
                    proposal.seed(), proposal.iterations(), proposal.elapsed().toMillis() / 1000.0);
            proposal.gap().ifPresent(gap -> out().printf(
                    "No plan can be worth more than %.3f: this one is within %.1f %% of the best possible.%n",
                    proposal.upperBound().getAsDouble(), 100 * gap));
            out().println(proposal.way().sentence());
            proposal.uncovered().forEach(square -> out().printf("Not worked: %s, wanted by %.0f %%. %s%n",
                    square.square().name(), 100 * square.demand(), square.why()));
        }
        return StraddleCommand.DONE;
    }

    /** How the search gets on: at most a line a second, since the first rounds improve the plan many times. */
    private final class Told implements PlanProgress {

        private Duration next = Duration.ofSeconds(1);

        @Override
        public void improved(double worth, long iterations, Duration elapsed) {
            tell("worth %.3f after %d rounds".formatted(worth, iterations), elapsed);
        }

        @Override
        public void bounded(double upperBound, double worth, Duration elapsed) {
            tell("worth %.3f; no plan is worth more than %.3f".formatted(worth, upperBound), elapsed);
        }

        private void tell(String words, Duration elapsed) {
            if (elapsed.compareTo(next) >= 0) {
                err().printf("… %s, %.1f s%n", words, elapsed.toMillis() / 1000.0);
                next = elapsed.plusSeconds(1);
            }
        }
    }

    private PlanSettings settings() {
        return rounds == null ? new PlanSettings(Duration.ofMillis(Math.round(seconds * 1000)), seed)
                : PlanSettings.ofIterations(rounds, seed);
    }

    private static Table table(Proposal proposal) {
        Table table = new Table(Table.column("team", "Team"), Table.column("site", "Site"),
                Table.column("squares", "Squares"), Table.column("arrival", "Arrival (UTC)"),
                Table.column("departure", "Departure (UTC)"), Table.column("turns", "Turns"),
                Table.column("birds", "Birds"), Table.column("gain", "Adds"));
        for (PlannedStop stop : proposal.stops()) {
            table.row(stop.team().getNumber(), stop.site().getName(), java.util.List.copyOf(stop.site().getSquares()),
                    stop.stay().start(), stop.stay().end(), stop.turns().size(),
                    String.join(", ", stop.turns().stream().map(turn -> turn.bird().getName()).toList()),
                    Math.round(stop.gain() * 1000) / 1000.0);
        }
        return table;
    }
}
