package org.straddle.exchange;

import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.grid.Geodesic;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.model.Event;

/** A place that an event is near, to judge by whether coordinates can be meant. */
public final class EventPlace {

    /** A rove does not need a map of what is farther away. */
    private static final double FAR_M = 1_000_000;

    private EventPlace() {
    }

    /** Whether something there can belong to an event here. */
    public static boolean isNear(GeoPosition position, GeoPosition place) {
        return Geodesic.distanceM(position, place) < FAR_M;
    }

    /** The first site or base that has a position, else the middle of the first square in demand. */
    public static Optional<GeoPosition> of(Event event) {
        Stream<double[]> marks = Stream.concat(
                event.getSites().stream().map(site -> new double[] {site.getLatitudeDeg(), site.getLongitudeDeg()}),
                event.getBases().stream().map(base -> new double[] {base.getLatitudeDeg(), base.getLongitudeDeg()}));
        return marks.filter(EventPlace::isSet).findFirst().map(mark -> new GeoPosition(mark[0], mark[1]))
                .or(() -> event.getDemands().stream().map(demand -> String.valueOf(demand.getSquare()))
                        .flatMap(EventPlace::middle).findFirst());
    }

    /** A thing that was just made lies at 0, 0. */
    private static boolean isSet(double[] mark) {
        return Math.abs(mark[0]) <= 90 && Math.abs(mark[1]) <= 180 && (mark[0] != 0 || mark[1] != 0);
    }

    private static Stream<GeoPosition> middle(String square) {
        try {
            return Stream.of(Square.parse(square).bounds().centre());
        } catch (IllegalArgumentException e) {
            return Stream.empty();
        }
    }
}
