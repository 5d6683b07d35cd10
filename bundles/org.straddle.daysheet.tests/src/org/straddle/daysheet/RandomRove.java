package org.straddle.daysheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Access;
import org.straddle.model.Allowance;
import org.straddle.model.Ban;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Link;
import org.straddle.model.OperatingPeriod;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Window;

/**
 * An invented event made by chance, the same for the same seed: a few teams, near and far sites that share squares, low
 * birds of every sort, and a plan that is right in some places and wrong in others.
 */
public final class RandomRove {

    private static final Instant MORNING = Instant.parse("2031-06-20T08:00:00Z");
    private static final String[] SQUARES = {"HP93", "HP94", "IP03", "IP04"};

    private final Random random;
    private final Event event = Fresh.event("Rove by chance (demo)");

    private RandomRove(long seed) {
        random = new Random(seed);
        event.setZone("Atlantic/Reykjavik");
        event.getPolicies().setBreakAfterMinutes(40);
        event.getPolicies().setDrivingLimitMinutes(200);
        bases();
        sites();
        birds();
        teams();
        stops();
        turns();
        bans();
    }

    public static Event of(long seed) {
        return new RandomRove(seed).event;
    }

    /** The same with people whose papers keep them from some of it. */
    public static Event withCrews(long seed) {
        RandomRove rove = new RandomRove(seed);
        rove.crews();
        return rove.event;
    }

    /** A domain with a command stack of its own. */
    public static EditingDomain domain() {
        return new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
    }

    private void bases() {
        for (int i = 0; i < 2; i++) {
            Base base = Fresh.base();
            base.setName("Base " + i);
            base.setLatitudeDeg(63.9 + 0.3 * random.nextDouble());
            base.setLongitudeDeg(-21 + random.nextDouble());
            event.getBases().add(base);
        }
    }

    private void sites() {
        for (int i = 0; i < 6; i++) {
            Site site = Fresh.site();
            site.setName("Site " + i);
            site.setLatitudeDeg(63.8 + 0.5 * random.nextDouble());
            site.setLongitudeDeg(-21 + 1.2 * random.nextDouble());
            site.getSquares().add(SQUARES[random.nextInt(SQUARES.length)]);
            event.getSites().add(site);
        }
    }

    private void birds() {
        for (int i = 0; i < 4; i++) {
            Bird bird = Fresh.bird();
            bird.setName("Tern-" + i + " (demo)");
            bird.setCatalogueNumber(90_001 + i);
            bird.setAccess(i % 2 == 0 ? Access.SINGLE_CHANNEL : Access.PASSBAND);
            bird.setState(random.nextInt(8) == 0 ? BirdState.NOT_WORKING : BirdState.WORKING);
            bird.setLitOnly(i == 3);
            if (i == 2) {
                OperatingPeriod on = StraddleFactory.eINSTANCE.createOperatingPeriod();
                on.setFrom(MORNING.plus(Duration.ofHours(2)));
                on.setUntil(MORNING.plus(Duration.ofHours(31)));
                bird.getCalendar().add(on);
            }
            bird.getElementSets().add(elements(bird.getCatalogueNumber()));
            event.getBirds().add(bird);
        }
    }

    private BirdElements elements(int number) {
        BirdElements elements = StraddleFactory.eINSTANCE.createBirdElements();
        elements.setCatalogueNumber(number);
        elements.setEpoch(MORNING);
        elements.setMeanMotionRevPerDay(13.5 + 1.2 * random.nextDouble());
        elements.setEccentricity(0.001);
        elements.setInclinationDeg(75 + 20 * random.nextDouble());
        elements.setRaanDeg(360 * random.nextDouble());
        elements.setMeanAnomalyDeg(360 * random.nextDouble());
        return elements;
    }

    private void teams() {
        for (int i = 0; i < 3; i++) {
            Team team = Fresh.team();
            team.setNumber(i + 1);
            for (int d = 0; d < 2; d++) {
                TeamDay day = Fresh.teamDay(MORNING.plus(Duration.ofHours(24L * d)).plus(minutes(60)),
                        MORNING.plus(Duration.ofHours(24L * d + 10)).plus(minutes(90)),
                        random.nextInt(5) == 0 ? null : event.getBases().get(random.nextInt(2)),
                        random.nextInt(5) == 0 ? null : event.getBases().get(random.nextInt(2)));
                team.getDays().add(day);
            }
            event.getTeams().add(team);
        }
    }

