package org.straddle.cli;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Event;
import org.straddle.plan.Replan;
import org.straddle.plan.WhatIf;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Option;

/** How a new plan is to hold on to the present one, and what it has to make room for. */
final class WhatIfOptions {

    private static final Catalogue TEXTS = Catalogue.of(WhatIfOptions.class);

    @Option(names = "--replan-from", paramLabel = "INSTANT")
    private String from;

    @Option(names = "--keep", paramLabel = "WORTH")
    private Double keep;

    @Option(names = "--stopped", paramLabel = "TEAM[@FROM[/UNTIL]]")
    private List<String> stopped = new ArrayList<>();

    @Option(names = "--closed", paramLabel = "SITE[@FROM[/UNTIL]]")
    private List<String> closed = new ArrayList<>();

    @Option(names = "--silent", paramLabel = "BIRD[@FROM[/UNTIL]]")
    private List<String> silent = new ArrayList<>();

    @Option(names = "--late", paramLabel = "TEAM@INSTANT")
    private List<String> late = new ArrayList<>();

    /** @throws WrongInput when something named is not there, or a time cannot be read */
    Replan of(Event event) {
        List<WhatIf> cases = new ArrayList<>();
        for (String given : stopped) {
            Timed timed = Timed.of("--stopped", given);
            cases.add(new WhatIf.Breakdown(OpenEvent.team(timed.name, event), timed.from, timed.until));
        }
        for (String given : closed) {
            Timed timed = Timed.of("--closed", given);
            cases.add(new WhatIf.ClosedSite(OpenEvent.site(timed.name, event),
                    timed.from, timed.until));
        }
        for (String given : silent) {
            Timed timed = Timed.of("--silent", given);
            cases.add(new WhatIf.DeadBird(OpenEvent.bird(timed.name, event),
                    timed.from, timed.until));
        }
        for (String given : late) {
            Timed timed = Timed.of("--late", given);
            cases.add(new WhatIf.LateStart(OpenEvent.team(timed.name, event), timed.from.filter(at -> timed.until.isEmpty())
                    .orElseThrow(() -> new WrongInput(TEXTS.text("whatIfOptions.lateDoesNot", "given", given)))));
        }
        Optional<Instant> since = Optional.ofNullable(from).map(given -> Moments.instant("--replan-from", given));
        boolean holdsOn = since.isPresent() || !cases.isEmpty();
        double worth = keep != null ? keep : holdsOn ? Replan.USUAL_KEEPING : 0;
        if (!(worth >= 0) || Double.isInfinite(worth)) {
            throw new WrongInput(TEXTS.text("whatIfOptions.keepOutRange", "keep", keep));
        }
        return new Replan(since, worth, cases);
    }

    /** Whether somebody asked to hold on to the present plan. */
    boolean given() {
        return from != null || keep != null || !stopped.isEmpty() || !closed.isEmpty() || !silent.isEmpty() || !late.isEmpty();
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
                throw new WrongInput(TEXTS.text("whatIfOptions.hasMoreThan", "option", option, "given", given));
            }
            Optional<Instant> from = end(option, ends[0]);
            Optional<Instant> until = ends.length < 2 ? Optional.empty() : end(option, ends[1]);
            if (from.isPresent() && until.isPresent() && !from.get().isBefore(until.get())) {
                throw new WrongInput(TEXTS.text("whatIfOptions.endsBeforeBegins", "option", option, "given", given));
            }
            return new Timed(given.substring(0, at).strip(), from, until);
        }

        private static Optional<Instant> end(String option, String text) {
            return text.isBlank() ? Optional.empty() : Optional.of(Moments.instant(option, text.strip()));
        }
    }
}
