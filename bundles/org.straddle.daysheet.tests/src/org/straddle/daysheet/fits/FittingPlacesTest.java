package org.straddle.daysheet.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.check.Finding;
import org.straddle.check.Rule;
import org.straddle.check.Severity;
import org.straddle.check.run.Checks;
import org.straddle.daysheet.RandomRove;
import org.straddle.daysheet.edit.PlaceTurn;
import org.straddle.daysheet.edit.RefusedEdit;
import org.straddle.daysheet.edit.SheetEdit;
import org.straddle.model.Ban;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Snapshot;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Bans;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.sky.Window;

/**
 * What is said to fit or not, held against the rules themselves on plans made by chance: the edit is done, the event
 * checked, and the blockers that came of it are compared with the obstacles that were told, rule by rule.
 */
class FittingPlacesTest {

    /** Rules about two turns: what a stop cannot fix by going elsewhere is not held against a place. */
    private static final Set<String> PAIRS = Set.of("one-channel", "same-frequency", "turns-too-close");
    /** Wherever a stop goes, its turns have these or not. */
    private static final Set<String> OF_TURNS = Set.of("turn-without-pass", "turn-below-mask", "bird-off", "bird-unlit",
            "bird-not-working", "turn-times-wrong");

    /** Rules about who is in a team: a place in the lane of the same team cannot fix them. */
    private static final Set<String> CREWS = Stream.of(PlanRule.LONE_OPERATOR, PlanRule.LICENCE_BAND, PlanRule.LICENCE_PLACE)
            .map(PlanRule::id).collect(Collectors.toSet());

