package org.straddle.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.words.Catalogue;

/**
 * Reads a position as people write it: decimal degrees, degrees and minutes, degrees, minutes and
 * seconds, each with signs or with N, S, E, W before or after, or a locator of 4 to 10 characters,
 * which stands for its centre.
 *
 * <p>Latitude comes first unless letters say otherwise. What could mean two places is refused rather
 * than guessed, and the reading is told back in words, because a wrong guess sends a team to a wrong
 * place.
 */
public final class PositionText {

    private static final Catalogue TEXTS = Catalogue.of(PositionText.class);

    /** Longer text is no position; the limit keeps hostile input cheap. */
    private static final int LONGEST = 120;

    private static final String NUMBER = "(\\d{1,12}(?:\\.\\d{0,18})?)";
    private static final Pattern ANGLE = Pattern.compile("([NSEW])? ?([+-])? ?" + NUMBER + "(?:(?: ?[°:] ?| )" + NUMBER
            + "(?:(?: ?[':] ?| )" + NUMBER + " ?\"?| ?')?| ?°)? ?([NSEW])?");
    private static final Pattern LABEL = Pattern.compile("\\b(?:LAT(?:ITUDE)?|LONG?(?:ITUDE)?|LNG)\\b[.:=]? ?");
    private static final Pattern LONGITUDE_LABEL_FIRST = Pattern.compile("\\bL(?:NG|ON).*\\bLAT");
    private static final Pattern LETTER = Pattern.compile("[NSEW]");
    private static final Pattern DEGREE_SIGN = Pattern.compile("°");
    private static final Pattern NUMBER_START = Pattern.compile("[+-] ?\\d|(?<![\\d.+-]|[+-] )\\d");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");

    private static final String EXAMPLES =
            TEXTS.text("positionText.example");

    private PositionText() {
    }

    /**
     * A position with what the text was taken for.
     *
     * @param position the place
     * @param interpretation one line for the user, for example {@code decimal degrees: 64.146600° N,
     *     21.942600° W, square HP94}
     */
    public record ReadPosition(GeoPosition position, String interpretation) {
    }

    /** A way to write an angle; each ends within 0.4 m on the ground, fine enough to argue a line. */
    public enum Form {
        /** {@code 64.146667° N, 21.943000° W} */
        DEGREES(1_000_000),
        /** {@code 64° 08.8000′ N, 21° 56.5800′ W} */
        MINUTES(60 * 10_000),
        /** {@code 64° 08′ 48.00″ N, 21° 56′ 34.80″ W} */
        SECONDS(3600 * 100);

        private final int perDegree;

        Form(int perDegree) {
            this.perDegree = perDegree;
        }

        /** Counts whole last places first, so that 59.99999′ is carried and never printed as 60′. */
        private String angle(double degrees, char positive, char negative) {
            long count = Math.round(Math.abs(degrees) * perDegree);
            char letter = degrees < 0 && count > 0 ? negative : positive;
            long whole = count / perDegree;
            long rest = count % perDegree;
            return switch (this) {
                case DEGREES -> whole + "." + digits(rest, 6) + "° " + letter;
                case MINUTES -> whole + "° " + digits(rest / 10_000, 2) + "." + digits(rest % 10_000, 4) + "′ " + letter;
                case SECONDS -> whole + "° " + digits(rest / 6000, 2) + "′ " + digits(rest % 6000 / 100, 2) + "."
                        + digits(rest % 100, 2) + "″ " + letter;
            };
        }
    }

    /** In so many digits, whatever the language: what is written is read again. */
    private static String digits(long number, int digits) {
        String text = Long.toString(number);
        return "0".repeat(Math.max(0, digits - text.length())) + text;
    }

    /** The position for a reader, latitude first, with letters; {@link #read} reads it back. */
    public static String write(GeoPosition position, Form form) {
        return form.angle(position.latitudeDeg(), 'N', 'S') + ", " + form.angle(position.longitudeDeg(), 'E', 'W');
    }

    /** As if the position had been written in decimal degrees: for a source that has numbers, not text. */
    public static ReadPosition ofDegrees(GeoPosition position) {
        return told(position, TEXTS.text(Form.DEGREES));
    }

