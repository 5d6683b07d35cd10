package org.straddle.plan.event;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Meals;
import org.straddle.plan.Replan;
import org.straddle.sky.Window;

/**
 * When teams are on duty, where a day is longer than a duty may be or leaves too little rest, and when they eat. The hours
 * with most passes are taken for duty and those with fewest for meals, weighed by peak, before anything is planned: plan
 * and bound hold for these hours. A choice of ours; other hours could allow a better plan.
 */
final class DutyHours {

    private static final Duration STEP = Duration.ofMinutes(30);
    private static final Duration MEAL_STEP = Duration.ofMinutes(5);

    /** From this peak on a pass counts in full; a lower one by its share. Degrees. */
    private static final double FULL_PEAK_DEG = 30;

    /** More than the weight of all passes in a day. */
    private static final double HELD = 1e8;

    /** Promises are rounded to whole minutes. */
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final HoldFigures figures;
    private final Outlook outlook;
    private final List<KeptStop> kept;
    private final Instant begin;
    private final double[] before;
    private final boolean holding;

    /** @param sites that may be used */
    DutyHours(Outlook outlook, List<Site> sites, List<KeptStop> kept, Replan replan) {
        Optional<Instant> from = replan.from();
        holding = replan.keeping() > 0;
        this.outlook = outlook;
        this.kept = kept;
        figures = HoldFigures.of(outlook.event().getPolicies());
        begin = outlook.span().start();
        double[] weights = new double[minute(outlook.span().end()) + 2];
        for (Site site : sites) {
            for (SitePass pass : outlook.passes(site)) {
                if (pass.pass().peakElevationDeg() >= outlook.policies().minimumPeakElevationDeg()
                        && from.filter(pass.pass().aos()::isBefore).isEmpty() && !Outlook.isNotWorking(pass.bird())) {
                    weights[minute(pass.pass().tca()) + 1] += Math.min(1, pass.pass().peakElevationDeg() / FULL_PEAK_DEG);
                }
            }
        }
        for (int minute = 1; minute < weights.length; minute++) {
            weights[minute] += weights[minute - 1];
        }
        before = weights;
    }

    private int minute(Instant instant) {
        return (int) Duration.between(begin, instant).toMinutes();
    }

    private double weight(Window window) {
        int last = before.length - 1;
        return before[Math.max(0, Math.min(last, minute(window.end())))] - before[Math.max(0, Math.min(last, minute(window.start())))];
    }

    /** A turn that a new plan holds on to. */
    private record Told(Window window, double weight) {
    }

    /** What was told to others, and what is planned when a new plan holds on to that: worth more than any passes. */
    private List<Told> told(Team team) {
        Event event = outlook.event();
        List<Told> told = new ArrayList<>();
        if (!event.getRevisions().isEmpty()) {
            event.getRevisions().get(event.getRevisions().size() - 1).getPromises().stream()
                    .filter(promise -> String.valueOf(team.getId()).equals(promise.getTeamId())
                            && promise.getStart() != null && promise.getEnd() != null)
                    .forEach(promise -> Itinerary.window(promise.getStart().plus(MINUTE), promise.getEnd().minus(MINUTE))
                            .ifPresent(window -> told.add(new Told(window, HELD))));
        }
        if (holding && event.getPlan() != null) {
            event.getPlan().getStops().stream().filter(stop -> stop.getTeam() == team)
                    .flatMap(stop -> stop.getTurns().stream())
                    .forEach(turn -> Itinerary.window(turn.getStart(), turn.getEnd())
                            .ifPresent(window -> told.add(new Told(window, HELD / 100))));
        }
        return told;
    }

    /** A turn with what a station needs around it. */
    private Window station(Window turn) {
        return new Window(turn.start().minus(outlook.policies().setUp()).minus(figures.inHand()),
                turn.end().plus(outlook.policies().takeDown()));
    }

    /** A choice of the hours of one day, with the best that can come before it. */
    private record Choice(Window window, double sum, Optional<Choice> earlier) {
    }

