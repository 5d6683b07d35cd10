package org.straddle.outlook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.straddle.grid.Boundary;
import org.straddle.grid.Squares;
import org.straddle.model.Site;
import org.straddle.words.Catalogue;

/**
 * What the rule of the square awards for boundaries asks of a station on a line or corner, as it was published from 2008
 * to 2011: parts of the station stand in every square, a receiver on WGS 84 displays an error of at most 20 ft, and there
 * is evidence of both. Who needs the award reads today's text.
 *
 * @param boundary the line or corner
 * @param parts what stands in which square
 * @param markErrorM R95 of the mark, metres
 */
public record BoundaryRule(Boundary boundary, List<StationPart> parts, double markErrorM) {

    private static final Catalogue TEXTS = Catalogue.of(BoundaryRule.class);

    /** 20 ft, metres. */
    public static final double LARGEST_DISPLAYED_ERROR_M = 20 * 0.3048;

    public BoundaryRule {
        parts = List.copyOf(parts);
    }

    /** What it asks of a site; empty where one square is claimed, or where the claim cannot be argued at all. */
    public static Optional<BoundaryRule> of(Outlook outlook, Site site) {
        return outlook.argument(site).map(argument -> StationPart.of(argument.spread(), outlook.squares(site)))
                .filter(parts -> !parts.isEmpty()).map(parts -> new BoundaryRule(
                        Squares.meetingPlace(outlook.squares(site)).orElseThrow(), parts, site.getMarkErrorM()));
    }

    /** Is the mark itself as good as a receiver has to show? */
    public boolean markSuffices() {
        return markErrorM <= LARGEST_DISPLAYED_ERROR_M;
    }

    /** Where the station stands, a sentence. */
    public String where() {
        return TEXTS.text("boundaryRule.setUpStraight", "boundary", boundary,
                "joining", parts.stream().map(part -> TEXTS.text("boundaryRule.in", "part", part.name(),
                "square", part.square())).collect(Collectors.joining(", ")),
                "metresUp", metresUp(parts.get(0).awayM()), "case", parts.size() == 2);
    }

    /** What to bring home, a sentence each. */
    public List<String> evidence() {
        return List.of(TEXTS.text("boundaryRule.photographWholeStation",
                "joining", parts.stream().map(StationPart::name).collect(Collectors.joining(", ")),
                "case", parts.size() == 2),
                TEXTS.text("boundaryRule.photographReceiverWhere"),
                TEXTS.text("boundaryRule.startOnlyWhen", "metresDown", metresDown(LARGEST_DISPLAYED_ERROR_M)));
    }

    private static String metresUp(double length) {
        return TEXTS.text("boundaryRule.whole", "ceil", Math.ceil(length * 10) / 10);
    }

    private static String metresDown(double length) {
        return TEXTS.text("boundaryRule.oneDecimal", "floor", Math.floor(length * 10) / 10);
    }
}
