package org.straddle.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Plan;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.StoredElements;
import org.straddle.sky.Horizon;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.Ephemeris;

/**
 * The plan of the demo before anybody planned: what three teams wrote down on their own, with the mistakes this
 * brings. The comments name them. Passes are real passes of the demo's element sets.
 */
final class DemoDraft {

    private static final Horizon FLAT = Horizon.flat(0);

    private final Event event;
    private final Plan plan;
    private final Map<Bird, Ephemeris> ephemerides;

    private DemoDraft(Event event) {
        this.event = event;
        this.plan = event.getPlan();
        Window days = Window.parse("2027-06-18T00:00:00Z/2027-06-21T00:00:00Z");
        this.ephemerides = event.getBirds().stream().collect(Collectors.toMap(bird -> bird, bird -> Ephemeris.of(
                StoredElements.toElementSet(bird.getElementSets().get(0)), days, new NullProgressMonitor())));
    }

    static void addTo(Event event) {
        DemoDraft draft = new DemoDraft(event);
        draft.friday();
        draft.saturday();
        draft.sunday();
    }

    private void friday() {
        Stop basalt = stop(1, "Basalt Mark", "18T10:00", "18T14:00");
        onPassband(work(basalt, "Fulmar-2", "18T10:24"), 145.870);
        work(basalt, "Tern-1", "18T11:48");
        work(basalt, "Puffin-4", "18T12:42"); // peaks at 4°
        work(basalt, "Skua-3", "18T12:56");
        // 56 km of road in a quarter of an hour, and a pass before the station can be up
        Stop corner = stop(1, "Four Winds Corner", "18T14:15", "18T17:30");
        work(corner, "Petrel-5", "18T14:25");
        work(corner, "Tern-1", "18T14:55");
        work(corner, "Petrel-5", "18T16:05");
        work(corner, "Skua-3", "18T16:15"); // seconds after Petrel-5

        Stop fields = stop(2, "Two Fields North", "18T09:30", "18T12:30");
        onPassband(work(fields, "Fulmar-2", "18T10:22"), 145.870); // the channel that team 1 uses
        work(fields, "Puffin-4", "18T11:05"); // gone again after three minutes
        work(fields, "Tern-1", "18T11:47"); // the only channel, while team 1 is on it
        Stop shoulder = stop(2, "Fjord Shoulder", "18T14:05", "18T17:30");
        work(shoulder, "Petrel-5", "18T14:26");
        work(shoulder, "Skua-3", "18T14:36"); // before Petrel-5 is down

        Stop causeway = stop(3, "Pebble Causeway", "18T09:00", "18T11:30");
        work(causeway, "Fulmar-2", "18T10:23");
        work(causeway, "Puffin-4", "18T11:05");
        work(causeway, "Petrel-5", "18T11:06"); // both at once
        work(causeway, "Tern-1", "18T11:48"); // after departure
        Stop gate = stop(3, "Glacier Gate", "18T12:30", "18T15:30");
        workOnFlatHorizon(gate, "Petrel-5", "18T12:45"); // behind the mountain at first
        work(gate, "Tern-1", "18T13:22");
        Stop stage = stop(3, "Driftwood Stage", "18T16:25", "18T17:10"); // nobody has been there
        work(stage, "Fulmar-2", "18T16:49");
    }

    private void saturday() {
        Stop corner = stop(1, "Four Winds Corner", "19T09:30", "19T13:30");
        work(corner, "Auk-6", "19T10:03"); // a bird that is silent
        work(corner, "Fulmar-2", "19T11:10");
        work(corner, "Skua-3", "19T13:12");
        Stop heath = stop(1, "Heath Cairn", "19T16:30", "19T18:30");
        work(heath, "Fulmar-2", "19T17:36");
        aDayLate(work(heath, "Petrel-5", "18T17:46")); // copied from the table of the day before

        Stop desert = stop(2, "Desert Post", "19T10:00", "19T14:30");
        work(desert, "Skua-3", "19T11:36");
        work(desert, "Tern-1", "19T13:14");

        // IP03 twice at once: from here and from Four Winds Corner
        Stop cloister = stop(3, "Cloister Line", "19T11:30", "19T12:00");
        work(cloister, "Tern-1", "19T11:40");
        // the site of team 2, five hours of road away, and more driving than a day allows
        Stop both = stop(3, "Desert Post", "19T13:00", "19T15:00");
        work(both, "Petrel-5", "19T13:56");
    }

