package org.straddle.plan.event;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
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
import org.straddle.model.Operator;
import org.straddle.model.Region;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Verdict;

/**
 * Invented events of a given size, the same for the same seed. Sites lie in a block of whole squares, one to
 * a square on average: half of them inside one, a third on a line, a sixth on a corner. Every team has a base
 * of its own and is out for about eleven hours a day. Birds fly circular low orbits; two thirds have a single
 * channel. Policies are the model's defaults.
 */
public final class SyntheticEvent {

    /** How much of everything. */
    public enum Size {
        SMALL(3, 2, 25, 6, 4, 30), MEDIUM(5, 3, 60, 9, 7, 30), LARGE(10, 4, 150, 14, 11, 30),
        /** As large, in half the space and with few birds: teams are in each other's way. */
        CROWDED(10, 4, 150, 10, 7, 6);

        private final int teams;
        private final int days;
        private final int sites;
        private final int columns;
        private final int rows;
        private final int birds;

        Size(int teams, int days, int sites, int columns, int rows, int birds) {
            this.teams = teams;
            this.days = days;
            this.sites = sites;
            this.columns = columns;
            this.rows = rows;
            this.birds = birds;
        }

        @Override
        public String toString() {
            return "%s (%d teams, %d days, %d sites, %d birds)".formatted(name().toLowerCase(), teams, days, sites, birds);
        }
    }

    private static final LocalDate DAY = LocalDate.of(2031, 6, 21);
    private static final int WEST_DEG = 4;
    private static final int SOUTH_DEG = 45;
    private static final int COLUMN_DEG = 2;

    /** Operators of the event, of no team. */
    private static final String FIRST_SIGNER = "Q0AAR";
    private static final String SECOND_SIGNER = "Q0AAS";

    private final Size size;
    private final Random random;
    private final Event event = Fresh.event("Invented");

    private SyntheticEvent(Size size, long seed) {
        this.size = size;
        random = new Random(seed);
    }

    public static Event of(Size size, long seed) {
        SyntheticEvent made = new SyntheticEvent(size, seed);
        made.event.setFirstDay(DAY);
        made.event.setLastDay(DAY.plusDays(size.days - 1));
        made.event.setZone("UTC");
        made.addOperator(FIRST_SIGNER);
        made.addOperator(SECOND_SIGNER);
        for (int i = 0; i < size.sites; i++) {
            made.addSite(i);
        }
        for (int i = 0; i < size.birds; i++) {
            made.addBird(i);
        }
        for (int i = 0; i < size.teams; i++) {
            made.addTeam(i);
        }
        made.addDemands();
        made.addRegion("West", 40, "POLYGON((-10 41, -10 56, 0 56, 0 41, -10 41))");
        made.addRegion("North", 25, "POLYGON((5 55, 5 66, 16 66, 16 55, 5 55))");
        made.addRegion("East", 20, "POLYGON((20 44, 20 55, 36 55, 36 44, 20 44))");
        made.addRegion("South", 15, "POLYGON((7 36, 7 45, 18 45, 18 36, 7 36))");
        return made.event;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double anyLatitude() {
        return between(SOUTH_DEG + 0.1, SOUTH_DEG + size.rows - 0.1);
    }

    private double anyLongitude() {
        return between(WEST_DEG + 0.1, WEST_DEG + COLUMN_DEG * size.columns - 0.1);
    }

    private double anyMeridian() {
        return WEST_DEG + COLUMN_DEG * (1 + random.nextInt(size.columns - 1));
    }

    private double anyParallel() {
        return SOUTH_DEG + 1 + random.nextInt(size.rows - 1);
    }

    private void addSite(int number) {
        Site site = Fresh.site();
        int kind = random.nextInt(6);
        boolean onMeridian = kind == 0 || kind == 1;
        boolean onParallel = kind == 0 || kind == 2;
        site.setName("Site " + (number + 1));
        site.setLatitudeDeg(onParallel ? anyParallel() : anyLatitude());
        site.setLongitudeDeg(onMeridian ? anyMeridian() : anyLongitude());
        site.setMarkErrorM(1);
        for (double east : onMeridian ? List.of(-0.5, 0.5) : List.of(0.0)) {
            for (double north : onParallel ? List.of(-0.5, 0.5) : List.of(0.0)) {
                site.getSquares().add(Square.of(
                        new GeoPosition(site.getLatitudeDeg() + north, site.getLongitudeDeg() + east)).name());
            }
        }
        if (number % 3 > 0) { // the others are not ready
            Visit visit = Fresh.visit();
            visit.setDate(DAY.minusDays(14));
            site.getVisits().add(visit);
        }
        Review review = Fresh.review();
        review.setReviewer(FIRST_SIGNER);
        review.setSecond(SECOND_SIGNER);
        review.setSecondAt(at(-9, 0));
        review.setDate(DAY.minusDays(10));
        review.setVerdict(Verdict.GO_WITH_CARE);
        site.getReviews().add(review);
        event.getSites().add(site);
    }

    private void addOperator(String callSign) {
        Operator operator = Fresh.operator();
        operator.setCallSign(callSign);
        event.getOperators().add(operator);
    }

    private void addBird(int number) {
        Bird bird = Fresh.bird();
        bird.setName("Bird " + (number + 1) + " (demo)");
        bird.setCatalogueNumber(number + 1);
        bird.setAccess(number % 3 == 0 ? Access.PASSBAND : Access.SINGLE_CHANNEL);
        bird.setState(random.nextInt(4) == 0 ? BirdState.UNKNOWN : BirdState.WORKING);
        BirdElements elements = StraddleFactory.eINSTANCE.createBirdElements();
        elements.setCatalogueNumber(number + 1);
        elements.setEpoch(at(0, 0));
        elements.setMeanMotionRevPerDay(between(13.0, 15.2));
        elements.setEccentricity(0.001);
        elements.setInclinationDeg(between(50, 100));
        elements.setRaanDeg(between(0, 360));
        elements.setMeanAnomalyDeg(between(0, 360));
        bird.getElementSets().add(elements);
        event.getBirds().add(bird);
    }

    private void addTeam(int number) {
        Base base = Fresh.base();
        base.setLatitudeDeg(anyLatitude());
        base.setLongitudeDeg(anyLongitude());
        event.getBases().add(base);
        Team team = Fresh.team();
        team.setName("Team " + (number + 1));
        team.setNumber(number + 1);
        for (int day = 0; day < size.days; day++) {
            int from = 6 * 60 + 15 * random.nextInt(5);
            TeamDay out = Fresh.teamDay(at(day, from), at(day, from + 11 * 60), base, base);
            team.getDays().add(out);
        }
        event.getTeams().add(team);
    }

    private void addRegion(String name, double sharePercent, String outline) {
        Region region = Fresh.region();
        region.setName(name);
        region.setSharePercent(sharePercent);
        region.setOutline(outline);
        event.getRegions().add(region);
    }

    private void addDemands() {
        List<String> squares = new ArrayList<>(event.getSites().stream().flatMap(site -> site.getSquares().stream())
                .distinct().sorted().toList());
        for (String square : squares) {
            Demand demand = StraddleFactory.eINSTANCE.createDemand();
            demand.setSquare(square);
            demand.setSharePercent(20 + random.nextInt(81));
            event.getDemands().add(demand);
        }
    }

    private static Instant at(int day, int minute) {
        return DAY.plusDays(day).atStartOfDay().toInstant(ZoneOffset.UTC).plusSeconds(60L * minute);
    }
}
