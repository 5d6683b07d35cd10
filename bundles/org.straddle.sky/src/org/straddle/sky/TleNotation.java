package org.straddle.sky;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.words.Catalogue;

/**
 * Two-line element sets: 69 columns a line, a field to a column range, a modulo-10 checksum in the
 * last column. A general parser would lose the reason for a refusal, so every field is read by its
 * columns and named in the message.
 */
final class TleNotation {

    private static final Catalogue TEXTS = Catalogue.of(TleNotation.class);

    private static final int LENGTH = 69;
    /** Letters of Alpha-5 numbers, without I and O: A is 10, Z is 33. */
    private static final String ALPHA5 = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final int ALPHA5_MOST = 339_999;
    /** Two-digit years from here on belong to the 20th century. */
    private static final int FIRST_YEAR = 57;
    private static final Pattern DESIGNATOR = Pattern.compile("(\\d{4})-(\\d{3})([A-Z]{1,3})");

    private TleNotation() {
    }

    static ElementSet read(String name, String line1, String line2) {
        Line one = new Line(name, '1', line1);
        Line two = new Line(name, '2', line2);
        int number = one.catalogueNumber();
        if (number != two.catalogueNumber()) {
            throw one.refuse(TEXTS.text("tleNotation.linesBelongDifferent", "field", one.field(3, 7).strip(),
                    "field2", two.field(3, 7).strip()));
        }
        return new ElementSet(strippedName(name), number, one.designator(), one.epoch(),
                two.number(53, 63, TEXTS.text("tleNotation.meanMotion")), two.fraction(27, 33, "eccentricity"),
                two.number(9, 16, "inclination"), two.number(18, 25, TEXTS.text("elementSet.rightAscensionAscending")),
                two.number(35, 42, TEXTS.text("elementSet.argumentPerigee")), two.number(44, 51, TEXTS.text("elementSet.meanAnomaly")),
                one.exponent(54, 61, TEXTS.text("elementSet.dragTerm")), one.number(34, 43, TEXTS.text("elementSet.meanMotionRate")),
                one.exponent(45, 52, TEXTS.text("elementSet.meanMotionAcceleration")), one.whole(65, 68, TEXTS.text("elementSet.elementSetNumber")),
                two.whole(64, 68, TEXTS.text("elementSet.revolutionNumber")));
    }

    private static String strippedName(String name) {
        String stripped = name.strip();
        return stripped.startsWith("0 ") ? stripped.substring(2).strip() : stripped;
    }

    static List<String> write(ElementSet set) {
        String number = number(set);
        int year = set.epoch().atOffset(ZoneOffset.UTC).getYear();
        if (!inTwoDigits(year)) {
            throw noRoom(set, TEXTS.text("tleNotation.epochYear"), year);
        }
        long nanosOfYear = Duration.between(startOfYear(year), set.epoch()).toNanos();
        // 10⁻⁸ day is 864 000 ns.
        long hundredMillionths = Math.floorDiv(nanosOfYear + 432_000, 864_000) + 100_000_000L;
        String line1 = "1 " + number + "U " + designator(set) + " "
                + String.format(Locale.ROOT, "%02d%03d.%08d", year % 100, hundredMillionths / 100_000_000,
                        hundredMillionths % 100_000_000)
                + " " + rate(set) + " " + exponent(set, TEXTS.text("elementSet.meanMotionAcceleration"), set.meanMotionDdot()) + " "
                + exponent(set, TEXTS.text("elementSet.dragTerm"), set.bstar()) + " 0 "
                + whole(set, TEXTS.text("tleNotation.elementSetNumber"), set.elementSetNumber(), 4);
        String line2 = "2 " + number + " " + degrees(set.inclinationDeg()) + " " + degrees(set.raanDeg()) + " "
                + eccentricity(set) + " " + degrees(set.argumentOfPerigeeDeg()) + " "
                + degrees(set.meanAnomalyDeg()) + " "
                + String.format(Locale.ROOT, "%11.8f", set.meanMotionRevPerDay())
                + whole(set, TEXTS.text("tleNotation.revolutionNumber"), set.revolutionAtEpoch(), 5);
        return List.of(line1 + checksum(line1), line2 + checksum(line2));
    }