    private static final List<Rule> BLOCKING = Checks.standard().rules().stream()
            .filter(rule -> rule.severity() == Severity.BLOCKER).toList();
    private static final Set<String> RULES = BLOCKING.stream().map(Rule::id).collect(Collectors.toSet());

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void stopsAreJudgedAsTheRulesDo(long seed) throws RefusedEdit {
        Event event = RandomRove.withCrews(seed);
        Outlook outlook = Outlook.of(event, null);
        Random random = new Random(seed);
        Set<String> before = keys(blockers(event));
        int fitting = 0;
        int refused = 0;
        for (Stop stop : event.getPlan().getStops()) {
            Grip grip = Grip.values()[random.nextInt(3)];
            Carried carried = Carried.stop(outlook, stop, grip).orElseThrow();
            List<FittingPlace> places = carried.everywhere(null);
            for (Place place : places(event, carried, places, random)) {
                Landing landing = carried.land(place.team(), place.at());
                if (landing.edit().isPresent()) {
                    assertEquals(broken(event, before, stop, landing), rules(landing), stop + " to " + landing);
                }
                boolean lit = places.stream().anyMatch(p -> p.teamId().equals(landing.teamId())
                        && p.range().contains(held(carried, landing)));
                assertEquals(landing.fits(), lit, carried.grip() + " to " + landing);
                fitting += lit ? 1 : 0;
                refused += lit ? 0 : 1;
            }
        }
        assertTrue(fitting > 5 && refused > 5, fitting + " fit, " + refused + " not");
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void turnsAreJudgedAsTheRulesDo(long seed) throws RefusedEdit {
        Event event = RandomRove.withCrews(seed);
        Outlook outlook = Outlook.of(event, null);
        Random random = new Random(seed);
        Set<String> before = keys(blockers(event));
        for (Stop stop : event.getPlan().getStops()) {
            for (Turn turn : stop.getTurns()) {
                Carried carried = Carried.turn(outlook, turn, Grip.values()[random.nextInt(3)]).orElseThrow();
                List<FittingPlace> places = carried.everywhere(null);
                for (Place place : places(event, carried, places, random)) {
                    Landing landing = carried.land(place.team(), place.at());
                    if (landing.edit().isPresent()) {
                        assertEquals(broken(event, before, turn, landing), rules(landing), turn + " to " + landing);
                    }
                }
                for (FittingPlace place : places) {
                    Landing landing = carried.land(team(event, place.teamId()), place.range().first(), places,
                            Duration.ofSeconds(1));
                    assertTrue(landing.fits(), place + " gives " + landing);
                    assertTrue(carried.grip() != Grip.WHOLE || place.window().contains(landing.window()),
                            place + " gives " + landing);
                }
            }
        }
    }

    private static Instant held(Carried carried, Landing landing) {
        return carried.grip() == Grip.END ? landing.window().end() : landing.window().start();
    }

    private record Place(Team team, Instant at) {
    }

    /** The ends of places that fit, a second beyond them, and some at random. */
    private static List<Place> places(Event event, Carried carried, List<FittingPlace> fitting, Random random) {
        List<Place> places = new ArrayList<>();
        for (FittingPlace place : fitting.stream().limit(3).toList()) {
            Team team = team(event, place.teamId());
            Stream.of(place.range().first(), place.range().last(), place.range().first().minusSeconds(1),
                    place.range().last().plusSeconds(1)).forEach(at -> places.add(new Place(team, at)));
        }
        for (int i = 0; i < 3; i++) {
            places.add(new Place(event.getTeams().get(random.nextInt(3)),
                    carried.window().start().plusSeconds(random.nextInt(40_000) - 20_000L)));
        }
        return places;
    }

    private static Team team(Event event, String id) {
        return event.getTeams().stream().filter(team -> team.getId().equals(id)).findFirst().orElseThrow();
    }

    /** As far as there is a rule for it. */
    private static Set<String> rules(Landing landing) {
        return landing.obstacles().stream().map(Obstacle::rule).filter(RULES::contains)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Rules of the blockers that are about the thing, or that were not there before. */
    private static Set<String> broken(Event event, Set<String> before, Identified thing, Landing landing)
            throws RefusedEdit {
        Event copy = Snapshot.of(event);
        SheetEdit edit = landing.edit().orElseThrow();
        EditingDomain domain = RandomRove.domain();
        domain.getCommandStack().execute(edit.command(domain, copy));
        List<Finding> after = blockers(copy);
        Stream<Finding> ofCrews = after.stream().filter(finding -> CREWS.contains(finding.rule()))
                .filter(finding -> thing instanceof Turn turn ? forbidsTurn(finding, turn, landing)
                        : !landing.teamId().equals(((Stop) thing).getTeam().getId()) && forbidsStop(finding, find(copy, thing), landing));
        return Stream.concat(ofCrews, after.stream().filter(finding -> !CREWS.contains(finding.rule())).filter(finding -> !before.contains(finding.key())
                || isAbout(finding, thing.getId()) && (thing instanceof Turn || !PAIRS.contains(finding.rule()))
                || edit instanceof PlaceTurn placed && bansStopDuring(finding, placed))
                // A day that the stop has left is as long as it was, or shorter, whatever stops it names.
                .filter(finding -> !finding.rule().equals("driving-limit") || isAbout(finding, thing.getId()))
                .filter(finding -> thing instanceof Turn || !OF_TURNS.contains(finding.rule())))
                .map(Finding::rule).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stop find(Event copy, Identified stop) {
        return copy.getPlan().getStops().stream().filter(found -> found.getId().equals(stop.getId())).findFirst().orElseThrow();
    }

    /** Found once for a team and a bird, wherever and whenever the team works it. */
    private static boolean forbidsTurn(Finding finding, Turn turn, Landing landing) {
        return isAbout(finding, turn.getId())
                || isAbout(finding, landing.teamId()) && isAbout(finding, turn.getBird().getId());
    }

    private static boolean forbidsStop(Finding finding, Stop moved, Landing landing) {
        return finding.rule().equals(PlanRule.LONE_OPERATOR.id()) && isAbout(finding, landing.teamId())
                || moved.getTurns().stream().anyMatch(turn -> forbidsTurn(finding, turn, landing));
    }

    /** A ban on the whole stop is found once, at the stop; a turn that is put into it is banned all the same. */
    private static boolean bansStopDuring(Finding finding, PlaceTurn placed) {
        return finding.rule().equals("ban-broken") && isAbout(finding, placed.stopId())
                && finding.objects().stream().filter(Ban.class::isInstance).map(Ban.class::cast)
                        .anyMatch(ban -> Bans.period(ban, placed.window()).isPresent());
    }

    private static boolean isAbout(Finding finding, String id) {
        return finding.objects().stream().anyMatch(object -> object.getId().equals(id));
    }

    private static Set<String> keys(List<Finding> findings) {
        return findings.stream().map(Finding::key).collect(Collectors.toSet());
    }

    private static List<Finding> blockers(Event event) {
        return new Checks(BLOCKING).run(Outlook.of(event, null), null).stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER).toList();
    }
}
