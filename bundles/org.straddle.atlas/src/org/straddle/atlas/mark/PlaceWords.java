package org.straddle.atlas.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.GridCorner;
import org.straddle.grid.GridLine;
import org.straddle.grid.Locator;
import org.straddle.grid.NearBoundary;
import org.straddle.grid.NearbyBoundaries;
import org.straddle.grid.PositionText;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/** A place in words: coordinates, locator, and how far the lines around it are and in which direction. */
public final class PlaceWords {

    private static final Catalogue TEXTS = Catalogue.of(PlaceWords.class);

    private static final double SEARCHED_M = 130_000;
    private static final int DIRECTIONS = 8;

    private PlaceWords() {
    }

    /** One line: decimal degrees and the locator of ten characters. */
    public static String line(GeoPosition place) {
        return PositionText.write(place, PositionText.Form.DEGREES) + "   " + Locator.of(place, 10);
    }

    /** Decimal degrees; degrees, minutes, seconds; the locator; the nearest meridian, parallel and corner. */
    public static List<String> lines(GeoPosition place) {
        List<String> lines = new ArrayList<>();
        lines.add(PositionText.write(place, PositionText.Form.DEGREES));
        lines.add(PositionText.write(place, PositionText.Form.SECONDS));
        lines.add(Locator.of(place, 10).text());
        nearest(place).forEach(near -> lines.add(words(place, near)));
        return lines;
    }

    /** The nearest meridian, parallel and corner, as far as there are any, nearest first. */
    public static List<NearBoundary> nearest(GeoPosition place) {
        List<NearBoundary> all = NearbyBoundaries.of(place, SEARCHED_M);
        List<NearBoundary> kept = new ArrayList<>();
        first(all, near -> near.boundary() instanceof GridLine line && line.isMeridian()).ifPresent(kept::add);
        first(all, near -> near.boundary() instanceof GridLine line && !line.isMeridian()).ifPresent(kept::add);
        first(all, near -> near.boundary() instanceof GridCorner).ifPresent(kept::add);
        kept.sort((a, b) -> Double.compare(a.distanceM(), b.distanceM()));
        return kept;
    }

    /** {@code 20°W  12.4 m west}. */
    public static String words(GeoPosition place, NearBoundary near) {
        return near.distanceM() < 0.05 ? TEXTS.text("near.here", "boundary", near.boundary())
                : TEXTS.text("near.away", "boundary", near.boundary(), "distance",
                        FigureText.inCurrent().distance(near.distanceM()), "direction",
                        direction(Geodesic.initialBearingDeg(place, near.foot())));
    }

    private static String direction(double bearingDeg) {
        return TEXTS.text("direction." + Math.round(bearingDeg / 360 * DIRECTIONS) % DIRECTIONS);
    }

    private static Optional<NearBoundary> first(List<NearBoundary> all, Predicate<NearBoundary> wanted) {
        return all.stream().filter(wanted).findFirst();
    }
}
