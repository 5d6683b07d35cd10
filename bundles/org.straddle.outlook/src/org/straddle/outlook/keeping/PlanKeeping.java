package org.straddle.outlook.keeping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;

import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Drive;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.StationUp;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;

/**
 * How likely a plan holds: its teams and days are independent of each other.
 *
 * @param chances that a turn is kept as published, 0 to 1; a turn on no day of its team is not there
 * @param whole   chance that every turn is kept
 * @param drives  that nobody knows yet and that matter, those that matter most first
 */
public record PlanKeeping(Map<Turn, Double> chances, double whole, List<UnknownDrive> drives) {

    /** A drive matters when knowing it is worth a twentieth of a turn. */
    private static final double LEAST_GAIN = 0.05;

    /**
     * A drive whose time is only computed.
     *
     * @param gain how many more turns would be expected to be kept if somebody knew its time, at the same usual time
     */
    public record UnknownDrive(Drive drive, double gain) {
    }

    public PlanKeeping {
        chances = Map.copyOf(chances);
        drives = List.copyOf(drives);
    }

    /** Of the plan of an event. */
    public static PlanKeeping of(Outlook outlook) {
        return of(outlook, Itinerary.of(outlook.event()));
    }

    public static PlanKeeping of(Outlook outlook, Itinerary itinerary) {
        List<PlanKeeping> teams = itinerary.byTeam().entrySet().stream()
                .map(team -> of(team.getKey(), outlook, team.getValue(), DayKeeping::of)).toList();
        Map<Turn, Double> chances = new HashMap<>();
        List<UnknownDrive> drives = new ArrayList<>();
        double whole = 1;
        for (PlanKeeping team : teams) {
            chances.putAll(team.chances);
            drives.addAll(team.drives);
            whole *= team.whole;
        }
        return new PlanKeeping(chances, whole, byGain(drives));
    }

    /** The chances of the turns alone, which is quicker. */
    public static Map<Turn, Double> chances(Outlook outlook, Itinerary itinerary) {
        Map<Turn, Double> chances = new HashMap<>();
        itinerary.byTeam().forEach((team, stays) -> chances.putAll(chances(team, outlook, stays)));
        return chances;
    }

    /** The same of one team. @param stays its own, by time */
    public static Map<Turn, Double> chances(Team team, Outlook outlook, List<Stay> stays) {
        return chances(team, outlook, stays, DayKeeping::chances);
    }

    /** The same, for somebody who asks again and again: days that are as they were are not worked out anew. */
    public static Map<Turn, Double> chances(Team team, Outlook outlook, List<Stay> stays, KnownDays known) {
        return chances(team, outlook, stays, known::chances);
    }

    private static Map<Turn, Double> chances(Team team, Outlook outlook, List<Stay> stays,
            Function<Course, List<Double>> ofDay) {
        HoldFigures figures = HoldFigures.of(outlook.event().getPolicies());
        StationUp station = StationUp.of(outlook.policies());
        Map<Turn, Double> chances = new HashMap<>();
        Duty.of(team, outlook, stays, figures)
                .forEach(duty -> put(duty, ofDay.apply(Course.of(duty, station, figures)), chances));
        return chances;
    }

    /** Of one team, days that are as they were not worked out anew. @param stays its own, by time */
    public static PlanKeeping of(Team team, Outlook outlook, List<Stay> stays, KnownDays known) {
        return of(team, outlook, stays, known::of);
    }

    private static PlanKeeping of(Team team, Outlook outlook, List<Stay> stays, Function<Course, DayKeeping> ofDay) {
        HoldFigures figures = HoldFigures.of(outlook.event().getPolicies());
        StationUp station = StationUp.of(outlook.policies());
        Map<Turn, Double> chances = new HashMap<>();
        List<UnknownDrive> drives = new ArrayList<>();
        double whole = 1;
        for (Duty duty : Duty.of(team, outlook, stays, figures)) {
            DayKeeping day = ofDay.apply(Course.of(duty, station, figures));
            put(duty, day.chances(), chances);
            whole *= day.whole();
            for (int i = 0; i < day.gains().size(); i++) {
                double gain = day.gains().get(i);
                if (gain >= LEAST_GAIN) {
                    drives.add(new UnknownDrive(duty.to(duty.stays().get(i)).orElseThrow(), gain));
                }
            }
        }
        return new PlanKeeping(chances, whole, byGain(drives));
    }

    /** @param found of the turns of a duty, in order */
    private static void put(Duty duty, List<Double> found, Map<Turn, Double> chances) {
        int next = 0;
        for (Stay stay : duty.stays()) {
            for (Work work : stay.turns()) {
                chances.put(work.turn(), found.get(next++));
            }
        }
    }

    private static List<UnknownDrive> byGain(List<UnknownDrive> drives) {
        return drives.stream().sorted(Comparator.comparingDouble(UnknownDrive::gain).reversed()).toList();
    }

    /** A chance in whole per cent, rounded down and never 100: nothing on a road is sure. */
    public static int percent(double chance) {
        return (int) Math.min(99, Math.floor(100 * chance));
    }

    /** Empty for a turn that nobody can say anything of. */
    public OptionalDouble chance(Turn turn) {
        Double chance = chances.get(turn);
        return chance == null ? OptionalDouble.empty() : OptionalDouble.of(chance);
    }

    /** How many turns are expected to be kept. */
    public double expected() {
        return chances.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
