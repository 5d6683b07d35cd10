package org.straddle.ui.map;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.atlas.picture.Glyphs;
import org.straddle.atlas.picture.MapContents;
import org.straddle.atlas.picture.Palette;
import org.straddle.atlas.picture.Part;
import org.straddle.atlas.scene.PlaceSpot;
import org.straddle.drawing.Face;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;
import org.straddle.grid.Square;
import org.straddle.ui.places.PlaceBoard;
import org.straddle.ui.places.PlaceListener;
import org.straddle.ui.places.ShownPlace;

/** Chooses among the places along roads that the map shows, and marks the one that is chosen. */
final class FoundPlaces implements PlaceListener {

    private static final double HIT_PX = 9;

    private final MapCanvas map;
    private final PlaceBoard board = PlaceBoard.current();
    private boolean choosing;
    private ShownPlace awaited;

    FoundPlaces(MapCanvas map) {
        this.map = map;
        board.addListener(this);
        map.addListener(this::goToAwaited);
        map.control().addDisposeListener(event -> board.removeListener(this));
    }

    /** Chosen elsewhere, it comes into sight; what was chosen on the map is there already. */
    @Override
    public void placeChosen(Optional<ShownPlace> place) {
        if (!choosing) {
            chosen().ifPresent(spot -> map.reveal(spot.at()));
        }
        map.control().redraw();
    }

    @Override
    public void placeSought(ShownPlace place) {
        awaited = place;
        goToAwaited();
    }

    /** A map that was opened to show a place has no plane and no size yet. */
    private void goToAwaited() {
        if (awaited != null && map.plane().isPresent() && map.sight().width() > 1) {
            ShownPlace place = awaited;
            awaited = null;
            map.goTo(place.candidate().candidate().position());
        }
    }

    boolean isEmpty() {
        return board.places().isEmpty();
    }

    /** Chooses the place under a pixel, the best of several; false when there is none. */
    boolean chooseAt(double x, double y) {
        Optional<PlaceSpot> hit = spots().filter(spot ->
                Math.hypot(map.sight().pxX(spot.at()) - x, map.sight().pxY(spot.at()) - y) < HIT_PX).findFirst();
        choosing = true;
        hit.flatMap(this::place).ifPresent(board::choose);
        choosing = false;
        return hit.isPresent();
    }

    /** Goes to the place so many ranks further, from the end on to the beginning. */
    void step(int by) {
        List<ShownPlace> places = board.places();
        if (!places.isEmpty()) {
            int now = board.chosen().map(places::indexOf).orElse(by > 0 ? -1 : places.size());
            board.choose(places.get(Math.floorMod(now + by, places.size())));
        }
    }

    /** The chosen one, over the picture. */
    void paint(List<Mark> marks) {
        chosen().ifPresent(spot -> place(spot).ifPresent(place -> {
            double x = map.sight().pxX(spot.at());
            double y = map.sight().pxY(spot.at());
            List<float[]> halo = List.of(Glyphs.diamond(x, y, 11));
            marks.add(new Mark.Line(halo, Stroke.solid(Palette.INK, 6)));
            marks.add(new Mark.Line(halo, Stroke.solid(Palette.CHOSEN, 4)));
            marks.addAll(Glyphs.place(x, y));
            String words = words(place);
            double width = map.letters().width(words, Face.STRONG);
            marks.add(new Words(words, (float) (x + 20 + width / 2), (float) y, Face.STRONG, Palette.INK, Palette.CHOSEN));
        }));
    }

    private static String words(ShownPlace place) {
        return place.rank() + ". " + String.join(" ", place.candidate().candidate().squares().stream().map(Square::toString)
                .toList());
    }

    private Optional<PlaceSpot> chosen() {
        return board.chosen().flatMap(place -> spots().filter(spot -> spot.rank() == place.rank()).findFirst());
    }

    private Optional<ShownPlace> place(PlaceSpot spot) {
        return board.places().stream().filter(place -> place.rank() == spot.rank()).findFirst();
    }

    /** Those on the map, best first. */
    private Stream<PlaceSpot> spots() {
        return map.shown().shows(Part.PLACES) ? map.contents().map(MapContents::places).orElse(List.of()).stream()
                : Stream.empty();
    }
}
