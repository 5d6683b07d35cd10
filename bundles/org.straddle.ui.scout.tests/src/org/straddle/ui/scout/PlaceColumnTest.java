package org.straddle.ui.scout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.straddle.grid.CandidateRanking;
import org.straddle.grid.LineScout;
import org.straddle.grid.MapFeature;
import org.straddle.grid.RankedCandidate;
import org.straddle.grid.ScoutReach;
import org.straddle.grid.Trace;
import org.straddle.ui.places.ShownPlace;

/** Two roads due east over meridians: one over 20°W, which everybody needs, one over 18°W, which few need. */
class PlaceColumnTest {

    private final List<ShownPlace> places = places();

    @Test
    void theColumnsSayWhatIsStraddledAndWhatItCountsFor() {
        assertEquals(2, places.size());
        assertEquals(List.of("1", "2"), texts("Rank"));
        assertEquals(List.of("crossing", "crossing"), texts("Kind"));
        assertEquals(List.of("HP94 IP04", "IP04 IP14"), texts("Squares"));
        assertEquals(List.of("Fog Road", "Dune Road"), texts("Road"));
        assertEquals(List.of("1.60", "0.90"), texts("Demand"));
    }

    /** A road along a parallel meets a meridian at a right angle; its own bearing is 90° where they meet. */
    @Test
    void directionsAreThoseOfTheRoad() {
        assertEquals(List.of("090°", "090°"), texts("Bearing"));
        assertEquals(List.of("90°", "90°"), texts("To the line"));
    }

    @Test
    void aClickOnAHeadPutsTheBestFirst() {
        List<ShownPlace> shuffled = new ArrayList<>(List.of(places.get(1), places.get(0)));
        for (String title : List.of("Rank", "Demand", "Squares")) {
            shuffled.sort(column(title).order());
            assertEquals(places, shuffled, title);
        }
        shuffled.sort(column("Road").order());
        assertEquals("Dune Road", shuffled.get(0).candidate().candidate().road().name());
    }

    private List<String> texts(String title) {
        return places.stream().map(column(title).text()).collect(Collectors.toList());
    }

    private static PlaceColumn column(String title) {
        return PlaceColumn.of(List.of()).stream().filter(column -> column.title().equals(title)).findFirst().orElseThrow();
    }

    private static List<ShownPlace> places() {
        ScoutReach reach = new ScoutReach(10, 0);
        List<MapFeature> roads = List.of(road("Fog Road", 64.3, -20), road("Dune Road", 64.6, -18));
        List<RankedCandidate> ranked = CandidateRanking.rank(LineScout.candidates(roads, reach, null), reach,
                square -> switch (square.name()) {
                    case "HP94" -> 1;
                    case "IP04" -> 0.6;
                    case "IP14" -> 0.3;
                    default -> 0;
                }, List.of(), null);
        List<ShownPlace> shown = new ArrayList<>();
        for (RankedCandidate place : ranked) {
            shown.add(new ShownPlace(shown.size() + 1, place));
        }
        return shown;
    }

    /** A hundredth of a degree to both sides of a meridian. */
    private static MapFeature road(String name, double latitudeDeg, double meridianDeg) {
        Trace.Builder trace = new Trace.Builder();
        trace.add(latitudeDeg, meridianDeg - 0.01);
        trace.add(latitudeDeg, meridianDeg + 0.01);
        return new MapFeature(name, Optional.empty(), MapFeature.Shape.LINES, List.of(trace.build()));
    }
}
