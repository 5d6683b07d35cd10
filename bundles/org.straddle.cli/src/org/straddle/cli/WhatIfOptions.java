package org.straddle.cli;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.plan.Replan;
import org.straddle.plan.WhatIf;

import picocli.CommandLine.Option;

/** How a new plan is to hold on to the present one, and what it has to make room for. */
final class WhatIfOptions {

    @Option(names = "--replan-from", paramLabel = "INSTANT",
            description = "What begins before this instant stays as planned, such as 2031-06-21T10:30Z.")
    private String from;

    @Option(names = "--keep", paramLabel = "WORTH", description = {
        "What it is worth to keep a turn that is published or, while nothing is published, planned;",
        "1 is a square that all chasers need.",
        "Default 0.25 with --replan-from and with any of the cases below, else 0: plan anew." })
    private Double keep;

    @Option(names = "--out", paramLabel = "TEAM[@FROM[/UNTIL]]",
            description = "What if a team can neither work nor drive, from one instant to another?")
    private List<String> out = new ArrayList<>();

    @Option(names = "--closed", paramLabel = "SITE[@FROM[/UNTIL]]",
            description = "What if a site, or the road to it, is closed?")
    private List<String> closed = new ArrayList<>();

    @Option(names = "--dead", paramLabel = "BIRD[@FROM[/UNTIL]]", description = "What if a bird does not answer?")
    private List<String> dead = new ArrayList<>();

    @Option(names = "--late", paramLabel = "TEAM@INSTANT", description = "What if a team starts its day only then?")
    private List<String> late = new ArrayList<>();

    /** @throws WrongInput when something named is not there, or a time cannot be read */
    Replan of(Event event) {
        List<WhatIf> cases = new ArrayList<>();
        for (String given : out) {
            Timed timed = Timed.of("--out", given);
            cases.add(new WhatIf.Breakdown(OpenEvent.team(timed.name, event), timed.from, timed.until));
        }
        for (String given : closed) {
            Timed timed = Timed.of("--closed", given);
            cases.add(new WhatIf.ClosedSite(OpenEvent.named(timed.name, event.getSites(), Site::getName, "site"),
                    timed.from, timed.until));
        }
        for (String given : dead) {
            Timed timed = Timed.of("--dead", given);
            cases.add(new WhatIf.DeadBird(OpenEvent.named(timed.name, event.getBirds(), Bird::getName, "bird"),
                    timed.from, timed.until));
        }
        for (String given : late) {
            Timed timed = Timed.of("--late", given);
            cases.add(new WhatIf.LateStart(OpenEvent.team(timed.name, event), timed.from.filter(at -> timed.until.isEmpty())
                    .orElseThrow(() -> new WrongInput("--late " + given + " does not say when the team starts.\n"
                            + "Give one instant, such as --late 2@2031-06-21T10:30Z"))));
        }
        Optional<Instant> since = Optional.ofNullable(from).map(given -> Moments.instant("--replan-from", given));
        boolean holdsOn = since.isPresent() || !cases.isEmpty();
        double worth = keep != null ? keep : holdsOn ? Replan.USUAL_KEEPING : 0;
        if (!(worth >= 0) || Double.isInfinite(worth)) {
            throw new WrongInput("--keep " + keep + " is out of range.\nGive a number from 0 up.");
        }
        return new Replan(since, worth, cases);
    }

    /** Whether somebody asked to hold on to the present plan. */
    boolean given() {
        return from != null || keep != null || !out.isEmpty() || !closed.isEmpty() || !dead.isEmpty() || !late.isEmpty();
    }

    /** A name, and after an at sign when. */
    private record Timed(String name, Optional<Instant> from, Optional<Instant> until) {

        static Timed of(String option, String given) {
            int at = given.lastIndexOf('@');
            if (at < 0) {
                return new Timed(given.strip(), Optional.empty(), Optional.empty());
            }
            String[] ends = given.substring(at + 1).split("/", -1);
            if (ends.length > 2) {
                throw new WrongInput(option + " " + given + " has more than two instants.\nGive NAME@FROM/UNTIL.");
            }
            Optional<Instant> from = end(option, ends[0]);
            Optional<Instant> until = ends.length < 2 ? Optional.empty() : end(option, ends[1]);
            if (from.isPresent() && until.isPresent() && !from.get().isBefore(until.get())) {
                throw new WrongInput(option + " " + given + " ends before it begins.\nGive NAME@FROM/UNTIL.");
            }
            return new Timed(given.substring(0, at).strip(), from, until);
        }

        private static Optional<Instant> end(String option, String text) {
            return text.isBlank() ? Optional.empty() : Optional.of(Moments.instant(option, text.strip()));
        }
    }
}
