package org.straddle.grid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where several roads meet a line or corner at the same spot, a person sees one place: the best candidate stands for it
 * and names the other roads.
 */
public final class OneAPlace {

    /** Candidates of the same line or corner that are nearer to each other are one place. Common practice, no source. */
    public static final double SAME_PLACE_M = 25;

    /** A degree of latitude is nowhere shorter, nor a degree of longitude longer (WGS-84). */
    private static final double SHORTEST_DEGREE_M = 110_500;

    private final Map<Boundary, TreeMap<Double, List<Integer>>> kept = new HashMap<>();
    private final List<RankedCandidate> places = new ArrayList<>();

    private OneAPlace() {
    }

    /** @param ranked best first; the order stays */
    public static List<RankedCandidate> of(List<RankedCandidate> ranked) {
        OneAPlace work = new OneAPlace();
        ranked.forEach(work::add);
        return List.copyOf(work.places);
    }

    private void add(RankedCandidate candidate) {
        GeoPosition at = candidate.candidate().position();
        TreeMap<Double, List<Integer>> along = kept.computeIfAbsent(candidate.candidate().boundary(), any -> new TreeMap<>());
        // Along a parallel only the longitude changes, along a meridian only the latitude.
        boolean byLongitude = candidate.candidate().boundary() instanceof GridLine line && !line.isMeridian();
        double key = byLongitude ? at.longitudeDeg() : at.latitudeDeg();
        double reach = SAME_PLACE_M / SHORTEST_DEGREE_M
                / (byLongitude ? Math.max(0.01, Math.cos(Math.toRadians(at.latitudeDeg()))) : 1);
        for (List<Integer> near : along.subMap(key - reach, true, key + reach, true).values()) {
            for (int place : near) {
                if (Geodesic.distanceM(at, places.get(place).candidate().position()) <= SAME_PLACE_M) {
                    places.set(place, places.get(place).and(candidate.candidate().road()));
                    return;
                }
            }
        }
        along.computeIfAbsent(key, any -> new ArrayList<>()).add(places.size());
        places.add(candidate);
    }
}
