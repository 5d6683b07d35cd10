package org.straddle.exchange.sites;

import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.exchange.CoordinateOrder;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.Locator;
import org.straddle.grid.PositionText;
import org.straddle.grid.Square;
import org.straddle.grid.Squares;
import org.straddle.model.InertText;
import org.straddle.model.SiteKind;
import org.straddle.words.Catalogue;

/**
 * What one line of a table says of a site; of what it leaves blank it says nothing.
 *
 * @param position with the way it was understood
 * @param locator  what the position is the centre of, if it was given so
 */
record SiteValues(Optional<String> id, Optional<String> name, Optional<PositionText.ReadPosition> position, Optional<Locator> locator,
        OptionalDouble errorM, OptionalDouble altitudeM, Optional<SiteKind> kind, List<Square> squares) {

    private static final Catalogue TEXTS = Catalogue.of(SiteValues.class);

    static final int LONGEST_NAME = 200;

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{0,9}([.,]\\d{0,20})?([eE][+-]?\\d{1,2})?");
    private static final Pattern TWO_NUMBERS =
            Pattern.compile("([+-]?\\d{1,9}(?:\\.\\d{0,20})?)\\s*(?:[,;/\\s])\\s*([+-]?\\d{1,9}(?:\\.\\d{0,20})?)");
    /** One number as many countries write it, and no pair. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final double LOWEST_M = -1000;
    private static final double HIGHEST_M = 100_000;

    /** A line cannot be taken: a sentence that says why. */
    static final class Refusal extends Exception {

        private static final long serialVersionUID = 1L;

        private final boolean fitsSwapped;

        private Refusal(String reason, boolean fitsSwapped) {
            super(reason);
            this.fitsSwapped = fitsSwapped;
        }

        static Refusal because(String reason) {
            return new Refusal(reason, false);
        }

        /** Would the position be somewhere on Earth if latitude and longitude changed places? */
        boolean fitsSwapped() {
            return fitsSwapped;
        }
    }

    static SiteValues read(SourceTable table, SourceTable.Row row, SiteMapping mapping, CoordinateOrder order) throws Refusal {
        Cells cells = new Cells(table, row, mapping);
        Optional<PositionText.ReadPosition> position = position(cells, order);
        String name = cells.text(SiteField.NAME);
        if (name.length() > LONGEST_NAME) {
            throw Refusal.because(TEXTS.text("siteValues.nameLongerThan", "longestName", LONGEST_NAME));
        }
        int control = InertText.firstNotStorable(name);
        if (control >= 0) {
            throw Refusal.because(TEXTS.text("siteValues.nameControl", "code", HexFormat.of().withUpperCase().toHexDigits(name.charAt(control)),
                    "place", control + 1));
        }
        String written = cells.text(SiteField.KIND);
        Optional<SiteKind> kind = kind(written);
        if (kind.isEmpty() && !written.isEmpty()) {
            throw Refusal.because(TEXTS.text("siteValues.kindNeitherInside", "shortened", shortened(written)));
        }
        return new SiteValues(cells.said(SiteField.ID), cells.said(SiteField.NAME), position,
                locator(cells.text(SiteField.POSITION)), cells.number(SiteField.ERROR, 0, HIGHEST_M),
                cells.number(SiteField.ALTITUDE, LOWEST_M, HIGHEST_M), kind, squares(cells.text(SiteField.SQUARES)));
    }

    /** Where the row says that the site is; empty when it does not. */
    static Optional<GeoPosition> position(SourceTable table, SourceTable.Row row, SiteMapping mapping, CoordinateOrder order) throws Refusal {
        return position(new Cells(table, row, mapping), order).map(PositionText.ReadPosition::position);
    }

    /** The values of a row by what they say. */
    private record Cells(SourceTable table, SourceTable.Row row, SiteMapping mapping) {

        String text(SiteField field) {
            return mapping.column(field).map(column -> table.value(row, column)).orElse("");
        }

        Optional<String> said(SiteField field) {
            return Optional.of(text(field)).filter(text -> !text.isEmpty());
        }

        OptionalDouble number(SiteField field, double least, double most) throws Refusal {
            String text = text(field);
            if (text.isEmpty()) {
                return OptionalDouble.empty();
            }
            OptionalDouble number = SiteValues.number(text.replaceFirst("(?<=\\d)\\s*m$", ""));
            if (number.isEmpty()) {
                throw Refusal.because(TEXTS.text("siteValues.whichNotNumber", "field", field.label(),
                        "shortened", shortened(text)));
            }
            if (number.getAsDouble() < least || number.getAsDouble() > most) {
                throw Refusal.because(TEXTS.text("siteValues.whichNotBetween", "field", field.label(),
                        "shortened", shortened(text), "least", (long) least, "most", (long) most));
            }
            return number;
        }
    }

    private static Optional<PositionText.ReadPosition> position(Cells cells, CoordinateOrder order) throws Refusal {
        String whole = cells.text(SiteField.POSITION);
        String latitude = cells.text(SiteField.LATITUDE);
        String longitude = cells.text(SiteField.LONGITUDE);
        if (!whole.isEmpty()) {
            Matcher two = TWO_NUMBERS.matcher(whole);
            return Optional.of(two.matches() && !DECIMAL_COMMA.matcher(whole).matches() ? numbers(Double.parseDouble(two.group(1)), Double.parseDouble(two.group(2)), order) : text(whole));
        }
        if (latitude.isEmpty() && longitude.isEmpty()) {
            return Optional.empty();
        }
        if (latitude.isEmpty() || longitude.isEmpty()) {
            throw Refusal.because(TEXTS.text("siteValues.isemptyMissing", "isEmpty", latitude.isEmpty()));
        }
        OptionalDouble north = number(latitude);
        OptionalDouble east = number(longitude);
        return Optional.of(north.isPresent() && east.isPresent() ? numbers(north.getAsDouble(), east.getAsDouble(), order)
                : order == CoordinateOrder.SWAPPED && !(latitude + longitude).matches("(?i).*[NSEW].*") ? text(longitude + "; " + latitude)
                        : text(latitude + "; " + longitude));
    }

    private static PositionText.ReadPosition numbers(double first, double second, CoordinateOrder order) throws Refusal {
        double latitude = order == CoordinateOrder.SWAPPED ? second : first;
        double longitude = order == CoordinateOrder.SWAPPED ? first : second;
        if (Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) {
            return PositionText.ofDegrees(new GeoPosition(latitude, longitude));
        }
        boolean badLatitude = Math.abs(latitude) > 90;
        throw new Refusal(TEXTS.text("siteValues.degrees", "longitude", badLatitude
                ? TEXTS.text("siteValues.latitudeNotBetween", "latitude", latitude)
                : TEXTS.text("siteValues.longitudeNotBetween",
                "longitude", longitude)), Math.abs(longitude) <= 90 && Math.abs(latitude) <= 180);
    }

    private static PositionText.ReadPosition text(String text) throws Refusal {
        try {
            return PositionText.read(text);
        } catch (IllegalArgumentException e) {
            throw Refusal.because(e.getMessage().replaceFirst("(?s)\\. Write, for example.*|\\. A locator has.*", "").replaceFirst("\\.$", ""));
        }
    }

    /** Whether a text is a position, or would be one with its numbers the other way round. */
    static boolean isPosition(String text) {
        try {
            return TWO_NUMBERS.matcher(text).matches() && !DECIMAL_COMMA.matcher(text).matches() || PositionText.read(text) != null;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static Optional<Locator> locator(String text) {
        try {
            return Optional.of(Locator.parse(text));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The error as given, or else half the diagonal of the locator that was given, in whole metres upwards. */
    OptionalDouble errorOfNewMarkM() {
        return errorM.isPresent() || locator.isEmpty() ? errorM
                : OptionalDouble.of(Math.ceil(Geodesic.distanceM(locator.get().centre(), locator.get().bounds().southWest())));
    }

    /** Whether the mark lies in the locator that was given: then it says nothing new of where the mark is. */
    boolean isKnownBetter(GeoPosition mark) {
        return locator.filter(area -> area.bounds().contains(mark)).isPresent();
    }

    /** A decimal number with a point or a comma; empty for anything else. */
    private static OptionalDouble number(String text) {
        if (!text.isEmpty() && NUMBER.matcher(text).matches()) {
            try {
                return OptionalDouble.of(Double.parseDouble(text.replace(',', '.')));
            } catch (NumberFormatException e) {
                // A sign or a point alone.
            }
        }
        return OptionalDouble.empty();
    }

    /** {@code line}, also as "line site"; empty for what is no kind. */
    static Optional<SiteKind> kind(String text) {
        String word = text.strip().toLowerCase(Locale.ROOT).replaceFirst(" site$", "");
        for (SiteKind kind : SiteKind.values()) {
            if (kind.getLiteral().equals(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    private static List<Square> squares(String text) throws Refusal {
        try {
            return text.isEmpty() ? List.of() : Squares.parse(text);
        } catch (IllegalArgumentException e) {
            throw Refusal.because(e.getMessage().replaceFirst("(?s)\\. A locator has.*|\\.$", ""));
        }
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }
}
