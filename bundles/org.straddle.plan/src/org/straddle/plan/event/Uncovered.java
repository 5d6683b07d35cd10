package org.straddle.plan.event;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.straddle.model.Ban;
import org.straddle.model.Site;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.SitePass;
import org.straddle.plan.BanText;
import org.straddle.plan.SiteUse;
import org.straddle.plan.UncoveredSquare.Reason;
import org.straddle.plan.UncoveredSquare;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.search.Exchange;
import org.straddle.words.Catalogue;

/**
 * Why squares that somebody needs are not in a plan. It asks one simple question after the other and tells the first
 * that is answered with no; a square that passes them all is contested, and for it the best {@link Exchange} is sought.
 */
final class Uncovered {

    private static final Catalogue TEXTS = Catalogue.of(Uncovered.class);

    /** Worths closer than this are the same. */
    private static final double EQUAL = 1e-9;

    private final EventProblem event;
    private final PlanProblem problem;
    private final Exchange exchange;
    private final InReach reach;
    private Optional<Uncovered> withoutLimits = Optional.empty();

    private Uncovered(EventProblem event) {
        this.event = event;
        problem = event.problem();
        exchange = new Exchange(problem);
        reach = new InReach(problem, exchange);
    }

    /**
     * Most needed first.
     *
     * @param plan is bettered where an exchange turns out to bring more than it costs
     */
    static List<UncoveredSquare> of(EventProblem event, Roster plan) {
        Uncovered uncovered = new Uncovered(event);
        Map<Integer, UncoveredSquare> found = new TreeMap<>();
        for (int square = 0; square < event.problem().squareCount(); square++) {
            double needed = event.problem().wants().of(square);
            if (needed > 0 && plan.worked(square) == 0) {
                UncoveredSquare told = uncovered.told(square, plan);
                if (told.cost().orElse(0) < -EQUAL) {
                    found.clear();
                    square = -1; // the plan has become better, so all is asked anew
                } else {
                    found.put(square, told);
                }
            }
        }
        return found.values().stream().sorted(Comparator.comparingDouble(UncoveredSquare::demand).reversed()
                .thenComparing(UncoveredSquare::square)).toList();
    }

    private UncoveredSquare told(int square, Roster plan) {
        Reason reason = reason(square);
        Optional<Exchange.Way> way = reason == Reason.CONTESTED ? exchange.best(plan, square) : Optional.empty();
        way.filter(better -> better.cost() < -EQUAL).ifPresent(better -> better.applyTo(plan));
        return new UncoveredSquare(event.square(square), event.outlook().demand(event.square(square)), reason, why(square, reason, way),
                way.map(found -> OptionalDouble.of(found.cost())).orElse(OptionalDouble.empty()));
    }

    private Reason reason(int square) {
        Reason plain = plainReason(square);
        boolean mayBeBanned = (plain == Reason.NO_PASS || plain == Reason.NO_TIME) && !limitsOn(square).isEmpty();
        return mayBeBanned && withoutLimits().plainReason(square) == Reason.CONTESTED ? Reason.BANNED : plain;
    }

    private Uncovered withoutLimits() {
        if (withoutLimits.isEmpty()) {
            withoutLimits = Optional.of(new Uncovered(event.withoutLimits()));
        }
        return withoutLimits.get();
    }

    private Reason plainReason(int square) {
        if (event.usableSites(square).isEmpty()) {
            return Reason.NO_SITE;
        }
        List<Chance> chances = chances(square);
        if (chances.isEmpty()) {
            return Reason.NO_PASS;
        }
        return chances.stream().anyMatch(reach::byAnybody) ? Reason.CONTESTED : Reason.NO_TIME;
    }

    private List<Chance> chances(int square) {
        return problem.chances().stream()
                .filter(chance -> problem.squaresOfSite().get(chance.site()).contains(square)).toList();
    }

    private String why(int square, Reason reason, Optional<Exchange.Way> way) {
        return switch (reason) {
            case NO_SITE -> noSite(square);
            case NO_PASS -> noPass(square);
            case BANNED -> TEXTS.text("uncovered.banned", "bans", String.join("; ", limitsOn(square)));
            case NO_TIME -> noTime(square);
            case CONTESTED -> way.map(this::exchange).orElse(TEXTS.text("uncovered.contested"));
        };
    }

    private String noSite(int square) {
        List<Site> claiming = event.sites(square);
        return claiming.isEmpty() ? TEXTS.text("uncovered.noSite") : TEXTS.text("uncovered.unusable", "sites",
                claiming.stream().flatMap(site -> SiteUse.whyNot(event.outlook(), site, SiteText.of(site)).stream())
                        .collect(Collectors.joining("; ")));
    }

    private String noPass(int square) {
        List<SitePass> passes = event.usableSites(square).stream().map(event::site)
                .flatMap(site -> event.outlook().passes(site).stream()).filter(event::isOut).toList();
        double least = event.outlook().policies().minimumPeakElevationDeg();
        if (passes.isEmpty()) {
            return TEXTS.text("uncovered.noBird");
        }
        Optional<SitePass> highest = passes.stream().filter(pass -> !event.outlook().workable(pass.bird(), pass.pass().window()).isEmpty())
                .max(Comparator.comparingDouble(pass -> pass.pass().peakElevationDeg()));
        if (highest.isEmpty()) {
            return TEXTS.text("uncovered.notWorking");
        }
        double peak = highest.get().pass().peakElevationDeg();
        return peak < least ? TEXTS.text("uncovered.low", "bird", Naming.name(highest.get().bird()), "peak", Math.floor(peak),
                "least", least) : TEXTS.text("uncovered.short");
    }

    private String noTime(int square) {
        int shortest = Integer.MAX_VALUE;
        for (int site : event.usableSites(square)) {
            for (PlanDay day : problem.days()) {
                shortest = Math.min(shortest, problem.roads().totalSeconds(day.startPlace(), site)
                        + problem.roads().totalSeconds(site, day.endPlace()));
            }
        }
        Duration drive = Duration.ofSeconds(shortest);
        return TEXTS.text("uncovered.noTime", "drive", drive);
    }

    private String exchange(Exchange.Way way) {
        Chance turn = way.turn();
        return TEXTS.text("uncovered.exchange", "team", Naming.number(event.teams().get(problem.days().get(way.day()).team())),
                "bird", Naming.name(event.bird(turn.bird())), "site", SiteText.of(event.site(turn.site())),
                "during", event.during(event.clock().window(turn.start(), turn.end())), "cost", way.cost());
    }

    private SortedSet<String> limitsOn(int square) {
        SortedSet<String> limits = new TreeSet<>();
        for (Ban ban : event.numbers().bans().all()) {
            boolean hits = event.usableSites(square).stream().map(event::site).anyMatch(site -> event.forbidsSomethingAt(ban, site));
            if (hits) {
                limits.add(BanText.why(ban));
            }
        }
        event.usableSites(square).stream().map(event::site).forEach(site -> event.teams().forEach(team -> event.numbers().birds()
                .forEach(bird -> event.numbers().crews().why(team, site, bird).ifPresent(limits::add))));
        return limits;
    }
}