    /** The first team is one operator alone; the second lacks a licence for some birds; of the third nothing is known. */
    private void crews() {
        event.getTeams().get(0).getOperators().add(operator("Ann", "2m", "70cm"));
        event.getTeams().get(1).getOperators().addAll(List.of(operator("Bo", "70cm"), operator("Cy", "70cm")));
        Jurisdiction country = Fresh.jurisdiction();
        country.getSquares().addAll(List.of("HP94", "IP03"));
        country.setDrivingLimitMinutes(190);
        country.setBreakAfterMinutes(39);
        Allowance allowance = StraddleFactory.eINSTANCE.createAllowance();
        allowance.setLicenceClass("Full");
        allowance.getBands().add("2m");
        country.getAllowances().add(allowance);
        event.getJurisdictions().add(country);
        List<Double> uplinksMhz = List.of(145.9, 435.1, 435.2, 0.0);
        for (int i = 0; i < uplinksMhz.size(); i++) {
            Link uplink = Fresh.link(uplinksMhz.get(i), uplinksMhz.get(i));
            event.getBirds().get(i).setUplink(uplink);
        }
    }

    private Operator operator(String name, String... bands) {
        Operator operator = Fresh.operator();
        operator.setName(name);
        operator.setLicenceClass("Full");
        operator.getBands().addAll(List.of(bands));
        event.getOperators().add(operator);
        return operator;
    }

    private void stops() {
        for (Team team : event.getTeams()) {
            for (TeamDay day : team.getDays()) {
                Instant free = day.getFrom().plus(minutes(90));
                for (int i = 0; i < 3; i++) {
                    Stop stop = Fresh.stop(team, event.getSites().get(random.nextInt(event.getSites().size())), free,
                            free.plus(Duration.ofMinutes(40)).plus(minutes(120)));
                    stop.setPinned(random.nextInt(8) == 0);
                    event.getPlan().getStops().add(stop);
                    free = stop.getDeparture().plus(minutes(70)).minus(minutes(15));
                }
            }
        }
    }

    /** From passes, whole or in part, and some out of nowhere. */
    private void turns() {
        Outlook outlook = Outlook.of(event, null);
        for (Stop stop : event.getPlan().getStops()) {
            Window stay = new Window(stop.getArrival(), stop.getDeparture());
            List<SitePass> passes = new ArrayList<>(outlook.passes(stop.getSite()).stream()
                    .filter(pass -> pass.pass().window().overlaps(stay)).toList());
            for (int i = 0; i < 3 && !passes.isEmpty(); i++) {
                SitePass pass = passes.remove(random.nextInt(passes.size()));
                Turn turn = Fresh.turn();
                turn.setBird(pass.bird());
                turn.setStart(pass.pass().aos().plus(minutes(random.nextInt(3) == 0 ? 6 : 1)));
                turn.setEnd(turn.getStart().plus(Duration.ofMinutes(2)).plus(minutes(8)));
                turn.setPinned(random.nextInt(10) == 0);
                turn.setDownlinkMhz(random.nextInt(2) == 0 ? 0 : 435.1 + random.nextInt(3) / 1000.0);
                stop.getTurns().add(turn);
            }
        }
    }

    private void bans() {
        Ban ban = Fresh.ban();
        ban.setSite(event.getSites().get(random.nextInt(6)));
        ban.setFrom(MORNING.plus(minutes(600)));
        ban.setUntil(ban.getFrom().plus(Duration.ofHours(2)));
        ban.setReason("the road is closed");
        event.getPlan().getBans().add(ban);
        Ban silent = Fresh.ban();
        silent.setBird(event.getBirds().get(random.nextInt(4)));
        silent.setTeam(event.getTeams().get(random.nextInt(3)));
        event.getPlan().getBans().add(silent);
    }

    /** Up to so many, in whole seconds. */
    private Duration minutes(int most) {
        return Duration.ofSeconds(random.nextInt(Math.max(1, 60 * most)));
    }
}
