package org.straddle.worth.split;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.model.Site;
import org.straddle.model.Turn;
import org.straddle.outlook.DriveTime;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Company;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.safety.ReviewState;
import org.straddle.safety.SafetyNotes;
import org.straddle.sky.Window;
import org.straddle.worth.EventWorth;
import org.straddle.worth.ExpectedPlan;
import org.straddle.worth.PlanWorth;
import org.straddle.worth.TurnChance;

/**
 * Where a team goes when it arrives at a stop and cannot use the place. It drives on at once, sets up there, works those of
 * its turns that it can still have, and is in time for what comes next.
 *
 * @param drive  planned time from the stop's site
 * @param turns  of the stop that are saved, by start
 * @param served how many more chasers the plan without the stop is expected to serve by these
 */
public record PlanB(Site site, Duration drive, List<Work> turns, double served) {

    public PlanB {
        turns = List.copyOf(turns);
    }

    /** The best one; empty when nothing is saved anywhere. @param expected of the event's plan, with all its stays */
    public static Optional<PlanB> of(Stay stay, ExpectedPlan expected, Itinerary plan) {
        EventWorth worth = expected.worth();
        Map<Turn, TurnChance> others = new HashMap<>(expected.turns());
        stay.turns().forEach(work -> others.remove(work.turn()));
        PlanWorth rest = worth.of(others.values());
        return worth.outlook().event().getSites().stream().filter(site -> site != stay.site())
                .flatMap(site -> of(stay, site, rest, worth, plan).stream())
                .max(Comparator.comparingDouble(PlanB::served).thenComparing(found -> found.drive.negated()));
    }

    private static Optional<PlanB> of(Stay stay, Site site, PlanWorth rest, EventWorth worth, Itinerary plan) {
        Outlook outlook = worth.outlook();
        Optional<Duration> drive = drive(stay.site(), site, outlook);
        if (drive.isEmpty() || !isUsable(site, stay, outlook)) {
            return Optional.empty();
        }
        Instant arrival = stay.window().start().plus(drive.get());
        Instant ready = arrival.plus(outlook.policies().setUp());
        Instant leave = leave(stay, site, outlook, plan).minus(outlook.policies().takeDown());
        if (!ready.isBefore(leave) || plan.stays().stream().anyMatch(other -> other.team() != stay.team()
                && other.window().overlaps(new Window(arrival, leave)) && Company.compete(outlook, other.site(), site))) {
            return Optional.empty();
        }
        List<Work> saved = new ArrayList<>();
        List<TurnChance> chances = new ArrayList<>();
        for (Work work : stay.turns()) {
            Optional<Window> part = work.window().intersection(new Window(ready, leave)).filter(left ->
                    outlook.passes(site, work.bird()).stream().anyMatch(pass -> pass.pass().window().intersection(left)
                            .filter(up -> up.duration().compareTo(outlook.policies().minimumTurn()) >= 0).isPresent()));
            if (part.isPresent()) {
                saved.add(work);
                chances.add(worth.chance(site, work.bird(), part.get()));
            }
        }
        return saved.isEmpty() ? Optional.empty() : Optional.of(new PlanB(site, drive.get(), saved, rest.more(chances)));
    }

    private static boolean isUsable(Site site, Stay stay, Outlook outlook) {
        return !outlook.squares(site).isEmpty() && !(SafetyNotes.of(site, stay.window().start().atZone(outlook.zone()).toLocalDate(),
                outlook.event().getPolicies()).state() instanceof ReviewState.Refused);
    }

    /** When the team has to leave the other place to be in time for its next stop or its base, at the latest. */
    private static Instant leave(Stay stay, Site site, Outlook outlook, Itinerary plan) {
        HoldFigures figures = HoldFigures.of(outlook.event().getPolicies());
        return Duty.of(stay.team(), outlook, plan.of(stay.team()), figures).stream()
                .flatMap(duty -> duty.drives().stream())
                .filter(next -> next.before().filter(stay::equals).isPresent()).findFirst()
                .map(next -> stay.window().end().plus(next.time()).minus(outlook.road(site, next.to())
                        .map(road -> DriveTime.of(road, figures).planned(figures)).orElse(Duration.ZERO)))
                .orElse(stay.window().end());
    }

    private static Optional<Duration> drive(Site from, Site to, Outlook outlook) {
        HoldFigures figures = HoldFigures.of(outlook.event().getPolicies());
        return outlook.road(from, to).map(road -> DriveTime.of(road, figures).planned(figures));
    }
}
