package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.straddle.grid.Square;
import org.straddle.model.Access;
import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.Bans;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.itinerary.Sitting;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.plan.BanText;
import org.straddle.plan.Replan;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.Commitment;
import org.straddle.plan.problem.Commitments;
import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Relief;
import org.straddle.plan.problem.Stay;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * An event put as a {@link PlanProblem}, and what its numbers stand for. All judgement of what a team may
 * do lies in this room, so that ways to plan need not know any of it: which sites may be used, which passes can be
 * worked, what stays fixed, what is banned, and what an earlier plan committed.
 *
 * @param held    the turns that a new plan should hold on to, whether it can or not
 * @param problem what a search plans with
 */
record EventProblem(EventNumbers numbers, HeldTurns held, PlanProblem problem) {

    private static final Catalogue TEXTS = Catalogue.of(EventProblem.class);

    /** Of all chasers so many have to be served for an hour at the wheel: one of 200. A choice of ours. */
    private static final double CHASERS_FOR_AN_HOUR = 0.005;

    /** Every station takes its share of the power of a passband. Common practice, no source. */
    private static final int TEAMS_IN_A_PASSBAND = 2;

    /** A plan from nothing but what is pinned. */
    static EventProblem of(Outlook outlook) {
        return of(outlook, Replan.NONE);
    }

    static EventProblem of(Outlook outlook, Replan replan) {
        return of(EventNumbers.of(outlook, replan));
    }

    /** The same if nothing were banned, and every crew might do everything. */
    EventProblem withoutLimits() {
        return of(numbers.withoutLimits());
    }

    private static EventProblem of(EventNumbers numbers) {
        HeldTurns held = HeldTurns.of(numbers);
        return new EventProblem(numbers, held, problem(numbers, held));
    }

    private static PlanProblem problem(EventNumbers numbers, HeldTurns held) {
        List<Chance> chances = new ArrayList<>(EventChances.of(numbers));
        Commitments commitments = commitments(numbers.replan(), held, chances);
        return new PlanProblem(
                numbers.sites().stream().map(numbers::squaresOf).toList(),
                numbers.wants(),
                numbers.birds().stream().map(bird -> bird.getAccess() == Access.PASSBAND ? TEAMS_IN_A_PASSBAND : 1).toList(),
                numbers.days(), chances, numbers.kept().stream().map(numbers::fixed).toList(), numbers.places().roads(),
                numbers.times(), CHASERS_FOR_AN_HOUR * chasers(numbers),
                ForbiddenTimes.of(numbers),
                commitments).with(relief(numbers));
    }

    private static Relief relief(EventNumbers numbers) {
        return new Relief(EventChances.clockSeconds(HoldFigures.of(numbers.outlook().event().getPolicies()).longestStop()),
                EventChances.clockSeconds(Sitting.AWAY));
    }

    private static double chasers(EventNumbers numbers) {
        return numbers.worth().groups().stream().mapToDouble(group -> group.needs().chasers()).sum();
    }

    /** What is to be held on to becomes a chance of its day, as it is, if it can be worked. */
    private static Commitments commitments(Replan replan, HeldTurns held, List<Chance> chances) {
        if (replan.keeping() == 0) {
            return Commitments.NONE;
        }
        List<Commitment> commitments = held.all().stream().flatMap(turn -> turn.ways().stream()).toList();
        Set<Chance> known = new HashSet<>(chances);
        commitments.stream().map(Commitment::chance).filter(known::add).forEach(chances::add);
        return new Commitments(commitments);
    }

    /** What forbids a turn, with the time to set up and take down; empty when nothing does. */
    Optional<String> whyForbidden(Team team, Site site, Bird bird, Window window) {
        Bans bans = numbers.bans();
        Window station = StationUp.of(outlook().policies()).around(window);
        return Stream.concat(bans.onTurn(team, site, bird, window).stream(), bans.onStop(team, site, station).stream())
                .findFirst().map(BanText::why).or(() -> numbers.crews().why(team, site, bird));
    }

    /** What is left to say of a turn that nobody works and that nothing forbids. */
    static String whyNotWorked(boolean canBeWorked) {
        return TEXTS.text("turn.notWorked", "possible", canBeWorked);
    }

    /** A time in a sentence, to the minute. */
    String during(Window window) {
        return TimeText.of(outlook().zone()).minutes(window.start(), window.end());
    }

    Replan replan() {
        return numbers.replan();
    }

    /** What the crews of the teams rule out. */
    CrewLimits crews() {
        return numbers.crews();
    }

    Outlook outlook() {
        return numbers.outlook();
    }

    ProblemClock clock() {
        return numbers.clock();
    }

    Site site(int index) {
        return numbers.sites().get(index);
    }

    Bird bird(int index) {
        return numbers.birds().get(index);
    }

    List<Team> teams() {
        return numbers.teams();
    }

    /** The team of a stay that lies on a day. */
    Team teamOf(Stay stay) {
        return teams().get(problem.days().get(stay.day()).team());
    }

    Square square(int index) {
        return numbers.squares().get(index);
    }

    /** Sites that claim a square and may be used, by index. */
    List<Integer> usableSites(int square) {
        return IntStream.range(0, numbers.sites().size()).filter(numbers.usable()::get)
                .filter(site -> problem.squaresOfSite().get(site).contains(square)).boxed().toList();
    }

    /** Sites that claim a square, whether they may be used or not. */
    List<Site> sites(int square) {
        return numbers.sites().stream().filter(site -> outlook().squares(site).contains(square(square))).toList();
    }

    /** Whether a pass may be worked by some team's day, as far as time goes. */
    boolean isOut(SitePass pass) {
        return problem.days().stream()
                .anyMatch(day -> clock().window(day.from(), day.until()).overlaps(pass.pass().window()));
    }

    /** Whether a ban, in its period, keeps some team from a site or from a bird there. */
    boolean forbidsSomethingAt(Ban ban, Site site) {
        return teams().stream().anyMatch(team -> Bans.forbidsStop(ban, team, site)
                || numbers.birds().stream().anyMatch(bird -> Bans.forbidsTurn(ban, team, site, bird)));
    }

    /** The stop that a fixed stay of the problem stands for. */
    KeptStop kept(FixedStay fixed) {
        for (int i = 0; i < numbers.kept().size(); i++) {
            if (problem.fixed().get(i) == fixed) {
                return numbers.kept().get(i);
            }
        }
        throw new IllegalArgumentException("not of this event: " + fixed);
    }
}
