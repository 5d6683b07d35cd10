package org.straddle.ui.scout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

import org.straddle.grid.Candidate;
import org.straddle.grid.MapRole;
import org.straddle.grid.PositionText;
import org.straddle.grid.Square;
import org.straddle.ui.places.ShownPlace;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;
import org.straddle.words.Sentence;

/**
 * One column of the list of places.
 *
 * @param text  of its cells
 * @param order in which a click on its head sorts at first
 */
record PlaceColumn(String title, int width, boolean number, String tip, Function<ShownPlace, String> text, Comparator<ShownPlace> order) {

    private static final Catalogue TEXTS = Catalogue.of(PlaceColumn.class);

    /** The columns for places with distances to things of these roles. */
    static List<PlaceColumn> of(List<MapRole> around) {
        List<PlaceColumn> columns = new ArrayList<>(List.of(
                number(TEXTS.text("placeColumn.rank"), 70, TEXTS.text("placeColumn.bestFirstDemand"), place -> place.rank(), whole(), false),
                words(TEXTS.text("placeColumn.kind"), 95, TEXTS.text("placeColumn.howRoadMeets"), place -> kind(place.candidate().candidate())),
                words(TEXTS.text("placeColumn.lineCorner"), 130, TEXTS.text("placeColumn.whatStraddled"), place -> place.candidate().candidate().boundary().toString()),
                words(TEXTS.text("placeColumn.squares"), 150, TEXTS.text("placeColumn.whatOneContact"), PlaceColumn::squares),
                number(TEXTS.text("placeColumn.demand"), 70, TEXTS.text("placeColumn.sumSharesChasers"), place -> place.candidate().demand(),
                        decimals(2), true),
                number(TEXTS.text("placeColumn.points"), 65, TEXTS.text("placeColumn.whatRankGoes"), place -> place.candidate().points(),
                        decimals(2), true),
                words(TEXTS.text("placeColumn.road"), 170, TEXTS.text("placeColumn.nameRoadMap"), place -> String.join(", ", place.candidate().roadNames())),
                number(TEXTS.text("placeColumn.bearing"), 75, TEXTS.text("placeColumn.directionRoadAs"),
                        place -> Math.round(place.candidate().candidate().bearingDeg()) % 360, value -> TEXTS.text("placeColumn.degrees", "degrees", padded(value)), false),
                number(TEXTS.text("placeColumn.line"), 95, TEXTS.text("placeColumn.angleBetweenRoad"),
                        place -> place.candidate().candidate().angleDeg(), value -> TEXTS.text("placeColumn.degrees", "degrees", FigureText.inCurrent().fixed(0, value)), true),
                number(TEXTS.text("placeColumn.roomM"), 85, TEXTS.text("placeColumn.lengthRoadWhich"),
                        place -> place.candidate().candidate().bandM(), whole(), true),
                number(TEXTS.text("placeColumn.walkM"), 80, TEXTS.text("placeColumn.fromRoadLine"), place -> place.candidate().candidate().distanceM(), whole(), false)));
        for (MapRole role : around) {
            columns.add(new PlaceColumn(TEXTS.text("placeColumn.near", "role", Sentence.begun(role.name().replace('-', ' '))), 110, true, TEXTS.text("placeColumn.distanceNearestWithin", "role", role.name().replace('-', ' ')), place -> place.candidate().near(role).map(near -> FigureText.inCurrent().fixed(0, near.distanceM())).orElse(TEXTS.text("placeColumn.unknown")),
                    Comparator.comparingDouble(place -> place.candidate().near(role).map(near -> near.distanceM()).orElse(Double.MAX_VALUE))));
        }
        columns.add(words(TEXTS.text("placeColumn.position"), 210, TEXTS.text("placeColumn.wgs"), place -> PositionText.write(place.candidate().candidate().position(), PositionText.Form.DEGREES)));
        return columns;
    }

    static String kind(Candidate candidate) {
        return switch (candidate.kind()) {
            case CROSSING -> TEXTS.text("placeColumn.crossing");
            case ALONGSIDE -> TEXTS.text("placeColumn.alongside");
            case CORNER -> TEXTS.text("placeColumn.atcorner");
        };
    }

    static String squares(ShownPlace place) {
        return place.candidate().candidate().squares().stream().map(Square::name).collect(Collectors.joining(" "));
    }

    private static PlaceColumn words(String title, int width, String tip, Function<ShownPlace, String> text) {
        return new PlaceColumn(title, width, false, tip, text, Comparator.comparing(text, String.CASE_INSENSITIVE_ORDER));
    }

    private static PlaceColumn number(String title, int width, String tip, ToDoubleFunction<ShownPlace> value,
            DoubleFunction<String> figure, boolean mostFirst) {
        Comparator<ShownPlace> order = Comparator.comparingDouble(value);
        return new PlaceColumn(title, width, true, tip, place -> figure.apply(value.applyAsDouble(place)), mostFirst ? order.reversed() : order);
    }

    private static DoubleFunction<String> whole() {
        return decimals(0);
    }

    private static DoubleFunction<String> decimals(int decimals) {
        return value -> FigureText.inCurrent().fixed(decimals, value);
    }

    /** Three digits, as bearings are read out. */
    private static String padded(double degrees) {
        String whole = FigureText.inCurrent().fixed(0, degrees);
        return "0".repeat(Math.max(0, 3 - whole.length())) + whole;
    }
}
