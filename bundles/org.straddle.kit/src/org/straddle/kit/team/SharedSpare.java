package org.straddle.kit.team;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.kit.work.Gear;
import org.straddle.kit.work.Remedy;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.KitItem;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Road;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.TeamDays;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * What another team carries that would save a team's work when one of its items fails, and how far away it is by the plan.
 * A piece counts whether or not its holder can do without it: the teams decide.
 *
 * @param failed  the item of the team that has no spare
 * @param holder  who has the piece
 * @param meeting one for each full hour at which both teams are out
 */
public record SharedSpare(Team team, KitItem failed, Team holder, KitItem piece, List<Meeting> meeting) {

    private static final Catalogue TEXTS = Catalogue.of(SharedSpare.class);

    public SharedSpare {
        meeting = List.copyOf(meeting);
    }

    /**
     * Where both are at an hour, and where they meet soonest.
     *
     * @param apart   drive from one to the other
     * @param meet    site or base that both reach soonest
     * @param soonest until the later of the two is there
     */
    public record Meeting(Instant hour, Identified team, Identified holder, Road apart, Identified meet, Duration soonest) {
    }

    /** For each single point of the planned work and each other team the cheapest piece that helps. */
    public static List<SharedSpare> of(Team team, Outlook outlook, Itinerary itinerary) {
        Resilience resilience = Resilience.of(team, itinerary);
        List<SharedSpare> shared = new ArrayList<>();
        for (SinglePoint point : resilience.singlePoints()) {
            KitItem failed = resilience.inventory().item(point.gear()).orElseThrow();
            for (Team holder : outlook.event().getTeams()) {
                if (holder != team) {
                    Inventory theirs = Inventory.of(holder);
                    piece(point, resilience.inventory().carried(), theirs).ifPresent(piece -> shared.add(
                            new SharedSpare(team, failed, holder, piece, meetings(team, holder, outlook, itinerary))));
                }
            }
        }
        return shared;
    }

    /** One piece that helps with all that the item stops. */
    private static Optional<KitItem> piece(SinglePoint point, List<Gear> carried, Inventory theirs) {
        List<Gear> sparesFirst = theirs.carried().stream().sorted(Comparator.comparing(gear -> gear.spareFor().isEmpty())).toList();
        List<Optional<Gear>> pieces = point.stops().stream()
                .map(answer -> Remedy.of(answer.task(), carried, sparesFirst, point.gear())).distinct().toList();
        return pieces.size() == 1 ? pieces.get(0).flatMap(theirs::item) : Optional.empty();
    }

    private static List<Meeting> meetings(Team team, Team holder, Outlook outlook, Itinerary itinerary) {
        Whereabouts ours = Whereabouts.of(team, outlook, itinerary);
        Whereabouts theirs = Whereabouts.of(holder, outlook, itinerary);
        List<Meeting> meetings = new ArrayList<>();
        for (Window day : TeamDays.of(team)) {
            for (Instant hour = hourFrom(day.start()); hour.isBefore(day.end()); hour = hour.plus(Duration.ofHours(1))) {
                Optional<Identified> here = ours.at(hour);
                Optional<Identified> there = theirs.at(hour);
                if (here.isPresent() && there.isPresent()) {
                    meeting(hour, here.get(), there.get(), outlook).ifPresent(meetings::add);
                }
            }
        }
        return meetings;
    }

    private static Instant hourFrom(Instant start) {
        long past = Math.floorMod(start.getEpochSecond(), 3600L);
        return past == 0 ? start : start.plusSeconds(3600 - past);
    }

    private static Optional<Meeting> meeting(Instant hour, Identified here, Identified there, Outlook outlook) {
        Comparator<Identified> soonest = Comparator.comparing((Identified place) -> until(place, here, there, outlook))
                .thenComparing(Naming::name);
        return outlook.road(there, here).map(apart -> {
            Identified meet = places(outlook.event(), outlook).min(soonest).orElse(here);
            return new Meeting(hour, here, there, apart, meet, until(meet, here, there, outlook));
        });
    }

    private static Stream<Identified> places(Event event, Outlook outlook) {
        return Stream.concat(event.getSites().stream().filter((Site site) -> outlook.isPlaced(site)),
                event.getBases().stream().filter(base -> outlook.isPlaced(base)));
    }

    private static Duration until(Identified place, Identified here, Identified there, Outlook outlook) {
        Duration ours = drive(here, place, outlook);
        Duration theirs = drive(there, place, outlook);
        return ours.compareTo(theirs) > 0 ? ours : theirs;
    }

    private static Duration drive(Identified from, Identified to, Outlook outlook) {
        return from == to ? Duration.ZERO : outlook.road(from, to).map(Road::total).orElse(Duration.ofDays(365));
    }

    /** Who has it, and how soon both meet at best and at worst. */
    public String sentence() {
        Optional<Meeting> best = meeting.stream().min(Comparator.comparing(Meeting::soonest));
        Optional<Meeting> worst = meeting.stream().max(Comparator.comparing(Meeting::soonest));
        return best.isEmpty() ? TEXTS.text("shared.never", "item", Naming.name(failed), "piece", Naming.name(piece), "holder",
                Naming.name(holder)) : TEXTS.text("shared.meet", "item", Naming.name(failed), "piece", Naming.name(piece), "holder",
                Naming.name(holder), "best", best.get().soonest(), "worst", worst.get().soonest());
    }
}
