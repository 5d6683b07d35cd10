package org.straddle.ui.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

import org.junit.jupiter.api.Test;
import org.straddle.grid.CandidateRanking;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.LineScout;
import org.straddle.grid.MapFeature;
import org.straddle.grid.ScoutReach;

/** What two views hear of each other through the board. */
class PlaceBoardTest {

    private final List<String> heard = new ArrayList<>();
    private final PlaceBoard board = new PlaceBoard();

    private static List<ShownPlace> places() {
        ScoutReach reach = new ScoutReach(10, 0);
        List<MapFeature> roads = List.of(MapFeature.line("Moor", new GeoPosition(64.3, -20.01), new GeoPosition(64.3, -19.99)),
                MapFeature.line("Fell", new GeoPosition(64.4, -20.01), new GeoPosition(64.4, -19.99)));
        var ranked = CandidateRanking.rank(LineScout.candidates(roads, reach, null), reach, square -> 1, List.of(), null);
        return List.of(new ShownPlace(1, ranked.get(0)), new ShownPlace(2, ranked.get(1)));
    }

    @Test
    void whatIsShownAndChosenIsHeardOnce() {
        List<ShownPlace> places = places();
        board.addListener(new PlaceListener() {
            @Override
            public void placesShown(List<ShownPlace> shown) {
                heard.add("shown " + shown.size());
            }

            @Override
            public void placeChosen(Optional<ShownPlace> place) {
                heard.add("chosen " + place.map(ShownPlace::rank).orElse(0));
                // As a view does that selects its row and hears of that in turn.
                board.choose(place.orElse(null));
            }

            @Override
            public void placeSought(ShownPlace place) {
                heard.add("sought " + place.rank());
            }
        });
        board.clear();
        board.show(places);
        board.choose(places.get(1));
        board.choose(places.get(1));
        board.seek(places.get(1));
        board.seek(places.get(0));
        board.choose(null);
        board.show(List.of(places.get(0)));
        board.choose(places.get(1));
        board.clear();
        board.clear();
        assertEquals(List.of("shown 2", "chosen 2", "sought 2", "chosen 1", "sought 1", "chosen 0", "shown 1", "shown 0"), heard);
        assertEquals(Optional.empty(), board.chosen());
    }

    @Test
    void onlyForTheWindowThread() throws InterruptedException {
        AtomicReference<RuntimeException> refused = new AtomicReference<>();
        Thread other = new Thread(() -> {
            try {
                PlaceBoard.current();
            } catch (RuntimeException refusal) {
                refused.set(refusal);
            }
        });
        other.start();
        other.join();
        assertInstanceOf(IllegalStateException.class, refused.get());
    }
}