    /** Sum of the digits of the first 68 columns, a minus counting one, modulo ten. */
    static int checksum(String line) {
        int sum = 0;
        for (int i = 0; i < LENGTH - 1; i++) {
            char c = line.charAt(i);
            sum += c >= '0' && c <= '9' ? c - '0' : c == '-' ? 1 : 0;
        }
        return sum % 10;
    }

    private static boolean inTwoDigits(int year) {
        return year >= 1900 + FIRST_YEAR && year < 2000 + FIRST_YEAR;
    }

    private static Instant startOfYear(int year) {
        return LocalDate.of(year, 1, 1).atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    private static String number(ElementSet set) {
        int number = set.catalogueNumber();
        if (number > ALPHA5_MOST) {
            throw noRoom(set, TEXTS.text("tleNotation.catalogueNumber"), number);
        }
        return number < 100_000 ? String.format(Locale.ROOT, "%05d", number)
                : ALPHA5.charAt(number / 10_000 - 10) + String.format(Locale.ROOT, "%04d", number % 10_000);
    }

    private static String designator(ElementSet set) {
        if (set.internationalDesignator().isEmpty()) {
            return " ".repeat(8);
        }
        Matcher m = DESIGNATOR.matcher(set.internationalDesignator());
        if (!m.matches() || !inTwoDigits(Integer.parseInt(m.group(1)))) {
            throw noRoom(set, TEXTS.text("tleNotation.internationalDesignator"), set.internationalDesignator());
        }
        return m.group(1).substring(2) + m.group(2) + String.format("%-3s", m.group(3));
    }

    private static String rate(ElementSet set) {
        String text = String.format(Locale.ROOT, "%.8f", Math.abs(set.meanMotionDot()));
        if (!text.startsWith("0.")) {
            throw noRoom(set, TEXTS.text("tleNotation.meanMotionRate"), set.meanMotionDot());
        }
        return sign(set.meanMotionDot()) + text.substring(1);
    }

    private static String exponent(ElementSet set, String what, double value) {
        if (value == 0) {
            return " 00000-0";
        }
        int power = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        long digits = mantissa(value, power);
        if (digits == 100_000) {
            power++;
            digits = 10_000;
        }
        if (power < -9) {
            return " 00000-0";
        }
        if (power > 9) {
            throw noRoom(set, TEXTS.text("tleNotation.the", "what", what), value);
        }
        return sign(value) + String.format(Locale.ROOT, "%05d", digits) + (power > 0 ? "+" : "-") + Math.abs(power);
    }

    private static long mantissa(double value, int power) {
        return BigDecimal.valueOf(Math.abs(value)).movePointRight(5 - power)
                .setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    private static String sign(double value) {
        return value < 0 ? "-" : " ";
    }

    private static String degrees(double degrees) {
        return String.format(Locale.ROOT, "%8.4f", degrees);
    }

    private static String eccentricity(ElementSet set) {
        String text = String.format(Locale.ROOT, "%.7f", set.eccentricity());
        if (!text.startsWith("0.")) {
            throw noRoom(set, TEXTS.text("tleNotation.eccentricity"), set.eccentricity());
        }
        return text.substring(2);
    }

    private static String whole(ElementSet set, String what, int value, int columns) {
        String text = Integer.toString(value);
        if (text.length() > columns) {
            throw noRoom(set, what, value);
        }
        return " ".repeat(columns - text.length()) + text;
    }

    private static ElementSetException noRoom(ElementSet set, String what, Object value) {
        return new ElementSetException(TEXTS.text("tleNotation.cannotWrittenAs", "set", set.label(), "what", what,
                "value", value));
    }

    /** One line of 69 columns; columns count from 1, both ends included. */
    private static final class Line {

        private static final int[] BLANKS_1 = {2, 9, 18, 33, 44, 53, 62, 64};
        private static final int[] BLANKS_2 = {2, 8, 17, 26, 34, 43, 52};

        private final String name;
        private final char ordinal;
        private final String text;

        Line(String name, char ordinal, String raw) {
            this.name = name;
            this.ordinal = ordinal;
            this.text = raw.stripTrailing();
            if (text.isEmpty() || text.charAt(0) != ordinal) {
                throw refuse(TEXTS.text("tleNotation.doesNotBegin", "ordinal", ordinal));
            }
            if (text.length() != LENGTH) {
                throw refuse(TEXTS.text("tleNotation.hasColumnsInstead", "text", text.length(), "length", LENGTH,
                        "case", text.length() < LENGTH));
            }
            for (int i = 0; i < LENGTH; i++) {
                if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
                    throw refuse(TEXTS.text("tleNotation.columnHoldsCharacter", "i", (i + 1)));
                }
            }
            char last = text.charAt(LENGTH - 1);
            if (last != '0' + checksum(text)) {
                throw refuse(TEXTS.text("tleNotation.checksumColumnBut", "last", last, "checksum", checksum(text)));
            }
            for (int column : ordinal == '1' ? BLANKS_1 : BLANKS_2) {
                if (text.charAt(column - 1) != ' ') {
                    throw refuse(TEXTS.text("tleNotation.columnMustBlank", "column", column));
                }
            }
        }

        ElementSetException refuse(String reason) {
            return new ElementSetException(TEXTS.text("tleNotation.line", "ordinal", ordinal,
                    "name", name.isBlank() ? "" : TEXTS.text("tleNotation.of", "name", name.strip()), "reason", reason));
        }

        String field(int first, int last) {
            return text.substring(first - 1, last);
        }

        private ElementSetException refuse(int first, int last, String what) {
            return refuse(TEXTS.text("tleNotation.columnsHoldWhich", "first", first, "last", last, "what", what,
                    "field", field(first, last)));
        }

        private String match(int first, int last, String what, String pattern) {
            String value = field(first, last).strip();
            if (!value.matches(pattern)) {
                throw refuse(first, last, what);
            }
            return value;
        }

        int catalogueNumber() {
            String value = match(3, 7, TEXTS.text("elementSet.catalogueNumber"), "[0-9A-HJ-NP-Z]?[0-9]{1,4}");
            int lead = ALPHA5.indexOf(value.charAt(0));
            return lead < 0 ? Integer.parseInt(value)
                    : value.length() == 5 ? (lead + 10) * 10_000 + Integer.parseInt(value.substring(1))
                            : refuseNumber();
        }

        private int refuseNumber() {
            throw refuse(3, 7, TEXTS.text("elementSet.catalogueNumber"));
        }

        String designator() {
            String value = field(10, 17).strip();
            if (value.isEmpty()) {
                return "";
            }
            match(10, 17, TEXTS.text("tleNotation.designator"), "\\d{5}[A-Z]{1,3}");
            return year(value.substring(0, 2)) + "-" + value.substring(2);
        }

        Instant epoch() {
            String value = match(19, 32, "epoch", "\\d\\d[ 0-9]{3}\\.\\d{8}").replace(' ', '0');
            int year = year(value.substring(0, 2));
            int day = Integer.parseInt(value.substring(2, 5));
            if (day < 1 || day > LocalDate.ofYearDay(year, 1).lengthOfYear()) {
                throw refuse(19, 32, "epoch");
            }
            long nanos = Long.parseLong(value.substring(6)) * 864_000L;
            return LocalDate.ofYearDay(year, day).atStartOfDay()
                    .toInstant(ZoneOffset.UTC).plusNanos(nanos);
        }

        private static int year(String twoDigits) {
            int year = Integer.parseInt(twoDigits);
            return year + (year < FIRST_YEAR ? 2000 : 1900);
        }

        double number(int first, int last, String what) {
            return Double.parseDouble(match(first, last, what, "[+-]?\\d*\\.\\d+"));
        }

        double fraction(int first, int last, String what) {
            return Double.parseDouble("0." + match(first, last, what, "\\d{7}"));
        }

        /** A number with an assumed leading decimal point and a power of ten: 28098-4 is 0.28098·10⁻⁴. */
        double exponent(int first, int last, String what) {
            if (field(first, last).isBlank()) {
                return 0;
            }
            String value = match(first, last, what, "[+-]?\\d{5}[ +-]\\d").replace(' ', '+');
            int power = value.length() - 2;
            String mantissa = value.substring(0, power);
            boolean negative = mantissa.startsWith("-");
            return Double.parseDouble((negative ? "-" : "") + "0." + mantissa.replaceFirst("^[+-]", "") + "e"
                    + value.substring(power));
        }

        int whole(int first, int last, String what) {
            return field(first, last).isBlank() ? 0 : Integer.parseInt(match(first, last, what, "\\d+"));
        }
    }
}
