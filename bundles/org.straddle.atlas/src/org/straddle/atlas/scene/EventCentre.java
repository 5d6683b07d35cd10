package org.straddle.atlas.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.grid.GeoPosition;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.grid.Square;
import org.straddle.outlook.Outlook;

/**
 * The middle of an event, for its plane: of its sites and bases, or while it has none, of the squares that are in
 * demand. It is the direction of the sum of unit vectors, because the mean of longitudes fails at 180°, and rounded to
 * half a degree, so that moving a site does not turn the whole map.
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
            event.getDemands().stream().map(Demand::getSquare).flatMap(name -> square(name).stream())
                    .map(Square::centre).forEach(places::add);
        }
        return middle(places);
    }

    static Optional<GeoPosition> middle(List<GeoPosition> places) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (GeoPosition place : places) {
            double latitude = Math.toRadians(place.latitudeDeg());
            double longitude = Math.toRadians(place.longitudeDeg());
            x += Math.cos(latitude) * Math.cos(longitude);
            y += Math.cos(latitude) * Math.sin(longitude);
            z += Math.sin(latitude);
        }
        double length = Math.sqrt(x * x + y * y + z * z);
        if (length < 1e-6 * places.size() || places.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new GeoPosition(halves(Math.toDegrees(Math.atan2(z, Math.hypot(x, y)))),
                halves(Math.toDegrees(Math.atan2(y, x)))));
    }

    private static double halves(double degrees) {
        return Math.round(2 * degrees) / 2.0;
    }

    static Optional<Square> square(String name) {
        try {
            return name == null ? Optional.empty() : Optional.of(Square.parse(name));
        } catch (IllegalArgumentException noSquare) {
            return Optional.empty();
        }
    }
}