    private void sunday() {
        Stop moss = stop(1, "Moss Milestone", "20T09:00", "20T12:00");
        work(moss, "Fulmar-2", "20T10:22");
        // in two places at once
        Stop steam = stop(1, "Steam Fence", "20T11:30", "20T15:00");
        work(steam, "Petrel-5", "20T13:26"); // switched off by then
        work(steam, "Tern-1", "20T13:08");

        // longer than the team's day
        Stop rope = stop(2, "Rope Yard", "20T10:00", "20T17:10");
        work(rope, "Skua-3", "20T11:52");
        work(rope, "Tern-1", "20T14:40");

        Stop cod = stop(3, "Cod Quay", "20T09:30", "20T11:45");
        work(cod, "Fulmar-2", "20T10:20");
        Stop lichen = stop(3, "Lichen Wall", "20T14:30", "20T15:15");
        work(lichen, "Petrel-5", "20T15:05"); // no time left to take down
    }

    private Stop stop(int team, String site, String arrival, String departure) {
        Stop stop = Fresh.stop(event.getTeams().stream().filter(t -> t.getNumber() == team).findFirst().orElseThrow(),
                event.getSites().stream().filter(s -> s.getName().equals(site)).findFirst().orElseThrow(),
                june(arrival), june(departure));
        DemoIdentity.named(stop, "stop/" + team + "/" + arrival);
        plan.getStops().add(stop);
        return stop;
    }

    /** The pass over the stop's site, above its mask, that peaks nearest to a time. */
    private Turn work(Stop stop, String bird, String near) {
        List<Horizon.Point> mask = stop.getSite().getHorizon().stream()
                .map(point -> new Horizon.Point(point.getAzimuthDeg(), point.getElevationDeg())).toList();
        return work(stop, bird, near, mask.isEmpty() ? FLAT : new Horizon(mask));
    }

    private Turn workOnFlatHorizon(Stop stop, String bird, String near) {
        return work(stop, bird, near, FLAT);
    }

    private Turn work(Stop stop, String birdName, String near, Horizon horizon) {
        Bird bird = event.getBirds().stream().filter(b -> b.getName().startsWith(birdName)).findFirst().orElseThrow();
        Site site = stop.getSite();
        Place place = new Place(site.getLatitudeDeg(), site.getLongitudeDeg(), site.getAltitudeM());
        Pass pass = ephemerides.get(bird).passes(place, horizon).stream()
                .min(Comparator.comparing(p -> Duration.between(june(near), p.tca()).abs())).orElseThrow();
        Turn turn = DemoIdentity.named(Fresh.turn(), "turn/" + stop.getTeam().getNumber() + "/" + birdName + near);
        turn.setBird(bird);
        // Whole seconds inside the pass.
        turn.setStart(pass.aos().truncatedTo(ChronoUnit.SECONDS).plusSeconds(1));
        turn.setEnd(pass.los().truncatedTo(ChronoUnit.SECONDS));
        stop.getTurns().add(turn);
        return turn;
    }

    private static void onPassband(Turn turn, double downlinkMhz) {
        turn.setDownlinkMhz(downlinkMhz);
    }

    private static void aDayLate(Turn turn) {
        turn.setStart(turn.getStart().plus(Duration.ofDays(1)));
        turn.setEnd(turn.getEnd().plus(Duration.ofDays(1)));
    }

    private static Instant june(String dayAndTime) {
        return Instant.parse("2027-06-" + dayAndTime + ":00Z");
    }
}
