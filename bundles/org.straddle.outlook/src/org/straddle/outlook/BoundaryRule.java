package org.straddle.outlook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.straddle.grid.Boundary;
import org.straddle.grid.Squares;
import org.straddle.model.Site;

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
        return "Set up straight across " + boundary + ", the middle on it: " + parts.stream()
                .map(part -> part.name() + " in " + part.square()).collect(Collectors.joining(", ")) + ", each at least "
                + metresUp(parts.get(0).awayM()) + " from the " + (parts.size() == 2 ? "line" : "two lines") + ".";
    }

    /** What to bring home, a sentence each. */
    public List<String> evidence() {
        return List.of("Photograph the whole station, with " + parts.stream().map(StationPart::name)
                .collect(Collectors.joining(", ")) + " and what marks the " + (parts.size() == 2 ? "line" : "corner") + ".",
                "Photograph the receiver where the station stands, its display legible: position on WGS 84 and error; or take"
                        + " one uncut video of both.",
                "Start only when the receiver shows an error of at most 20 ft (" + metresDown(LARGEST_DISPLAYED_ERROR_M)
                        + "). Note the error that it shows and the time.");
    }

    private static String metresUp(double length) {
        return String.format(Locale.ENGLISH, "%.1f m", Math.ceil(length * 10) / 10);
    }

    private static String metresDown(double length) {
        return String.format(Locale.ENGLISH, "%.1f m", Math.floor(length * 10) / 10);
    }
}
