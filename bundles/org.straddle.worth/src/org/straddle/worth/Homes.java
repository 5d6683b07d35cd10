package org.straddle.worth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.sky.Place;
import org.straddle.sky.prediction.Area;

/**
 * The places where the groups of chasers live, all in one area, so that the sky is asked once for all of them. A group
 * stands for itself by {@value #PLACES} of its places or a few more: enough for shares that rest on rough constants.
 */
final class Homes {

    private static final int PLACES = 100;

    private final List<Optional<Area>> known;
    private final Optional<Area> all;
    private final double[] parts;
    private final int[] first;

    private Homes(List<Optional<Area>> known, List<Place> places, List<Double> parts, int[] first) {
        this.known = known;
        this.all = places.isEmpty() ? Optional.empty()
                : Optional.of(Area.of(places, parts.stream().mapToDouble(Double::doubleValue).toArray()));
        this.parts = parts.stream().mapToDouble(Double::doubleValue).toArray();
        this.first = first;
    }

    static Homes of(List<ChaserGroup> groups) {
        List<Optional<Area>> known = groups.stream().map(ChaserGroup::home).toList();
        List<Place> places = new ArrayList<>();
        List<Double> parts = new ArrayList<>();
        int[] first = new int[groups.size() + 1];
        for (int g = 0; g < groups.size(); g++) {
            first[g] = places.size();
            known.get(g).ifPresent(area -> addSome(area, places, parts));
        }
        first[groups.size()] = places.size();
        return new Homes(known, places, parts, first);
    }

    private static void addSome(Area area, List<Place> places, List<Double> parts) {
        int every = Math.max(1, area.places().size() / PLACES);
        double sum = 0;
        for (int i = every / 2; i < area.places().size(); i += every) {
            sum += area.part(i);
        }
        for (int i = every / 2; i < area.places().size(); i += every) {
            places.add(area.places().get(i));
            parts.add(area.part(i) / sum);
        }
    }

    /** Two homes with equal answers are those of the same areas. */
    List<Optional<Area>> known() {
        return known;
    }

    /** Everywhere where anybody is known to live; empty when nobody is. */
    Optional<Area> all() {
        return all;
    }

    boolean isKnown(int group) {
        return first[group] < first[group + 1];
    }

    GroupMinutes of(int group, double[] minutesOfPlaces) {
        return GroupMinutes.of(minutesOfPlaces, parts, first[group], first[group + 1]);
    }
}
