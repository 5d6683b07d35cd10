package org.straddle.exchange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import org.straddle.grid.Candidate;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.RankedCandidate;
import org.straddle.grid.Square;
import org.straddle.model.Site;
import org.straddle.words.Catalogue;

/**
 * A named place to take along in a receiver or to show on a map.
 *
 * @param altitudeM   if it is known
 * @param description one line, may be empty
 * @param type        what it is, in a word or two; may be empty
 * @param more        strings, numbers and lists of strings by name, for formats that carry properties of one's own
 */
public record Waypoint(GeoPosition position, OptionalDouble altitudeM, String name, String description, String type,
        Map<String, Object> more) {

    private static final Catalogue TEXTS = Catalogue.of(Waypoint.class);

    public Waypoint {
        Objects.requireNonNull(position, "position");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(type, "type");
        more = new LinkedHashMap<>(more);
    }

    public Waypoint(GeoPosition position, String name, String description, String type) {
        this(position, OptionalDouble.empty(), name, description, type, Map.of());
    }

    /** @throws IllegalArgumentException naming the site if it is nowhere on Earth */
    public static Waypoint of(Site site) {
        String name = Objects.toString(site.getName(), "");
        GeoPosition position;
        try {
            position = new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg());
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(TEXTS.text("waypoint.siteHasPosition", "name", name,
                    "reason", e.getMessage()), e);
        }
        String kind = site.getKind() == null ? "" : site.getKind().getLiteral();
        Map<String, Object> more = new LinkedHashMap<>();
        more.put("id", Objects.toString(site.getId(), ""));
        more.put("kind", kind);
        more.put("squares", List.copyOf(site.getSquares()));
        if (Double.isFinite(site.getMarkErrorM())) {
            more.put("markErrorM", site.getMarkErrorM());
        }
        return new Waypoint(position, Double.isFinite(site.getAltitudeM()) ? OptionalDouble.of(site.getAltitudeM()) : OptionalDouble.empty(),
                name, String.join(" ", site.getSquares()), kind, more);
    }

    public static Waypoint of(RankedCandidate ranked) {
        Candidate candidate = ranked.candidate();
        String squares = candidate.squares().stream().map(Square::name).collect(Collectors.joining(" "));
        String road = candidate.road().name();
        String description = TEXTS.text("waypoint.roadToStand", "squares", squares, "bandM", candidate.bandM(),
                "points", ranked.points());
        return new Waypoint(candidate.position(), candidate.boundary() + (road.isEmpty() ? "" : " " + road), description,
                candidate.kind().name().toLowerCase(Locale.ROOT));
    }
}
