package org.straddle.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A candidate with what it is worth.
 *
 * @param candidate the place
 * @param demand sum of the demand of its squares, 0 to 4
 * @param near what is near it, for each role the nearest thing within reach
 * @param others roads besides that of the candidate that meet the line or corner at the same place
 * @param points demand, less a point for each kilometre to walk to the corner, and the points of what is near
 */
public record RankedCandidate(Candidate candidate, double demand, List<Nearness> near, List<MapFeature> others, double points) {

    public RankedCandidate {
        near = List.copyOf(near);
        others = List.copyOf(others);
    }

    public RankedCandidate(Candidate candidate, double demand, List<Nearness> near, double points) {
        this(candidate, demand, near, List.of(), points);
    }

    /** The same place with one more road. */
    RankedCandidate and(MapFeature road) {
        List<MapFeature> more = new ArrayList<>(others);
        more.add(road);
        return new RankedCandidate(candidate, demand, near, more, points);
    }

    /** Names of all roads there, that of the candidate first; roads without a name are left out. */
    public List<String> roadNames() {
        return Stream.concat(Stream.of(candidate.road()), others.stream()).map(MapFeature::name)
                .filter(name -> !name.isBlank()).distinct().toList();
    }

    public Optional<Nearness> near(MapRole role) {
        return near.stream().filter(n -> n.role().equals(role)).findFirst();
    }
}
