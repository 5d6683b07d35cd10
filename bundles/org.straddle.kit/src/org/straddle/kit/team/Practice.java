package org.straddle.kit.team;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Locator;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.sky.Pass;

/**
 * A pass over an operator's home before departure, on a bird that the operator's team will work: the highest between
 * {@value #EARLIEST_HOUR} and {@value #LATEST_HOUR} o'clock, over a flat horizon.
 *
 * @param bird of the event
 */
public record Practice(Team team, Operator operator, Bird bird, Pass pass) {

    static final int EARLIEST_HOUR = 8;
    static final int LATEST_HOUR = 22;

    /** A lower pass teaches little (common practice, no source). */
    public static final double LEAST_PEAK_DEG = 20;

    /** Days before the event in which to practise; elements of an earlier day tell little. */
    public static final int DAYS = 10;

    /**
     * One for each operator with a home and each bird in the plan of the team, by time. Birds that do not work are left out.
     *
     * @param today earlier days are over
     */
    public static List<Practice> of(Event event, LocalDate today, IProgressMonitor monitor) {
        LocalDate first = event.getFirstDay();
        if (first == null || !today.isBefore(first)) {
            return List.of();
        }
        Map<String, Bird> birds = new HashMap<>();
        event.getBirds().forEach(bird -> birds.put(bird.getId(), bird));
        Map<Site, Operator> homes = new HashMap<>();
        Outlook outlook = Outlook.of(atHome(event, first, today, homes), monitor);
        Itinerary itinerary = Itinerary.of(event);
        List<Practice> all = new ArrayList<>();
        for (Team team : event.getTeams()) {
            List<Bird> planned = itinerary.of(team).stream().flatMap(stay -> stay.turns().stream()).map(turn -> turn.bird()).distinct()
                    .filter(bird -> !Outlook.isNotWorking(bird)).toList();
            homes.forEach((home, operator) -> {
                if (team.getOperators().contains(operator)) {
                    planned.forEach(bird -> best(outlook, home, bird, birds)
                            .ifPresent(pass -> all.add(new Practice(team, operator, bird, pass))));
                }
            });
        }
        all.sort(Comparator.comparing((Practice practice) -> practice.pass.aos()).thenComparing(practice -> practice.team.getNumber())
                .thenComparing(practice -> String.valueOf(practice.operator.getCallSign())));
        return all;
    }

    /** Operators whose home nobody located: nothing can be proposed to them. */
    public static List<Operator> homeless(Team team) {
        return team.getOperators().stream().filter(operator -> !operator.eIsProxy() && home(operator).isEmpty()).toList();
    }

    /** A copy of the event with homes for sites and the days before for its days. */
    private static Event atHome(Event event, LocalDate first, LocalDate today, Map<Site, Operator> homes) {
        Event copy = EcoreUtil.copy(event);
        copy.getTeams().clear();
        copy.getSites().clear();
        copy.setPlan(null);
        LocalDate from = first.minusDays(DAYS);
        copy.setFirstDay(from.isAfter(today) ? from : today);
        copy.setLastDay(first.minusDays(1));
        for (Operator operator : event.getOperators()) {
            home(operator).ifPresent(position -> {
                Site home = Fresh.site();
                home.setLatitudeDeg(position.latitudeDeg());
                home.setLongitudeDeg(position.longitudeDeg());
                copy.getSites().add(home);
                homes.put(home, operator);
            });
        }
        return copy;
    }

    private static Optional<GeoPosition> home(Operator operator) {
        try {
            String locator = operator.getHomeLocator();
            return locator == null || locator.isBlank() ? Optional.empty() : Optional.of(Locator.parse(locator.strip()).centre());
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Optional<Pass> best(Outlook outlook, Site home, Bird bird, Map<String, Bird> birds) {
        return outlook.passes(home).stream().filter(pass -> birds.get(pass.bird().getId()) == bird).map(SitePass::pass)
                .filter(pass -> pass.isWhole() && pass.peakElevationDeg() >= LEAST_PEAK_DEG && isByDay(pass, outlook.zone()))
                .max(Comparator.comparingDouble(Pass::peakElevationDeg));
    }

    private static boolean isByDay(Pass pass, ZoneId zone) {
        LocalTime start = pass.aos().atZone(zone).toLocalTime();
        LocalTime end = pass.los().atZone(zone).toLocalTime();
        return start.getHour() >= EARLIEST_HOUR && end.getHour() < LATEST_HOUR && !end.isBefore(start);
    }
}