    /**
     * The hours of each of a team's days, none longer than a duty and with rest between them. Where that cannot be, because
     * of what is kept, a day stays as it is.
     *
     * @param days by time
     */
    List<Window> of(Team team, List<Window> days) {
        List<Told> told = told(team);
        List<Choice> last = List.of();
        for (Window day : days) {
            List<Choice> now = new ArrayList<>();
            for (Window window : windows(team, day)) {
                Optional<Choice> earlier = last.stream().filter(choice -> !choice.window.end().plus(figures.leastRest())
                        .isAfter(window.start())).max(Comparator.comparingDouble(Choice::sum));
                if (earlier.isPresent() || last.isEmpty()) {
                    now.add(new Choice(window, weight(window) + told.stream().filter(each -> each.weight == HELD && window.contains(station(each.window)))
                            .mapToDouble(Told::weight).sum()
                            + earlier.map(Choice::sum).orElse(0.0), earlier));
                }
            }
            if (now.isEmpty()) {
                Optional<Choice> earlier = last.stream().max(Comparator.comparingDouble(Choice::sum));
                now.add(new Choice(day, weight(day) + earlier.map(Choice::sum).orElse(0.0), earlier));
            }
            last = now;
        }
        List<Window> chosen = new ArrayList<>();
        for (Optional<Choice> choice = last.stream().max(Comparator.comparingDouble(Choice::sum)); choice.isPresent();
                choice = choice.get().earlier) {
            chosen.add(0, choice.get().window);
        }
        return chosen;
    }

    /** Parts of a day that hold all that is kept: the whole, if it is short enough, and shorter ones to leave rest. */
    private List<Window> windows(Team team, Window day) {
        List<Window> all = new ArrayList<>();
        if (day.duration().compareTo(figures.longestDuty()) <= 0) {
            all.add(day);
        }
        for (Instant start = day.start(); start.isBefore(day.end()); start = start.plus(STEP)) {
            for (Instant end = day.end(); end.isAfter(start); end = end.minus(STEP)) {
                if (Duration.between(start, end).compareTo(figures.longestDuty()) <= 0) {
                    all.add(new Window(start, end));
                    break;
                }
            }
        }
        for (Instant end = day.end(); end.isAfter(day.start()); end = end.minus(STEP)) {
            Instant start = end.minus(figures.longestDuty());
            all.add(new Window(start.isBefore(day.start()) ? day.start() : start, end));
        }
        return all.stream().distinct().filter(window -> kept.stream().filter(stop -> stop.team() == team
                && stop.window().overlaps(day)).allMatch(stop -> window.contains(stop.window()))).toList();
    }

    /** When a team eats on a day; nothing where it has time for that before or after. */
    List<Window> meals(Team team, Window day) {
        List<Window> chosen = new ArrayList<>();
        if (figures.meal().isZero()) {
            return chosen;
        }
        for (Window meal : Meals.during(day, outlook.zone())) {
            quietest(team, meal, day).flatMap(slot -> slot.intersection(day)).ifPresent(chosen::add);
        }
        return chosen;
    }

    /** A pause may begin before the team is out or end after it is back: what lies outside of the day costs nothing. */
    private Optional<Window> quietest(Team team, Window meal, Window day) {
        List<Window> slots = new ArrayList<>();
        for (Instant start = meal.start(); !start.plus(figures.meal()).isAfter(meal.end()); start = start.plus(MEAL_STEP)) {
            slots.add(Window.of(start, figures.meal()));
        }
        List<Told> told = told(team);
        return slots.stream().filter(slot -> kept.stream().filter(stop -> stop.team() == team)
                .flatMap(stop -> stop.turns().stream()).noneMatch(turn -> turn.window().overlaps(slot)))
                .min(Comparator.comparingDouble(slot -> slot.intersection(day).map(this::weight).orElse(0.0) + told.stream()
                        .filter(each -> station(each.window).overlaps(slot))
                        .mapToDouble(Told::weight).sum()));
    }
}
