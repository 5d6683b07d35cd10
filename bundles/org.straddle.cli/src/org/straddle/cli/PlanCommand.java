package org.straddle.cli;

import java.time.Duration;
import java.util.Arrays;
import java.util.stream.Collectors;

import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.Snapshot;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.plan.event.ApplyProposal;
import org.straddle.plan.PlanChange;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.event.EventPlanner;
import org.straddle.plan.Proposal;
import org.straddle.store.EventFolderException;
import org.straddle.words.Catalogue;
import org.straddle.worth.EventWorth;
import org.straddle.worth.ExpectedPlan;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code plan EVENT}: proposes stops and turns for all teams and writes them into the event. */
@Command(name = "plan")
final class PlanCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(PlanCommand.class);

    @Mixin
    private Rows rows;

    @Option(names = "--seconds", paramLabel = "N", defaultValue = "20")
    private double seconds;

    @Option(names = "--seed", paramLabel = "S", defaultValue = "1")
    private long seed;

    @Option(names = "--rounds", paramLabel = "N")
    private Long rounds;

    @Option(names = "--dry-run")
    private boolean dryRun;

    @Option(names = "--list", paramLabel = "WHAT", defaultValue = "stops")
    private ProposalRows list;

    @Option(names = "--sites", paramLabel = "WHICH", completionCandidates = SitesChoice.Words.class)
    private String sites;

    @ArgGroup(exclusive = false, headingKey = "straddle.plan.heading.fixed")
    private FixedOptions fixed = new FixedOptions();

    @ArgGroup(exclusive = false, headingKey = "straddle.plan.heading.present")
    private WhatIfOptions whatIf = new WhatIfOptions();

    @Override
    int work() throws Exception {
        if (!(seconds >= 0) || seconds > Duration.ofDays(7).toSeconds()) {
            throw new WrongInput(TEXTS.text("planCommand.secondsOutRange", "seconds", seconds));
        }
        if (rounds != null && rounds < 0) {
            throw new WrongInput(TEXTS.text("planCommand.roundsOutRange", "rounds", rounds));
        }
        Event event = opened.toChange(dryRun).event();
        Edit.execute(domain -> fixed.in(domain, event));
        Event snapshot = Snapshot.of(event);
        if (sites != null) {
            SitesChoice.called(sites).in(snapshot);
        }
        PlanSettings settings = settings().with(whatIf.of(snapshot));
        Outlook outlook = opened.outlook(snapshot, err());
        outlook.troubles().forEach(trouble -> err().println(trouble.sentence()));
        Proposal proposal = EventPlanner.standard().propose(outlook, settings, new Told(),
                new ConsoleProgress(err(), TEXTS.text("planCommand.plans")));
        if (proposal.bringsNothing()) {
            throw new WrongInput(TEXTS.text("planCommand.thereNothingPlan",
                    "whyNothing", proposal.ending().whyNothing().orElseThrow()));
        }
        if (!dryRun) {
            Edit.execute(domain -> ApplyProposal.command(domain, event, proposal));
            opened.toChange().save();
        }
        ExpectedPlan expected = ExpectedPlan.of(EventWorth.of(planned(snapshot, outlook, proposal)));
        rows.print(list.of(proposal, expected), out());
        if (rows.forPeople()) {
            sayWhatItIs(proposal, expected);
            HoldLines.toDo(expected, out());
            HoldLines.planB(expected, out());
        }
        return StraddleCommand.DONE;
    }

    /** The event as it is with the proposal, also when nothing is to be written. */
    private static Outlook planned(Event snapshot, Outlook before, Proposal proposal) throws EventFolderException {
        Event planned = Snapshot.of(snapshot);
        Edit.execute(domain -> ApplyProposal.command(domain, planned, proposal));
        return before.with(planned);
    }

    private void sayWhatItIs(Proposal proposal, ExpectedPlan expected) {
        out().println(TEXTS.text("planCommand.contacts", "served", expected.served().served(),
                "wanted", expected.served().wanted(), "differs", expected.differs(),
                "happens", (int) Math.round(100 * expected.worth().figures().happens()), "bySearch", expected.bySearch().served()));
        if (expected.served().byGroup().size() > 1) {
            expected.served().byGroup().forEach(group -> out().println(TEXTS.text("planCommand.contacts.region",
                    "region", InertText.line(group.group().name()), "served", group.served(), "wanted", group.wanted())));
        }
        out().println(TEXTS.text("planCommand.worthSeedRounds", "plan", proposal.size(), "worth", proposal.worth(),
                "seed", proposal.seed(), "rounds", proposal.iterations(),
                "seconds", proposal.elapsed().toMillis() / 1000.0));
        if (proposal.keeping() > 0) {
            out().println(TEXTS.text("planCommand.whatKeepsWhat", "keeping", proposal.keeping(),
                    "objective", proposal.objective()));
        }
        proposal.gap().ifPresent(gap -> out().println(TEXTS.text("planCommand.planCanWorth",
                "upperBound", proposal.upperBound().getAsDouble(), "gap", 100 * gap)));
        out().println(proposal.ending().whyNothing().orElse(proposal.howItWasMade()));
        proposal.bans().forEach(ban -> out().println(TEXTS.text("planCommand.newBan", "reason", ban.getReason())));
        if (whatIf.given()) {
            out().println(Arrays.stream(PlanChange.Kind.values())
                    .map(kind -> proposal.changes(kind) + " " + kind.word()).collect(Collectors.joining(", ")) + ".");
            if (list != ProposalRows.changes) {
                proposal.changes().stream().filter(change -> change.kind() != PlanChange.Kind.KEPT)
                        .forEach(change -> out().println(change.sentence()));
            }
        }
        proposal.idle().forEach(idle -> out().println(TEXTS.text("planCommand.idle", "team", Naming.name(idle.team()),
                "why", idle.why())));
        if (list != ProposalRows.uncovered) {
            proposal.uncovered().forEach(square -> out().println(TEXTS.text("planCommand.notWorkedWanted",
                    "square", square.square().name(), "demand", 100 * square.demand(), "why", square.why())));
        }
    }

    /** How the search gets on: at most a line a second, since the first rounds improve the plan many times. */
    private final class Told implements PlanProgress {

        private Duration next = Duration.ofSeconds(1);

        @Override
        public void improved(double worth, long iterations, Duration elapsed) {
            tell(TEXTS.text("planCommand.worthAfterRounds", "worth", worth, "rounds", iterations), elapsed);
        }

        @Override
        public void bounded(double upperBound, double worth, Duration elapsed) {
            tell(TEXTS.text("planCommand.worthPlanWorth", "worth", worth, "upperBound", upperBound), elapsed);
        }

        @Override
        public void boundFailed(Throwable why) {
            err().println(TEXTS.text("planCommand.boundFailed", "why", String.valueOf(why.getMessage())));
        }

        private void tell(String words, Duration elapsed) {
            if (elapsed.compareTo(next) >= 0) {
                err().println(TEXTS.text("planCommand.progress", "words", words, "seconds", elapsed.toMillis() / 1000.0));
                next = elapsed.plusSeconds(1);
            }
        }
    }

    private PlanSettings settings() {
        return rounds == null ? new PlanSettings(Duration.ofMillis(Math.round(seconds * 1000)), seed)
                : PlanSettings.ofIterations(rounds, seed);
    }
}