    /** @throws IllegalArgumentException with a sentence for the user if the text is no position */
    public static ReadPosition read(String text) {
        if (text == null || text.isEmpty()) {
            throw new IllegalArgumentException(TEXTS.text("positionText.therePositionHere", "examples", EXAMPLES));
        }
        if (text.length() > LONGEST) {
            throw refused(text, TEXTS.text("positionText.tooLongPosition"));
        }
        String given = text.strip();
        if (given.matches("[A-Ra-r]{2}\\d\\d\\w*")) {
            return readLocator(given);
        }
        return readAngles(given);
    }

    private static ReadPosition readLocator(String text) {
        Locator locator = new Locator(text);
        return told(locator.centre(), TEXTS.text("positionText.centreLocator", "locator", locator));
    }

    private static ReadPosition readAngles(String text) {
        String plain = plainMarks(text);
        if (LONGITUDE_LABEL_FIRST.matcher(plain).find()) {
            throw refused(text, TEXTS.text("positionText.namesLongitudeBefore"));
        }
        plain = LABEL.matcher(plain).replaceAll(" ").strip();
        if (starts(NUMBER_START, plain).size() < 2) {
            throw refused(text, TEXTS.text("positionText.notLatitudeLongitude"));
        }
        List<Angle> angles = new ArrayList<>();
        for (String part : split(plain, text)) {
            angles.add(Angle.read(part, text));
        }
        Angle first = angles.get(0);
        Angle second = angles.get(1);
        if (first.letter.isPresent() != second.letter.isPresent()) {
            throw refused(text, TEXTS.text("positionText.oneLetter"));
        }
        if (first.letter.isPresent() && first.isLongitude() == second.isLongitude()) {
            throw refused(text, TEXTS.text("positionText.hasTwoValues", "isLongitude", first.isLongitude()));
        }
        boolean lettered = first.letter.isPresent();
        boolean longitudeFirst = lettered && first.isLongitude();
        double latitude = (longitudeFirst ? second : first).degrees;
        double longitude = (longitudeFirst ? first : second).degrees;
        checkRange(text, latitude, longitude, lettered);
        Form form = Form.values()[Math.max(first.parts, second.parts) - 1];
        return told(new GeoPosition(latitude, longitude), TEXTS.text(form));
    }

    private static void checkRange(String text, double latitude, double longitude, boolean lettered) {
        if (Math.abs(latitude) > 90) {
            String hint = lettered || Math.abs(longitude) > 90 ? ""
                    : TEXTS.text("positionText.latitudeComesFirst", "plain", GeoPosition.plain(longitude),
                            "plain2", GeoPosition.plain(latitude));
            throw refused(text, TEXTS.text("positionText.hasLatitudeWhich", "plain", GeoPosition.plain(latitude),
                    "hint", hint));
        }
        if (Math.abs(longitude) > 180) {
            throw refused(text,
                    TEXTS.text("positionText.hasLongitudeWhich", "plain", GeoPosition.plain(longitude)));
        }
    }

    private static ReadPosition told(GeoPosition position, String form) {
        return new ReadPosition(position,
                TEXTS.text("positionText.square", "form", form, "position", write(position, Form.DEGREES),
                        "position2", Square.of(position)));
    }

    /** One sign for each meaning, capitals, single spaces. */
    private static String plainMarks(String text) {
        return text.toUpperCase(Locale.ROOT)
                .replaceAll("[\u2212\u2010-\u2014]", "-")
                .replaceAll("[\u00b0\u00ba\u02da\u25e6]|DEG(REES?)?|(?<=\\d)D", "\u00b0")
                .replaceAll("''|[\u2032\u2019\u00b4]{2}|[\u2033\u201c\u201d\u201f]", "\"")
                .replaceAll("[\u2032\u2018\u2019\u201b\u00b4`]", "'")
                .replaceAll("[()\\[\\]]", " ")
                .replaceAll("[\\s\u00a0\u202f_]+", " ")
                .replaceAll(" $|^ |/$", "");
    }

