package org.straddle.outlook.itinerary;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Base;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/**
 * The drives of a plan: from the base to the first stop of a day, from stop to stop, and back to a base.
 * Where a day has no base, the team drives from the last stop of one day to the first of the next. A
 * drive with less than no time, or to a place without a position, is left to the rules about those.
 */
public final class Drives {

    private final Team team;
    private final Outlook outlook;
    private final List<Drive> drives = new ArrayList<>();

    private Drives(Team team, Outlook outlook) {
        this.team = team;
        this.outlook = outlook;
    }

    /** Those of all teams, of each in order of time. */
    public static List<Drive> of(Outlook outlook, Itinerary itinerary) {
        return itinerary.byTeam().keySet().stream().flatMap(team -> of(team, outlook, itinerary).stream()).toList();
    }

    public static List<Drive> of(Team team, Outlook outlook, Itinerary itinerary) {
        return of(team, outlook, itinerary.of(team));
    }

    /** Those that a team would have with some stays of its own, planned or only thought of, by time. */
    public static List<Drive> of(Team team, Outlook outlook, List<Stay> stays) {
        Drives found = new Drives(team, outlook);
        found.between(stays);
        return found.drives;
    }

    /** On which of its team's days a stay lies: the one it shares most time with. */
    public static Optional<TeamDay> dayOf(Stay stay) {
        return stay.team().getDays().stream().filter(day -> shared(stay, day).compareTo(Duration.ZERO) > 0)
                .max(Comparator.comparing((TeamDay day) -> shared(stay, day)));
    }

    private static Duration shared(Stay stay, TeamDay day) {
        return Itinerary.window(day.getFrom(), day.getUntil()).flatMap(stay.window()::intersection)
                .map(Window::duration).orElse(Duration.ZERO);
    }

    private void between(List<Stay> stays) {
        if (stays.isEmpty()) {
            return;
        }
        List<Optional<TeamDay>> days = stays.stream().map(Drives::dayOf).toList();
        for (int i = 0; i < stays.size(); i++) {
            Stay stay = stays.get(i);
            Optional<TeamDay> day = days.get(i);
            Optional<Stay> before = i == 0 ? Optional.empty() : Optional.of(stays.get(i - 1));
            boolean sameDay = before.isPresent() && days.get(i - 1).equals(day);
            if (sameDay) {
                between(day, before.get(), stay);
                continue;
            }
            boolean fromBase = start(day).isPresent();
            boolean toBase = before.isPresent() && end(days.get(i - 1)).isPresent();
            if (toBase) {
                home(days.get(i - 1), before.get());
            }
            if (fromBase) {
                out(day, stay);
            }
            if (before.isPresent() && !fromBase && !toBase) {
                between(day, before.get(), stay);
            }
        }
        Stay last = stays.get(stays.size() - 1);
        Optional<TeamDay> lastDay = days.get(stays.size() - 1);
        if (end(lastDay).isPresent()) {
            home(lastDay, last);
        }
    }

    private void between(Optional<TeamDay> day, Stay before, Stay after) {
        add(day, Optional.of(before), Optional.of(after), before.site(), after.site(),
                before.window().end(), after.window().start());
    }

    private void out(Optional<TeamDay> day, Stay first) {
        Base base = start(day).orElseThrow();
        add(day, Optional.empty(), Optional.of(first), base, first.site(),
                day.orElseThrow().getFrom(),
                first.window().start());
    }

    private void home(Optional<TeamDay> day, Stay last) {
        Base base = end(day).orElseThrow();
        add(day, Optional.of(last), Optional.empty(), last.site(), base,
                last.window().end(),
                day.orElseThrow().getUntil());
    }

    private void add(Optional<TeamDay> day, Optional<Stay> before, Optional<Stay> after, Identified from,
            Identified to, Instant leaves, Instant due) {
        if (!due.isBefore(leaves)) {
            outlook.road(from, to).ifPresent(road -> drives.add(new Drive(team, day, before, after, from, to, road,
                    Duration.between(leaves, due))));
        }
    }

    private Optional<Base> start(Optional<TeamDay> day) {
        return day.map(TeamDay::getStart).filter(this::usable);
    }

    private Optional<Base> end(Optional<TeamDay> day) {
        return day.map(TeamDay::getEnd).filter(this::usable);
    }

    private boolean usable(Base base) {
        return !Itinerary.isMissing(base) && outlook.isPlaced(base);
    }
}
