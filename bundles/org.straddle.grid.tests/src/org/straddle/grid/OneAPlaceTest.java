package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

class OneAPlaceTest {

    private static final ScoutReach REACH = new ScoutReach(10, 0);

    private static List<RankedCandidate> ranked(List<MapFeature> roads) {
        return CandidateRanking.rank(LineScout.candidates(roads, REACH, null), REACH, square -> 1, List.of(), null);
    }

    private static MapFeature overMeridian(String name, double latitudeDeg) {
        return MapFeature.line(name, new GeoPosition(latitudeDeg, -20.01), new GeoPosition(latitudeDeg, -19.99));
    }

    @Test
    void roadsThatMeetTheLineAtOneSpotAreOnePlaceWithAllTheirNames() {
        List<RankedCandidate> all = ranked(List.of(overMeridian("Fog Road", 64.5), overMeridian("Dune Road", 64.5),
                overMeridian("", 64.5001), overMeridian("Moor Road", 64.6)));
        assertEquals(4, all.size());
        List<RankedCandidate> places = OneAPlace.of(all);
        assertEquals(2, places.size());
        RankedCandidate meeting = places.stream().filter(place -> place.roadNames().size() > 1).findFirst().orElseThrow();
        assertEquals(2, meeting.others().size(), "the road without a name is there too, 11 m away");
        assertEquals(List.of("Dune Road", "Fog Road"), meeting.roadNames().stream().sorted().toList());
    }

    @Test
    void theBestStandsForThePlaceAndTheOrderStays() {
        List<RankedCandidate> all = ranked(List.of(overMeridian("a", 64.5), overMeridian("b", 64.7), overMeridian("c", 64.5)));
        List<RankedCandidate> places = OneAPlace.of(all);
        assertEquals(all.get(0).candidate(), places.get(0).candidate());
        assertEquals(places.stream().map(RankedCandidate::candidate).toList(), all.stream().map(RankedCandidate::candidate)
                .filter(places.stream().map(RankedCandidate::candidate).toList()::contains).toList());
    }

    /** Against every pair, on a meridian and on a parallel far north, where degrees of longitude are short. */
    @Test
    void itFindsWhatComparingAllPairsFinds() {
        Random random = new Random(7);
        List<MapFeature> roads = new ArrayList<>();
        for (int i = 0; i < 150; i++) {
            roads.add(overMeridian("m" + i, 64.5 + random.nextInt(60) * 0.0001));
            double longitudeDeg = -20.9 + random.nextInt(60) * 0.0002;
            roads.add(MapFeature.line("p" + i, new GeoPosition(79.99, longitudeDeg), new GeoPosition(80.01, longitudeDeg)));
        }
        List<RankedCandidate> all = ranked(roads);
        List<Candidate> expected = new ArrayList<>();
        for (RankedCandidate each : all) {
            Candidate candidate = each.candidate();
            if (expected.stream().noneMatch(kept -> kept.boundary().equals(candidate.boundary())
                    && Geodesic.distanceM(kept.position(), candidate.position()) <= OneAPlace.SAME_PLACE_M)) {
                expected.add(candidate);
            }
        }
        assertTrue(expected.size() > 20 && expected.size() < all.size() / 2, expected.size() + " of " + all.size());
        assertEquals(expected, OneAPlace.of(all).stream().map(RankedCandidate::candidate).toList());
    }
}
