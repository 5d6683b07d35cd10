package org.straddle.exchange;

import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

import org.straddle.grid.Candidate;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.RankedCandidate;
import org.straddle.grid.Square;
import org.straddle.model.Site;

/**
 * A named place to take along in a receiver or to show on a map.
 *
 * @param description one line, may be empty
 * @param type        what it is, in a word or two; may be empty
 */
public record Waypoint(GeoPosition position, String name, String description, String type) {

    public Waypoint {
        Objects.requireNonNull(position, "position");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(type, "type");
    }

    /** @throws IllegalArgumentException if the site is nowhere on Earth */
    public static Waypoint of(Site site) {
        return new Waypoint(new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg()),
                Objects.toString(site.getName(), ""), String.join(" ", site.getSquares()), "site");
    }

    public static Waypoint of(RankedCandidate ranked) {
        Candidate candidate = ranked.candidate();
        String squares = candidate.squares().stream().map(Square::name).collect(Collectors.joining(" "));
        String road = candidate.road().name();
        String description = String.format(Locale.ROOT, "%s; %.0f m of road to stand on; %.2f points", squares, candidate.bandM(),
                ranked.points());
        return new Waypoint(candidate.position(), candidate.boundary() + (road.isEmpty() ? "" : " " + road), description,
                candidate.kind().name().toLowerCase(Locale.ROOT));
    }
}
