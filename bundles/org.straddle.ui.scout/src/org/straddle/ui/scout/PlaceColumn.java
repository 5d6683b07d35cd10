package org.straddle.ui.scout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

import org.straddle.grid.Candidate;
import org.straddle.grid.MapRole;
import org.straddle.grid.PositionText;
import org.straddle.grid.Square;
import org.straddle.ui.places.ShownPlace;

/**
 * One column of the list of places.
 *
 * @param text  of its cells
 * @param order in which a click on its head sorts at first
 */
record PlaceColumn(String title, int width, boolean number, String tip, Function<ShownPlace, String> text, Comparator<ShownPlace> order) {

    /** The columns for places with distances to things of these roles. */
    static List<PlaceColumn> of(List<MapRole> around) {
        List<PlaceColumn> columns = new ArrayList<>(List.of(
                number("Rank", 70, "Best first: demand, less the walk to a corner, and what is near", place -> place.rank(), "%.0f", false),
                words("Kind", 95, "How the road meets the line or corner", place -> kind(place.candidate().candidate())),
                words("Line or corner", 130, "What is straddled", place -> place.candidate().candidate().boundary().toString()),
                words("Squares", 150, "What one contact counts for", PlaceColumn::squares),
                number("Demand", 70, "Sum of the shares of chasers that still need these squares", place -> place.candidate().demand(), "%.2f", true),
                number("Points", 65, "What the rank goes by", place -> place.candidate().points(), "%.2f", true),
                words("Road", 170, "Name of the road on the map", place -> place.candidate().candidate().road().name()),
                number("Bearing", 75, "Direction of the road as it was drawn, degrees from true north",
                        place -> Math.round(place.candidate().candidate().bearingDeg()) % 360, "%03.0f°", false),
                number("To the line", 95, "Angle between road and line: 0° along it, 90° straight across",
                        place -> place.candidate().candidate().angleDeg(), "%.0f°", true),
                number("Room, m", 85, "Length of road on which the station still straddles; 0 when one has to walk",
                        place -> place.candidate().candidate().bandM(), "%.0f", true),
                number("Walk, m", 80, "From the road to the line or corner", place -> place.candidate().candidate().distanceM(), "%.0f", false)));
        for (MapRole role : around) {
            columns.add(new PlaceColumn(capital(role.name().replace('-', ' ')) + ", m", 110, true, "Distance to the nearest " + role.name().replace('-', ' ')
                    + " within reach", place -> place.candidate().near(role).map(near -> format("%.0f", near.distanceM())).orElse(""),
                    Comparator.comparingDouble(place -> place.candidate().near(role).map(near -> near.distanceM()).orElse(Double.MAX_VALUE))));
        }
        columns.add(words("Position", 210, "WGS 84", place -> PositionText.write(place.candidate().candidate().position(), PositionText.Form.DEGREES)));
        return columns;
    }

    static String kind(Candidate candidate) {
        return switch (candidate.kind()) {
            case CROSSING -> "crossing";
            case ALONGSIDE -> "alongside";
            case CORNER -> "corner";
        };
    }

    static String squares(ShownPlace place) {
        return place.candidate().candidate().squares().stream().map(Square::name).collect(Collectors.joining(" "));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static PlaceColumn words(String title, int width, String tip, Function<ShownPlace, String> text) {
        return new PlaceColumn(title, width, false, tip, text, Comparator.comparing(text, String.CASE_INSENSITIVE_ORDER));
    }

    private static PlaceColumn number(String title, int width, String tip, ToDoubleFunction<ShownPlace> value, String format, boolean mostFirst) {
        Comparator<ShownPlace> order = Comparator.comparingDouble(value);
        return new PlaceColumn(title, width, true, tip, place -> format(format, value.applyAsDouble(place)), mostFirst ? order.reversed() : order);
    }

    private static String format(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
