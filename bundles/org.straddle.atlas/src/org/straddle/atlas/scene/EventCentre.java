package org.straddle.atlas.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.MeanPosition;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.grid.Square;
import org.straddle.outlook.Outlook;

/**
 * The middle of an event, for its plane: of its sites and bases, or while it has none, of the squares that are in
 * demand; rounded to half a degree, so that moving a site does not turn the whole map.
 */
public final class EventCentre {

    private EventCentre() {
    }

    /** Empty when the event has no places, or places all around the Earth. */
    public static Optional<GeoPosition> of(Outlook outlook) {
        Event event = outlook.event();
        List<GeoPosition> places = new ArrayList<>();
        event.getSites().stream().filter(outlook::isPlaced).map(outlook::position).forEach(places::add);
        event.getBases().stream().filter(outlook::isPlaced).map(outlook::position).forEach(places::add);
        if (places.isEmpty()) {
            event.getDemands().stream().map(Demand::getSquare).flatMap(name -> Square.named(name).stream())
                    .map(Square::centre).forEach(places::add);
        }
        return middle(places);
    }

    static Optional<GeoPosition> middle(List<GeoPosition> places) {
        return MeanPosition.of(places)
                .map(mean -> new GeoPosition(halves(mean.latitudeDeg()), halves(mean.longitudeDeg())));
    }

    private static double halves(double degrees) {
        return Math.round(2 * degrees) / 2.0;
    }
}
