package org.straddle.outlook.itinerary;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

import org.straddle.outlook.DriveTime;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.PolicyFigures;
import org.straddle.sky.Window;
import org.straddle.sky.Windows;

/** A meal about noon and one in the evening: a pause in which nobody works a turn, sets up, takes down or drives. */
public final class Meals {

    /** When people want to eat, local times. Common practice, no source. */
    public enum Meal {
        NOON(LocalTime.of(11, 0), LocalTime.of(14, 30)), EVENING(LocalTime.of(17, 0), LocalTime.of(20, 30));

        private final LocalTime from;
        private final LocalTime until;

        Meal(LocalTime from, LocalTime until) {
            this.from = from;
            this.until = until;
        }

        /** When it may be on a local day. */
        public Window on(LocalDate day, ZoneId zone) {
            return new Window(day.atTime(from).atZone(zone).toInstant(), day.atTime(until).atZone(zone).toInstant());
        }
    }

    private Meals() {
    }

    /** When meals may be on the local days that a time touches, in order. */
    public static List<Window> during(Window out, ZoneId zone) {
        List<Window> all = new ArrayList<>();
        LocalDate last = out.end().atZone(zone).toLocalDate();
        for (LocalDate day = out.start().atZone(zone).toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
            for (Meal meal : Meal.values()) {
                all.add(meal.on(day, zone));
            }
        }
        return all;
    }

    /** The meals, by when they may be, for which a duty leaves no pause that is long enough. Before and after it there is time. */
    public static List<Window> missing(Duty duty, ZoneId zone, PolicyFigures policies, HoldFigures figures) {
        List<Window> busy = busy(duty, policies, figures);
        return figures.meal().isZero() ? List.of() : during(duty.window(), zone).stream().filter(meal ->
                Windows.without(List.of(meal), busy).stream()
                        .noneMatch(free -> free.duration().compareTo(figures.meal()) >= 0)
                        && duty.drives().stream().noneMatch(drive -> isOnTheWay(drive, meal, figures))).toList();
    }

    /** Whether a drive leaves time for the meal before it or on the way. */
    private static boolean isOnTheWay(Drive drive, Window meal, HoldFigures figures) {
        Duration spare = drive.time().minus(DriveTime.of(drive.road(), figures).planned(figures));
        Instant begins = drive.before().map(stay -> stay.window().end())
                .orElseGet(() -> drive.after().orElseThrow().window().start().minus(drive.time()));
        return spare.compareTo(figures.meal()) >= 0 && Window.of(begins, drive.time()).intersection(meal)
                .filter(within -> within.duration().compareTo(figures.meal()) >= 0).isPresent();
    }

    private static List<Window> busy(Duty duty, PolicyFigures policies, HoldFigures figures) {
        List<Window> busy = new ArrayList<>();
        StationUp station = StationUp.of(policies);
        for (Stay stay : duty.stays()) {
            stay.turns().forEach(work -> busy.add(work.window()));
            add(busy, stay.window().start(), station.ready(stay.window()));
            add(busy, station.packing(stay.window()), stay.window().end());
        }
        duty.drives().forEach(drive -> add(busy, Duty.leaves(drive, figures),
                drive.after().map(stay -> stay.window().start()).orElse(duty.window().end())));
        return Windows.joined(busy);
    }

    private static void add(List<Window> busy, Instant from, Instant until) {
        if (from.isBefore(until)) {
            busy.add(new Window(from, until));
        }
    }
}
