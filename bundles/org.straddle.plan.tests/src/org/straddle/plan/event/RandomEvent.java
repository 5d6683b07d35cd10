package org.straddle.plan.event;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.model.Access;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.BirdState;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.OperatingPeriod;
import org.straddle.model.Operator;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.model.Verdict;

/** Invented events around 64°N 20°W, the same for the same seed but for the ids of their things. */
final class RandomEvent {

    private static final LocalDate MIDSUMMER = LocalDate.of(2031, 6, 21);

    private final Random random;
    private final Event event = Fresh.event("Invented");

    private final LocalDate firstDay;

    private RandomEvent(long seed, LocalDate firstDay) {
        random = new Random(seed);
        this.firstDay = firstDay;
    }

    static Event of(long seed, int teams, int days, int sites, int birds) {
        return of(seed, teams, days, sites, birds, MIDSUMMER);
    }

    static Event of(long seed, int teams, int days, int sites, int birds, LocalDate firstDay) {
        RandomEvent made = new RandomEvent(seed, firstDay);
        made.event.setFirstDay(firstDay);
        made.event.setLastDay(firstDay.plusDays(days - 1));
        made.event.setZone("Atlantic/Reykjavik");
        for (int i = 0; i < 2; i++) {
            made.addBase();
        }
        for (int i = 0; i < sites; i++) {
            made.addSite(i);
        }
        for (int i = 0; i < birds; i++) {
            made.addBird(i);
        }
        for (int i = 0; i < teams; i++) {
            made.addTeam(i, days);
        }
        made.addDemands();
        return made.event;
    }

    /** Pins some stops and turns of the plan, and lets some stops be pinned only through a turn. */
    static void pinSome(Event event, long seed) {
        Random random = new Random(seed);
        for (Stop stop : event.getPlan().getStops()) {
            stop.setPinned(random.nextInt(6) == 0);
            for (Turn turn : stop.getTurns()) {
                turn.setPinned(random.nextInt(8) == 0);
            }
        }
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private void addBase() {
        Base base = Fresh.base();
        base.setLatitudeDeg(between(63.5, 65.5));
        base.setLongitudeDeg(between(-22.5, -17.5));
        event.getBases().add(base);
    }

    /** Inside a square, or on the line at 20°W between two. */
    private void addSite(int number) {
        Site site = Fresh.site();
        boolean onLine = random.nextInt(4) == 0;
        site.setName("Site " + number);
        site.setLatitudeDeg(between(63.5, 65.5));
        site.setLongitudeDeg(onLine ? -20 : between(-22.5, -17.5));
        site.setMarkErrorM(1);
        double latitude = site.getLatitudeDeg();
        for (double longitude : onLine ? List.of(-20.5, -19.5) : List.of(site.getLongitudeDeg())) {
            site.getSquares().add(Square.of(new GeoPosition(latitude, longitude)).name());
        }
        Visit visit = Fresh.visit();
        visit.setDate(firstDay.minusDays(11));
        site.getVisits().add(visit);
        Review review = Fresh.review();
        review.setReviewer("Q0AAR");
        review.setDate(firstDay.minusDays(10));
        review.setSecond("Q3DUN");
        review.setSecondAt(firstDay.minusDays(10).atTime(18, 0).toInstant(ZoneOffset.UTC));
        review.setVerdict(random.nextInt(8) == 0 ? Verdict.DO_NOT_USE : Verdict.GO_WITH_CARE);
        site.getReviews().add(review);
        event.getSites().add(site);
    }

    private void addBird(int number) {
        Bird bird = Fresh.bird();
        bird.setName("Bird " + number + " (demo)");
        bird.setCatalogueNumber(number + 1);
        bird.setAccess(random.nextInt(3) == 0 ? Access.PASSBAND : Access.SINGLE_CHANNEL);
        bird.setState(random.nextInt(8) == 0 ? BirdState.NOT_WORKING : BirdState.WORKING);
        bird.setLitOnly(random.nextInt(5) == 0);
        if (random.nextInt(5) == 0) {
            OperatingPeriod period = StraddleFactory.eINSTANCE.createOperatingPeriod();
            period.setFrom(at(0, 9 * 60 + 13));
            period.setUntil(at(1, 15 * 60 + 2));
            bird.getCalendar().add(period);
        }
        BirdElements elements = StraddleFactory.eINSTANCE.createBirdElements();
        elements.setCatalogueNumber(number + 1);
        elements.setEpoch(at(0, 0));
        elements.setMeanMotionRevPerDay(between(12.6, 15.2));
        elements.setEccentricity(0.001);
        elements.setInclinationDeg(between(60, 99));
        elements.setRaanDeg(between(0, 360));
        elements.setMeanAnomalyDeg(between(0, 360));
        bird.getElementSets().add(elements);
        event.getBirds().add(bird);
    }

    private void addTeam(int number, int days) {
        Team team = Fresh.team();
        if (number == 0) {
            sign(team);
        }
        team.setName("Team " + (number + 1));
        team.setNumber(number + 1);
        for (int day = 0; day < days; day++) {
            int from = 6 * 60 + random.nextInt(180);
            TeamDay out = Fresh.teamDay(at(day, from), at(day, from + 300 + random.nextInt(480)),
                    event.getBases().get(random.nextInt(2)), event.getBases().get(random.nextInt(2)));
            team.getDays().add(out);
        }
        event.getTeams().add(team);
    }

    /** People of the first team signed the reviews. */
    private void sign(Team team) {
        for (String call : List.of("Q0AAR", "Q3DUN")) {
            Operator operator = Fresh.operator();
            operator.setCallSign(call);
            event.getOperators().add(operator);
            team.getOperators().add(operator);
        }
        event.getSites().forEach(site -> site.getReviews().get(0).setTeam(team));
    }

    private void addDemands() {
        event.getSites().stream().flatMap(site -> site.getSquares().stream()).distinct().sorted().forEach(square -> {
            Demand demand = StraddleFactory.eINSTANCE.createDemand();
            demand.setSquare(square);
            demand.setSharePercent(random.nextInt(101));
            event.getDemands().add(demand);
        });
        Demand nowhere = StraddleFactory.eINSTANCE.createDemand();
        nowhere.setSquare("HP99");
        nowhere.setSharePercent(50);
        event.getDemands().add(nowhere);
    }

    private Instant at(int day, int minute) {
        return firstDay.plusDays(day).atStartOfDay().toInstant(ZoneOffset.UTC).plusSeconds(60L * minute);
    }
}
