package org.straddle.outlook.itinerary;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.DriveTime;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/**
 * The time on one of its days in which a team is out: from leaving its base, so early that it arrives in time as planned,
 * until it is back, each drive in its planned time. Without a base it is from the first arrival to the last departure.
 *
 * @param stays  of the day, by time
 * @param drives of the day, by time
 */
public record Duty(Team team, TeamDay day, Window window, List<Stay> stays, List<Drive> drives) {

    public Duty {
        stays = List.copyOf(stays);
        drives = List.copyOf(drives);
    }

    /** Of a team with some stays of its own, by time. A stay on no day of the team belongs to none. */
    public static List<Duty> of(Team team, Outlook outlook, List<Stay> stays, HoldFigures figures) {
        Map<TeamDay, List<Stay>> byDay = new LinkedHashMap<>();
        stays.forEach(stay -> Drives.dayOf(stay)
                .ifPresent(day -> byDay.computeIfAbsent(day, any -> new ArrayList<>()).add(stay)));
        List<Drive> drives = Drives.of(team, outlook, stays);
        List<Duty> all = new ArrayList<>();
        byDay.forEach((day, there) -> all.add(of(team, day, there, drives.stream()
                .filter(drive -> drive.day().filter(day::equals).isPresent()).toList(), figures)));
        return all;
    }

    private static Duty of(Team team, TeamDay day, List<Stay> stays, List<Drive> drives, HoldFigures figures) {
        Instant leaves = stays.get(0).window().start();
        Instant back = stays.stream().map(stay -> stay.window().end()).max(Instant::compareTo).orElseThrow();
        for (Drive drive : drives) {
            leaves = drive.before().isEmpty() ? leaves(drive, figures) : leaves;
            back = drive.after().isEmpty() ? drive.before().orElseThrow().window().end().plus(planned(drive, figures)) : back;
        }
        return new Duty(team, day, new Window(leaves, back), stays, drives);
    }

    /** When a team leaves for a drive: after a stop, or from its base so that the planned time is enough, if its day allows. */
    public static Instant leaves(Drive drive, HoldFigures figures) {
        if (drive.before().isPresent()) {
            return drive.before().get().window().end();
        }
        Instant due = drive.after().orElseThrow().window().start();
        Instant early = due.minus(planned(drive, figures));
        Instant earliest = due.minus(drive.time());
        return early.isBefore(earliest) ? earliest : early;
    }

    private static Duration planned(Drive drive, HoldFigures figures) {
        return DriveTime.of(drive.road(), figures).planned(figures);
    }

    public boolean isTooLong(HoldFigures figures) {
        return window.duration().compareTo(figures.longestDuty()) > 0;
    }

    /** What is missing to the rest that the policy asks for between two duties; zero when nothing is. */
    public static Duration lackingRest(Duty before, Duty after, HoldFigures figures) {
        Duration lacking = figures.leastRest().minus(Duration.between(before.window.end(), after.window.start()));
        return lacking.isNegative() ? Duration.ZERO : lacking;
    }

    /** The drive that begins or ends at a stay. */
    public Optional<Drive> to(Stay stay) {
        return drives.stream().filter(drive -> drive.after().filter(stay::equals).isPresent()).findFirst();
    }
}
