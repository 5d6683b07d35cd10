package org.straddle.exchange.fixes;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Presence;
import org.straddle.words.Catalogue;

/**
 * Fixes out of NMEA 0183 sentences: GGA for position and height, RMC for the date (and the position where there is no
 * GGA), GST for the error, DTM for the datum. Sentences of the same time of day make one fix.
 *
 * <p>Logs begin and end in the middle of a sentence, and lines get lost: a sentence whose checksum is missing or
 * wrong is left out with a remark. Another datum than WGS 84 is refused, since squares are defined on that.
 */
final class NmeaLog {

    private static final Catalogue TEXTS = Catalogue.of(NmeaLog.class);

    private static final int LONGEST_LINE = 1000;
    private static final int MOST_REMARKS = 5;

    /** Talker and type, fields, checksum. Longer sentences than the standard's 82 characters occur in GST and GNS. */
    private static final Pattern SENTENCE = Pattern.compile("\\$([A-Z]{2}([A-Z]{3}),[^*$]*)\\*([0-9A-Fa-f]{2})\\s*$");
    private static final Pattern DEGREES_MINUTES = Pattern.compile("(\\d{1,3})(\\d\\d(?:\\.\\d{0,15})?)");
    private static final Pattern TIME = Pattern.compile("(\\d\\d)(\\d\\d)(\\d\\d)(?:\\.(\\d{1,9}))?");
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{0,15})?");

    /** GGA qualities that are measured: 6 to 8 are dead reckoning, typed in, and simulated. */
    private static final String MEASURED = "[1-5]";

    private final MapSource source;
    private final List<FixLog.Reading> readings = new ArrayList<>();
    private final List<LocalTime> withoutDate = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private int line;
    private int unsaid;
    private int sentences;
    private LocalDate date;
    private LocalTime lastDated;

    /** Of the fix that is being gathered. */
    private LocalTime time;
    private GeoPosition fromGga;
    private GeoPosition fromRmc;
    private OptionalDouble altitude = OptionalDouble.empty();
    private OptionalDouble r95 = OptionalDouble.empty();

    private NmeaLog(MapSource source) {
        this.source = source;
    }

    static FixLog read(MapSource source, InputStream in) throws IOException {
        return new NmeaLog(source).read(new BufferedReader(new InputStreamReader(in, StandardCharsets.ISO_8859_1)));
    }

    private FixLog read(BufferedReader in) throws IOException {
        for (String text = next(in); text != null; text = next(in)) {
            line++;
            int start = text.indexOf('$');
            if (start >= 0) {
                sentence(text.substring(start));
            }
        }
        finish();
        if (sentences == 0) {
            throw source.refuse(line == 0 ? 0 : 1, TEXTS.text("nmeaLog.fileNeitherGpx",
                    "remarks", remarks.isEmpty() ? "." : ": " + remarks.get(0)), FixReader.RIGHT_FILE);
        }
        if (readings.isEmpty()) {
            throw source.refuse(0, TEXTS.text("nmeaLog.noneItsSentences", "sentences", sentences),
                    TEXTS.text("nmeaLog.recordGgaRmc"));
        }
        if (unsaid > 0) {
            remarks.add(TEXTS.text("nmeaLog.moreSentencesWere", "unsaid", unsaid));
        }
        return new FixLog(source.name(), dated(), remarks);
    }

    /** A line without its end; a longer one than any log has is cut, so that binary files do not fill the memory. */
    private static String next(BufferedReader in) throws IOException {
        StringBuilder text = new StringBuilder();
        int c = in.read();
        if (c < 0) {
            return null;
        }
        while (c >= 0 && c != '\n') {
            if (text.length() < LONGEST_LINE) {
                text.append((char) c);
            }
            c = in.read();
        }
        return text.toString();
    }

    private void sentence(String text) throws ReadException {
        Matcher parts = SENTENCE.matcher(text);
        if (!parts.find()) {
            remark(TEXTS.text("nmeaLog.hasDamagedSentence"));
            return;
        }
        if (checksum(parts.group(1)) != Integer.parseInt(parts.group(3), 16)) {
            remark(TEXTS.text("nmeaLog.hasWrongChecksum"));
            return;
        }
        sentences++;
        String[] fields = parts.group(1).split(",", -1);
        try {
            switch (parts.group(2)) {
                case "GGA" -> gga(fields);
                case "RMC" -> rmc(fields);
                case "GST" -> gst(fields);
                case "DTM" -> dtm(fields);
                default -> {
                    // Satellites in view, courses, and others say nothing of the mark.
                }
            }
        } catch (IllegalArgumentException | DateTimeException | ArrayIndexOutOfBoundsException e) {
            remark(TEXTS.text("nmeaLog.hasSentenceCannot", "group", parts.group(2)));
        }
    }

    /** Exclusive or of all characters between $ and *. */
    static int checksum(String between) {
        int sum = 0;
        for (int i = 0; i < between.length(); i++) {
            sum ^= between.charAt(i);
        }
        return sum & 0xFF;
    }

    private void gga(String[] fields) {
        GeoPosition position = fields[2].isEmpty() ? null : position(fields[2], fields[3], fields[4], fields[5]);
        begin(time(fields[1]));
        if (position == null || fields[6].equals("0")) {
            return;
        }
        if (!fields[6].matches(MEASURED)) {
            remark(TEXTS.text("nmeaLog.hasPositionNot", "fields", fields[6]));
            return;
        }
        fromGga = position;
        // Height above the sea and of the sea above the ellipsoid; with one alone the sum is not known.
        altitude = fields[9].isEmpty() || fields[11].isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(number(fields[9]) + number(fields[11]));
    }

    private void rmc(String[] fields) {
        LocalTime at = time(fields[1]);
        GeoPosition position = fields[2].equals("A") ? position(fields[3], fields[4], fields[5], fields[6]) : null;
        begin(at);
        if (!fields[9].isEmpty()) {
            date = date(fields[9]);
            lastDated = at;
        }
        fromRmc = position;
    }

    private void gst(String[] fields) {
        LocalTime at = time(fields[1]);
        if (fields[6].isEmpty() || fields[7].isEmpty()) {
            return;
        }
        double north = number(fields[6]);
        double east = number(fields[7]);
        begin(at);
        // Of a circle with the same mean square; exact when both are equal.
        r95 = OptionalDouble.of(Presence.R95_PER_SIGMA * Math.sqrt((north * north + east * east) / 2));
    }

    private void dtm(String[] fields) throws ReadException {
        if (!fields[1].equals("W84")) {
            throw source.refuse(line, TEXTS.text("nmeaLog.receiverSetDatum", "fields", fields[1]),
                    TEXTS.text("nmeaLog.setReceiverWgs"));
        }
    }

    /** A new time of day ends the fix before. */
    private void begin(LocalTime at) {
        if (!at.equals(time)) {
            finish();
            time = at;
        }
    }

    private void finish() {
        GeoPosition position = fromGga != null ? fromGga : fromRmc;
        if (position != null) {
            if (date != null && lastDated != null && time.isBefore(lastDated) && lastDated.getHour() - time.getHour() > 12) {
                // Midnight passed without a new date yet.
                date = date.plusDays(1);
                lastDated = time;
            }
            readings.add(new FixLog.Reading(date == null ? Optional.empty() : Optional.of(at(date, time)), position,
                    fromGga == null ? OptionalDouble.empty() : altitude, r95));
            if (date == null) {
                withoutDate.add(time);
            }
        }
        fromGga = null;
        fromRmc = null;
        altitude = OptionalDouble.empty();
        r95 = OptionalDouble.empty();
    }

    /** Fixes before the first date get it too: logs begin with a GGA. */
    private List<FixLog.Reading> dated() {
        Optional<Instant> first = readings.stream().flatMap(reading -> reading.at().stream()).findFirst();
        if (first.isEmpty() || withoutDate.isEmpty()) {
            return readings;
        }
        List<FixLog.Reading> all = new ArrayList<>(readings);
        LocalDate day = first.get().atZone(ZoneOffset.UTC).toLocalDate();
        for (int i = 0; i < withoutDate.size(); i++) {
            FixLog.Reading bare = all.get(i);
            Instant at = at(day, withoutDate.get(i));
            all.set(i, new FixLog.Reading(Optional.of(at.isAfter(first.get()) ? at.minusSeconds(86_400) : at), bare.position(),
                    bare.altitudeM(), bare.r95M()));
        }
        return all;
    }

    private static Instant at(LocalDate day, LocalTime time) {
        return day.atTime(time).toInstant(ZoneOffset.UTC);
    }

    private void remark(String what) {
        if (remarks.size() < MOST_REMARKS) {
            remarks.add(TEXTS.text("nmeaLog.lineLeftOut", "line", line, "what", what));
        } else {
            unsaid++;
        }
    }

    private static GeoPosition position(String latitude, String northOrSouth, String longitude, String eastOrWest) {
        return new GeoPosition(angle(latitude, northOrSouth, "N", "S"), angle(longitude, eastOrWest, "E", "W"));
    }

    private static double angle(String written, String side, String positive, String negative) {
        Matcher parts = DEGREES_MINUTES.matcher(written);
        if (!parts.matches() || !side.equals(positive) && !side.equals(negative)) {
            throw new IllegalArgumentException(written + side);
        }
        double minutes = Double.parseDouble(parts.group(2));
        double degrees = Integer.parseInt(parts.group(1)) + minutes / 60;
        if (minutes >= 60 || degrees > (positive.equals("N") ? 90 : 180)) {
            throw new IllegalArgumentException(written);
        }
        return side.equals(negative) ? -degrees : degrees;
    }

    private static LocalTime time(String written) {
        Matcher parts = TIME.matcher(written);
        if (!parts.matches()) {
            throw new IllegalArgumentException(written);
        }
        String fraction = parts.group(4) == null ? "" : parts.group(4);
        // A leap second is told as second 60: it has no place in UTC instants.
        return LocalTime.of(Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)),
                Math.min(59, Integer.parseInt(parts.group(3))), Integer.parseInt((fraction + "000000000").substring(0, 9)));
    }

    private static LocalDate date(String ddmmyy) {
        if (!ddmmyy.matches("\\d{6}")) {
            throw new IllegalArgumentException(ddmmyy);
        }
        int year = Integer.parseInt(ddmmyy.substring(4));
        // The system began in 1980.
        return LocalDate.of(year < 80 ? 2000 + year : 1900 + year, Integer.parseInt(ddmmyy.substring(2, 4)),
                Integer.parseInt(ddmmyy.substring(0, 2)));
    }

    private static double number(String written) {
        if (!NUMBER.matcher(written).matches()) {
            throw new IllegalArgumentException(written);
        }
        return Double.parseDouble(written);
    }
}
