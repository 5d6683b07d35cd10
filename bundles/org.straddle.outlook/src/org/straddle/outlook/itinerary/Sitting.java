package org.straddle.outlook.itinerary;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.straddle.model.Stop;
import org.straddle.sky.Window;

/**
 * A team at one site, for one stay or for several with nothing but a short absence in between: packing up and setting up
 * again on the same spot rests nobody.
 *
 * @param stays by time, at least one, all of one team at one site
 */
public record Sitting(List<Stay> stays) {

    /** A team that comes back to a site later than this after it left has rested. Ours, without a source. */
    public static final Duration AWAY = Duration.ofHours(1);

    public Sitting {
        stays = List.copyOf(stays);
    }

    /** @param lane stays of one team, by time */
    public static List<Sitting> of(List<Stay> lane) {
        List<Sitting> sittings = new ArrayList<>();
        for (Stay stay : lane) {
            Sitting last = sittings.isEmpty() ? null : sittings.get(sittings.size() - 1);
            if (last != null && last.goesOn(stay)) {
                List<Stay> more = new ArrayList<>(last.stays);
                more.add(stay);
                sittings.set(sittings.size() - 1, new Sitting(more));
            } else {
                sittings.add(new Sitting(List.of(stay)));
            }
        }
        return sittings;
    }

    private boolean goesOn(Stay next) {
        return first().site() == next.site() && Duration.between(window().end(), next.window().start()).compareTo(AWAY) < 0;
    }

    public Stay first() {
        return stays.get(0);
    }

    public List<Stop> stops() {
        return stays.stream().map(Stay::stop).toList();
    }

    /** From the first arrival to the last departure. */
    public Window window() {
        return new Window(first().window().start(),
                stays.stream().map(stay -> stay.window().end()).max(Comparable::compareTo).orElseThrow());
    }
}
