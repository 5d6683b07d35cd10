package org.straddle.cli;

import java.time.Duration;
import java.util.Arrays;
import java.util.stream.Collectors;

import org.straddle.model.Event;
import org.straddle.model.Snapshot;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanChange;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.event.ApplyProposal;
import org.straddle.plan.event.EventPlanner;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code plan EVENT}: proposes stops and turns for all teams and writes them into the event. */
@Command(name = "plan", description = { "Fill all teams' days with stops and turns, without collisions.",
    "What is pinned stays; the rest of the plan is replaced, or changed as little as pays." })
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

    @Option(names = "--list", paramLabel = "WHAT", defaultValue = "stops",
            description = "What to print as rows: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private ProposalRows list;

    @ArgGroup(exclusive = false, heading = "%nWhat is fixed:%n")
    private FixedOptions fixed = new FixedOptions();

    @ArgGroup(exclusive = false, heading = "%nHolding on to the present plan:%n")
    private WhatIfOptions whatIf = new WhatIfOptions();

    @Override
    int work() throws Exception {
        if (!(seconds >= 0) || seconds > Duration.ofDays(7).toSeconds()) {
            throw new WrongInput("--seconds " + seconds + " is out of range.\nGive a number from 0 to 604800.");
        }
        if (rounds != null && rounds < 0) {
            throw new WrongInput("--rounds " + rounds + " is out of range.\nGive a number from 0 up.");
        }
        Event event = opened.toChange(dryRun).event();
        Edit.execute(domain -> fixed.in(domain, event));
        Event snapshot = Snapshot.of(event);
        PlanSettings settings = settings().with(whatIf.of(snapshot));
        Outlook outlook = opened.outlook(snapshot, err());
        outlook.troubles().forEach(trouble -> err().println(trouble.sentence()));
        Proposal proposal = EventPlanner.standard().propose(outlook, settings, new Told(), new ConsoleProgress(err()));
        if (proposal.bringsNothing()) {
            throw new WrongInput("There is nothing to plan, and the plan stays as it is.\n" + proposal.ending().whyNothing().orElseThrow());
        }
        if (!dryRun) {
            Edit.execute(domain -> ApplyProposal.command(domain, event, proposal));
            opened.toChange().save();
        }
        rows.print(list.of(proposal), out());
        if (rows.forPeople()) {
            sayWhatItIs(proposal);
        }
        return StraddleCommand.DONE;
    }

    private void sayWhatItIs(Proposal proposal) {
        out().printf("%s, worth %.3f; seed %d, %d rounds, %.1f s%n", proposal.size(), proposal.worth(),
                proposal.seed(), proposal.iterations(), proposal.elapsed().toMillis() / 1000.0);
        if (proposal.keeping() > 0) {
            out().printf("With %.3f for what it keeps of what was planned and published: %.3f in all, which is what the bound is for.%n",
                    proposal.keeping(), proposal.objective());
        }
        proposal.gap().ifPresent(gap -> out().printf(
                "No plan can be worth more than %.3f: this one is within %.1f %% of the best possible.%n",
                proposal.upperBound().getAsDouble(), 100 * gap));
        out().println(proposal.ending().whyNothing().orElse(proposal.howItWasMade()));
        proposal.bans().forEach(ban -> out().println("New ban: " + ban.getReason() + "."));
        if (whatIf.given()) {
            out().println(Arrays.stream(PlanChange.Kind.values())
                    .map(kind -> proposal.changes(kind) + " " + kind.word()).collect(Collectors.joining(", ")) + ".");
            if (list != ProposalRows.changes) {
                proposal.changes().stream().filter(change -> change.kind() != PlanChange.Kind.KEPT)
                        .forEach(change -> out().println(change.sentence()));
            }
        }
        if (list != ProposalRows.uncovered) {
            proposal.uncovered().forEach(square -> out().printf("Not worked: %s, wanted by %.0f %%. %s%n",
                    square.square().name(), 100 * square.demand(), square.why()));
        }
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
}