    /** The two halves of a text, found by the first mark that tells: separator, letters, degree signs, count. */
    private static List<String> split(String plain, String text) {
        String dotted = decimalPoints(plain, text);
        String[] parted = dotted.split(" ?[;,/|] ?", -1);
        if (parted.length == 2) {
            return List.of(parted[0].strip(), parted[1].strip());
        }
        if (parted.length > 2) {
            throw refused(text, TEXTS.text("positionText.hasMoreThan"));
        }
        List<Integer> letters = starts(LETTER, dotted);
        if (letters.size() == 2) {
            return cut(dotted, letters.get(0) == 0 ? letters.get(1) : letters.get(0) + 1);
        }
        List<Integer> numbers = starts(NUMBER_START, dotted);
        List<Integer> degreeSigns = starts(DEGREE_SIGN, dotted);
        if (degreeSigns.size() == 2) {
            int before = numbers.stream().filter(n -> n < degreeSigns.get(1)).reduce((a, b) -> b).orElse(0);
            return cut(dotted, before);
        }
        if (numbers.size() == 2 || numbers.size() == 4 || numbers.size() == 6) {
            return cut(dotted, numbers.get(numbers.size() / 2));
        }
        throw refused(text, TEXTS.text("positionText.notLatitudeLongitude"));
    }

    private static List<String> cut(String plain, int at) {
        return List.of(plain.substring(0, at).strip(), plain.substring(at).strip());
    }

    private static List<Integer> starts(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(result -> result.start()).toList();
    }

    /**
     * Turns decimal commas into points. Where a comma between digits could part the two numbers as well
     * as open a fraction, the text is refused.
     */
    private static String decimalPoints(String plain, String text) {
        int between = starts(DECIMAL_COMMA, plain).size();
        if (plain.contains(".") || between == 0) {
            return plain;
        }
        if (plain.matches("[+-]? ?\\d+,\\d+")) {
            throw refused(text, TEXTS.text("positionText.oneNumber"));
        }
        boolean partedOtherwise = starts(LETTER, plain).size() == 2 || starts(DEGREE_SIGN, plain).size() == 2
                || plain.contains(";");
        if (between == 2 || between == 1 && partedOtherwise) {
            return DECIMAL_COMMA.matcher(plain).replaceAll(".");
        }
        throw refused(text, TEXTS.text("positionText.hasCommasCan"));
    }

    private static IllegalArgumentException refused(String text, String reason) {
        return new IllegalArgumentException("\"" + Quoted.shortened(text) + "\" " + reason + ". " + EXAMPLES);
    }

    /** One of the two numbers; {@code parts} is 1 for degrees, 2 with minutes, 3 with seconds. */
    private record Angle(double degrees, int parts, Optional<String> letter) {

        static Angle read(String part, String text) {
            Matcher form = ANGLE.matcher(part);
            if (!form.matches()) {
                throw refused(text, TEXTS.text("positionText.hasPartAngle", "shortened", Quoted.shortened(part)));
            }
            String letter = form.group(1) == null ? form.group(6) : form.group(1);
            if (form.group(1) != null && form.group(6) != null) {
                throw refused(text, TEXTS.text("positionText.hasTwoLetters"));
            }
            if (letter != null && form.group(2) != null) {
                throw refused(text, TEXTS.text("positionText.hasSignLetter"));
            }
            int parts = form.group(5) != null ? 3 : form.group(4) != null ? 2 : 1;
            for (int i = 3; i < 2 + parts; i++) {
                if (form.group(i).contains(".")) {
                    throw refused(text, TEXTS.text("positionText.hasFractionBefore"));
                }
            }
            double minutes = parts > 1 ? Double.parseDouble(form.group(4)) : 0;
            double seconds = parts > 2 ? Double.parseDouble(form.group(5)) : 0;
            if (minutes >= 60 || seconds >= 60) {
                throw refused(text, TEXTS.text("positionText.hasMinutesSeconds"));
            }
            // Divided once, so that 30' is exactly half a degree.
            double whole = Double.parseDouble(form.group(3));
            double size = parts == 1 ? whole : (whole * 3600 + minutes * 60 + seconds) / 3600;
            boolean negative = "-".equals(form.group(2)) || "S".equals(letter) || "W".equals(letter);
            return new Angle(negative ? -size : size, parts, Optional.ofNullable(letter));
        }

        boolean isLongitude() {
            return letter.filter(l -> l.equals("E") || l.equals("W")).isPresent();
        }
    }
}
