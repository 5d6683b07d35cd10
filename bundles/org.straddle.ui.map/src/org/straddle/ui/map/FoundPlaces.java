package org.straddle.ui.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.straddle.atlas.ink.Face;
import org.straddle.atlas.ink.Frame;
import org.straddle.atlas.ink.Mark;
import org.straddle.atlas.ink.Stroke;
import org.straddle.atlas.ink.Words;
import org.straddle.atlas.picture.Glyphs;
import org.straddle.atlas.picture.Palette;
import org.straddle.atlas.picture.Part;
import org.straddle.atlas.picture.Sight;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.grid.Square;
import org.straddle.ui.places.PlaceBoard;
import org.straddle.ui.places.PlaceListener;
import org.straddle.ui.places.ShownPlace;

/** The places along roads that are on show in this application, drawn over the map and chosen on it. */
final class FoundPlaces implements PlaceListener {

    /** More of them in one window say nothing and take time; the best are drawn. */
    private static final int MOST_DRAWN = 400;
    private static final int MOST_NUMBERED = 40;
    private static final double HIT_PX = 9;

    private record Spot(ShownPlace place, PlanePoint at) {
    }

    private final MapCanvas map;
    private final PlaceBoard board = PlaceBoard.current();
    private List<Spot> spots = List.of();
    private Plane laidOn;

    FoundPlaces(MapCanvas map) {
        this.map = map;
        board.addListener(this);
        map.control().addDisposeListener(event -> board.removeListener(this));
    }

    @Override
    public void placesShown(List<ShownPlace> places) {
        laidOn = null;
        map.control().redraw();
    }

    @Override
    public void placeChosen(Optional<ShownPlace> place) {
        map.control().redraw();
    }

    @Override
    public void placeSought(ShownPlace place) {
        map.goTo(place.candidate().candidate().position());
    }

    boolean isEmpty() {
        return board.places().isEmpty();
    }

    /** Chooses the place under a pixel; false when there is none. */
    boolean chooseAt(double x, double y) {
        Sight sight = map.sight();
        Optional<Spot> hit = drawn().stream()
                .filter(spot -> Math.hypot(sight.pxX(spot.at()) - x, sight.pxY(spot.at()) - y) < HIT_PX).findFirst();
        hit.ifPresent(spot -> board.choose(spot.place()));
        return hit.isPresent();
    }

    /** Goes to the place so many ranks further, from the end on to the beginning. */
    void step(int by) {
        List<ShownPlace> places = board.places();
        if (places.isEmpty()) {
            return;
        }
        int now = board.chosen().map(places::indexOf).orElse(by > 0 ? -1 : places.size());
        board.choose(places.get(Math.floorMod(now + by, places.size())));
        chosen().ifPresent(spot -> map.reveal(spot.at()));
    }

    /** The best last, so that it lies on top. */
    void paint(List<Mark> marks) {
        List<Spot> drawn = drawn();
        for (int i = drawn.size() - 1; i >= 0; i--) {
            Spot spot = drawn.get(i);
            double x = map.sight().pxX(spot.at());
            double y = map.sight().pxY(spot.at());
            marks.addAll(Glyphs.place(x, y));
            if (drawn.size() <= MOST_NUMBERED) {
                marks.add(new Words(String.valueOf(spot.place().rank()), (float) (x + 14), (float) y, Face.SMALL, Palette.INK,
                        Palette.PAPER));
            }
        }
        if (shows()) {
            chosen().ifPresent(spot -> chosen(spot, marks));
        }
    }

    private void chosen(Spot spot, List<Mark> marks) {
        double x = map.sight().pxX(spot.at());
        double y = map.sight().pxY(spot.at());
        List<float[]> halo = List.of(Glyphs.diamond(x, y, 11));
        marks.add(new Mark.Line(halo, Stroke.solid(Palette.INK, 6)));
        marks.add(new Mark.Line(halo, Stroke.solid(Palette.CHOSEN, 4)));
        marks.addAll(Glyphs.place(x, y));
        String words = words(spot.place());
        double width = map.letters().width(words, Face.STRONG);
        marks.add(new Words(words, (float) (x + 20 + width / 2), (float) y, Face.STRONG, Palette.INK, Palette.CHOSEN));
    }

    private static String words(ShownPlace place) {
        return place.rank() + ". " + String.join(" ", place.candidate().candidate().squares().stream().map(Square::toString)
                .toList());
    }

    private Optional<Spot> chosen() {
        return board.chosen().flatMap(place -> spots().stream().filter(spot -> spot.place().equals(place)).findFirst());
    }

    private boolean shows() {
        return map.shown().shows(Part.PLACES);
    }

    private List<Spot> drawn() {
        if (!shows()) {
            return List.of();
        }
        Sight sight = map.sight();
        Frame seen = sight.frame().grown(12);
        return spots().stream().filter(spot -> seen.contains(sight.pxX(spot.at()), sight.pxY(spot.at()))).limit(MOST_DRAWN)
                .toList();
    }

    /** Laid out anew when the map has another plane or the board other places. */
    private List<Spot> spots() {
        Plane plane = map.plane().orElse(null);
        if (!Objects.equals(plane, laidOn) || plane == null) {
            laidOn = plane;
            spots = new ArrayList<>();
            if (plane != null) {
                board.places().forEach(place -> spots.add(
                        new Spot(place, plane.put(place.candidate().candidate().position()))));
            }
        }
        return spots;
    }
}
