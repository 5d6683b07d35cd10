package org.straddle.worth;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Operator;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;

/** An event on the equator with one bird that always stands above it, written down stop by stop. Times are minutes of a day. */
final class PlanOnPaper {

    static final LocalDate DAY = LocalDate.of(2031, 6, 21);
    private static final Instant MIDNIGHT = Instant.parse("2031-06-21T00:00:00Z");
    private static final double OVER_DEG = 10;

    final Event event = Fresh.event("Paper", "UTC", DAY, DAY);
    private final Base base = Fresh.base();
    private int teams;

    PlanOnPaper() {
        event.getPolicies().setRoadSpeedKmh(60);
        event.getPolicies().setDetourFactor(1);
        base.setLatitudeDeg(0.001);
        base.setLongitudeDeg(OVER_DEG);
        event.getBases().add(base);
        event.setPlan(Fresh.plan());
        for (String name : List.of("Ann", "Bo")) {
            Operator operator = Fresh.operator();
            operator.setName(name);
            event.getOperators().add(operator);
        }
        Bird bird = Fresh.bird();
        bird.setName("Still");
        bird.setState(BirdState.WORKING);
        bird.setCatalogueNumber(1);
        bird.getElementSets().add(still(OVER_DEG, 1));
        event.getBirds().add(bird);
    }

    Team team() {
        Team team = Fresh.team();
        team.setNumber(++teams);
        team.getOperators().addAll(event.getOperators());
        TeamDay day = Fresh.teamDay(at(300), at(1380), base, null);
        team.getDays().add(day);
        event.getTeams().add(team);
        return team;
    }

    /** @param km east of the base: a minute of drive each; ready papers lie there */
    Site site(String name, double km, String... squares) {
        Site site = Fresh.site();
        site.setName(name);
        site.setLatitudeDeg(0.001);
        // a degree of the equator is 111.31949 km (WGS 84)
        site.setLongitudeDeg(OVER_DEG + km / 111.31949);
        site.getSquares().addAll(java.util.List.of(squares));
        papers(site, DAY);
        event.getSites().add(site);
        return site;
    }

    /** A visit, and a review that two signed. @param day on which they hold */
    static void papers(Site site, LocalDate day) {
        Visit visit = Fresh.visit();
        visit.setDate(day.minusDays(20));
        site.getVisits().add(visit);
        Review review = Fresh.review();
        review.setDate(day.minusDays(10));
        review.setReviewer("Ann");
        review.setSignedAt(day.minusDays(10).atStartOfDay(ZoneOffset.UTC).toInstant());
        review.setSecond("Bo");
        review.setSecondAt(day.minusDays(9).atStartOfDay(ZoneOffset.UTC).toInstant());
        site.getReviews().add(review);
    }

    /** @param starts of turns of ten minutes */
    Stop stop(Team team, Site site, int arrival, int departure, int... starts) {
        Stop stop = Fresh.stop(team, site, at(arrival), at(departure));
        for (int start : starts) {
            Turn turn = Fresh.turn(event.getBirds().get(0), at(start), at(start + 10));
            stop.getTurns().add(turn);
        }
        event.getPlan().getStops().add(stop);
        return stop;
    }

    ExpectedPlan expected() {
        return ExpectedPlan.of(EventWorth.of(Outlook.of(event, null)));
    }

    static Instant at(int minute) {
        return MIDNIGHT.plus(Duration.ofMinutes(minute));
    }

    /** Elements of a bird that stands still above a longitude from that day on. Greenwich sidereal time: linear terms of IAU 1982, from memory. */
    static BirdElements still(double longitudeDeg, int number) {
        BirdElements elements = StraddleFactory.eINSTANCE.createBirdElements();
        Instant noon = at(720);
        double days = Duration.between(Instant.parse("2000-01-01T12:00:00Z"), noon).toSeconds() / 86_400.0;
        double meanAnomalyDeg = longitudeDeg + 280.46062 + 360.98564737 * days;
        elements.setCatalogueNumber(number);
        elements.setEpoch(noon);
        elements.setMeanMotionRevPerDay(1.00273790935);
        elements.setEccentricity(0.0001);
        elements.setInclinationDeg(0.01);
        elements.setMeanAnomalyDeg(meanAnomalyDeg - 360 * Math.floor(meanAnomalyDeg / 360));
        return elements;
    }
}
