package org.straddle.plan.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.check.run.Checks;
import org.straddle.model.Access;
import org.straddle.model.Allowance;
import org.straddle.model.Ban;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.HorizonPoint;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Link;
import org.straddle.model.OperatingPeriod;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.plan.PlanSettings;

/**
 * The planner knows every rule that a plan may not break. For each rule there is something that makes an event harder:
 * added after planning, it makes the plan break the rule; planned again, the plan keeps to it.
 */
class KeptRulesTest {

    private static final EditingDomain DOMAIN =
            new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());

    private static final int MOST_EVENTS = 40;

    /** Low birds cross the shadow of the Earth then; in June at 64°N they hardly do. */
    private static final LocalDate MIDWINTER = LocalDate.of(2031, 12, 21);

    /** Rules that two teams can only break on a bird that has room for both. */
    private static final Set<PlanRule> SHARED = EnumSet.of(PlanRule.ONE_CHANNEL, PlanRule.SAME_FREQUENCY);

    private static final Map<PlanRule, Consumer<Event>> HARDER = new EnumMap<>(PlanRule.class);

    static {
        HARDER.put(PlanRule.STOPS_OVERLAP, event -> pinned(event, 0, event.getSites().get(0)));
        HARDER.put(PlanRule.SAME_SITE, event -> pinned(event, 1, event.getSites().get(0)));
        HARDER.put(PlanRule.SAME_SQUARE, event -> pinned(event, 1, beside(event, event.getSites().get(0))));
        HARDER.put(PlanRule.STOP_OUTSIDE_DAY, event -> event.getTeams().forEach(team -> team.getDays()
                .forEach(KeptRulesTest::shorten)));
        HARDER.put(PlanRule.BAN_BROKEN, event -> {
            Ban ban = Fresh.ban();
            ban.setBird(event.getBirds().get(0));
            event.getPlan().getBans().add(ban);
        });
        HARDER.put(PlanRule.DRIVE_TOO_LONG, event -> event.getPolicies().setRoadSpeedKmh(20));
        HARDER.put(PlanRule.DRIVING_LIMIT, event -> event.getPolicies().setDrivingLimitMinutes(45));
        HARDER.put(PlanRule.TURN_BEFORE_SET_UP, event -> event.getPolicies().setSetUpMinutes(40));
        HARDER.put(PlanRule.TURN_AFTER_TAKE_DOWN, event -> event.getPolicies().setTakeDownMinutes(40));
        HARDER.put(PlanRule.TURNS_TOO_CLOSE, event -> event.getPolicies().setTurnGapMinutes(90));
        HARDER.put(PlanRule.TURN_WITHOUT_PASS, event -> event.getSites().forEach(site -> mask(site, 60)));
        HARDER.put(PlanRule.TURN_BELOW_MASK, event -> event.getSites().forEach(site -> mask(site, 8)));
        HARDER.put(PlanRule.ONE_CHANNEL, event -> event.getBirds().forEach(bird -> bird.setAccess(Access.SINGLE_CHANNEL)));
        HARDER.put(PlanRule.BIRD_NOT_WORKING, event -> event.getBirds().get(0).setState(BirdState.NOT_WORKING));
        HARDER.put(PlanRule.BIRD_OFF, event -> {
            OperatingPeriod period = StraddleFactory.eINSTANCE.createOperatingPeriod();
            period.setUntil(event.getTeams().get(0).getDays().get(0).getFrom());
            event.getBirds().forEach(bird -> {
                bird.getCalendar().clear();
                bird.getCalendar().add(EcoreUtil.copy(period));
            });
        });
        HARDER.put(PlanRule.BIRD_UNLIT, event -> event.getBirds().forEach(bird -> bird.setLitOnly(true)));
        HARDER.put(PlanRule.TURN_OUTSIDE_STOP, event -> event.getPlan().getStops().forEach(stop -> {
            stop.setPinned(true);
            stop.setDeparture(stop.getArrival().plus(Duration.between(stop.getArrival(), stop.getDeparture()).dividedBy(2)));
        }));
        HARDER.put(PlanRule.SAME_FREQUENCY, event -> event.getPlan().getStops().forEach(stop -> stop.getTurns()
                .forEach(turn -> turn.setDownlinkMhz(turn.getBird().getDownlink().getLowMhz()))));
        HARDER.put(PlanRule.LONE_OPERATOR, event -> {
            Team team = event.getTeams().get(0);
            EcoreUtil.delete(team.getOperators().remove(1));
        });
        HARDER.put(PlanRule.LICENCE_BAND, event -> event.getTeams().get(0).getOperators()
                .forEach(operator -> operator.getBands().remove("2m")));
        HARDER.put(PlanRule.LICENCE_PLACE, event -> {
            Jurisdiction country = Fresh.jurisdiction();
            Allowance allowance = StraddleFactory.eINSTANCE.createAllowance();
            allowance.setLicenceClass("Full");
            allowance.getBands().add("70cm");
            country.getAllowances().add(allowance);
            country.getSquares().addAll(event.getSites().get(0).getSquares());
            event.getJurisdictions().add(country);
        });
    }

    @Test
    void everyRuleIsTried() {
        Set<PlanRule> unknown = EnumSet.allOf(PlanRule.class);
        unknown.removeAll(HARDER.keySet());
        assertEquals(EnumSet.noneOf(PlanRule.class), unknown, "nobody tried whether the planner knows these");
    }

    @Test
    void whatBreaksAFinishedPlanIsKeptToByANewOne() {
        Set<PlanRule> neverBroken = EnumSet.noneOf(PlanRule.class);
        Set<PlanRule> unknown = EnumSet.noneOf(PlanRule.class);
        HARDER.forEach((rule, harder) -> {
            boolean isBroken = false;
            for (long seed = 0; seed < MOST_EVENTS && !isBroken; seed++) {
                Event event = event(rule, seed);
                plan(event, seed);
                harder.accept(event);
                isBroken = breaks(event, rule);
                plan(event, seed);
                if (breaks(event, rule)) {
                    unknown.add(rule);
                }
            }
            if (!isBroken) {
                neverBroken.add(rule);
            }
        });
        assertEquals(Set.of(), unknown, "the planner knows nothing of these");
        assertEquals(Set.of(), neverBroken, "the test tries nothing of these");
    }

    /** The event allows five hours, and a plan uses more than the one hour that the country allows on whose ground some sites lie. */
    @Test
    void theDrivingLimitOfACountryThatTeamsCanReachIsKeptTo() {
        int broken = 0;
        for (long seed = 0; seed < MOST_EVENTS && broken < 2; seed++) {
            Event event = event(PlanRule.DRIVING_LIMIT, seed);
            plan(event, seed);
            Jurisdiction country = Fresh.jurisdiction();
            country.getSquares().addAll(event.getSites().get(0).getSquares());
            country.setDrivingLimitMinutes(60);
            event.getJurisdictions().add(country);
            if (breaks(event, PlanRule.DRIVING_LIMIT)) {
                broken++;
                plan(event, seed);
                assertFalse(breaks(event, PlanRule.DRIVING_LIMIT), "seed " + seed);
            }
        }
        assertTrue(broken > 0, "the test tries nothing");
    }

    /** Two teams, one day, with room for what makes it harder. */
    private static Event event(PlanRule rule, long seed) {
        Event event = rule == PlanRule.BIRD_UNLIT ? RandomEvent.of(seed, 2, 1, 4, 4, MIDWINTER)
                : RandomEvent.of(seed, 2, 1, 4, 4);
        event.getBirds().forEach(bird -> {
            bird.setState(BirdState.WORKING);
            bird.getCalendar().clear();
            bird.setLitOnly(false);
            bird.setAccess(SHARED.contains(rule) ? Access.PASSBAND : Access.SINGLE_CHANNEL);
            bird.setUplink(link(145.95, 145.98));
            bird.setDownlink(link(435.1, 435.13));
        });
        event.getTeams().forEach(team -> {
            team.getOperators().clear();
            team.getOperators().addAll(List.of(operator(event), operator(event)));
        });
        return event;
    }

    private static Link link(double lowMhz, double highMhz) {
        return Fresh.link(lowMhz, highMhz);
    }

    private static Operator operator(Event event) {
        Operator operator = Fresh.operator();
        operator.setLicenceClass("Full");
        operator.getBands().addAll(List.of("2m", "70cm"));
        event.getOperators().add(operator);
        return operator;
    }

    private static void plan(Event event, long seed) {
        DOMAIN.getCommandStack().execute(ApplyProposal.command(DOMAIN, event, new NeighbourhoodPlanner().propose(
                Outlook.of(event, null), PlanSettings.ofIterations(5, seed), new NullProgressMonitor())));
    }

    private static boolean breaks(Event event, PlanRule rule) {
        return Checks.standard().run(Outlook.of(event, null), new NullProgressMonitor()).stream()
                .anyMatch(finding -> finding.rule().equals(rule.id()));
    }

    /** A stop that stays, in the middle of the team's day. */
    private static void pinned(Event event, int team, Site site) {
        TeamDay day = event.getTeams().get(team).getDays().get(0);
        Duration third = Duration.between(day.getFrom(), day.getUntil()).dividedBy(3);
        Stop stop = Fresh.stop(event.getTeams().get(team), site, day.getFrom().plus(third), day.getUntil().minus(third));
        stop.setPinned(true);
        event.getPlan().getStops().add(stop);
    }

    /** Another site in the same squares. */
    private static Site beside(Event event, Site site) {
        Site beside = Fresh.site();
        beside.setLatitudeDeg(site.getLatitudeDeg());
        beside.setLongitudeDeg(site.getLongitudeDeg());
        beside.setMarkErrorM(1);
        beside.getSquares().addAll(site.getSquares());
        event.getSites().add(beside);
        return beside;
    }

    private static void shorten(TeamDay day) {
        Duration third = Duration.between(day.getFrom(), day.getUntil()).dividedBy(3);
        day.setFrom(day.getFrom().plus(third));
        day.setUntil(day.getUntil().minus(third));
    }

    private static void mask(Site site, double elevationDeg) {
        for (double azimuthDeg : new double[] {0, 90, 180, 270}) {
            HorizonPoint point = StraddleFactory.eINSTANCE.createHorizonPoint();
            point.setAzimuthDeg(azimuthDeg);
            point.setElevationDeg(elevationDeg);
            site.getHorizon().add(point);
        }
    }

    /** What a plan should not do, made harder: here too a new plan keeps to it. */
    private static final Map<CareRule, Consumer<Event>> CAREFUL = new EnumMap<>(CareRule.class);

    static {
        CAREFUL.put(CareRule.TIME_IN_HAND, event -> event.getPolicies().setInHandMinutes(25));
        CAREFUL.put(CareRule.DUTY_TOO_LONG, event -> event.getPolicies().setLongestDutyMinutes(240));
        CAREFUL.put(CareRule.REST_TOO_SHORT, event -> event.getPolicies().setLeastRestMinutes(18 * 60));
        CAREFUL.put(CareRule.MEAL_MISSING, event -> event.getPolicies().setMealMinutes(150));
        CAREFUL.put(CareRule.RELIEF_MISSING, event -> event.getPolicies().setLongestStopMinutes(120));
    }

    /** These a plan may break: nothing in a search counts them. */
    private static final Set<CareRule> NOT_PLANNED = EnumSet.of(CareRule.TURN_MAY_SLIP);

    @Test
    void aPlanIsAsCarefulAsThePolicies() {
        Set<CareRule> known = EnumSet.copyOf(NOT_PLANNED);
        known.addAll(CAREFUL.keySet());
        assertEquals(EnumSet.allOf(CareRule.class), known);
        Set<CareRule> neverBroken = EnumSet.noneOf(CareRule.class);
        Set<String> unknown = new TreeSet<>();
        CAREFUL.forEach((rule, harder) -> {
            boolean isBroken = false;
            for (long seed = 0; seed < MOST_EVENTS && !isBroken; seed++) {
                Event after = careful(seed);
                plan(after, seed);
                harder.accept(after);
                isBroken = finds(after, rule.id());
                Event before = careful(seed);
                harder.accept(before);
                plan(before, seed);
                if (finds(before, rule.id())) {
                    unknown.add(rule + " of seed " + seed);
                }
            }
            if (!isBroken) {
                neverBroken.add(rule);
            }
        });
        assertEquals(Set.of(), unknown, "the planner knows nothing of these");
        assertEquals(Set.of(), neverBroken, "the test tries nothing of these");
    }

    private static Event careful(long seed) {
        Event event = RandomEvent.of(seed, 2, 2, 4, 6);
        event.getBirds().forEach(bird -> {
            bird.setState(BirdState.WORKING);
            bird.getCalendar().clear();
        });
        return event;
    }

    private static boolean finds(Event event, String rule) {
        return Checks.standard().run(Outlook.of(event, null), new NullProgressMonitor()).stream()
                .anyMatch(finding -> finding.rule().equals(rule));
    }
}
