package org.straddle.exchange.chasers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.words.Catalogue;

/**
 * Requests of chasers out of a file. If some line begins with {@code NEED}, the file holds mails: those lines count, with the
 * marks of answers before them, and all others are somebody's words. Else it is a table: call sign, locator, squares, parted
 * by commas, semicolons or tabs, the squares also by blanks. Each line is judged by itself.
 *
 * @param requests each call sign once, with all squares asked for
 * @param doubles  lines of call signs that stood there before
 * @param refused  lines that cannot be read
 */
public record ChaserList(List<Request> requests, int doubles, List<Refused> refused) {

    private static final Catalogue TEXTS = Catalogue.of(ChaserList.class);
    private static final Pattern NEED = Pattern.compile("^[>\\s]*NEED\\b[:\\s]*(.*)$", Pattern.CASE_INSENSITIVE);
    private static final Pattern PARTS = Pattern.compile("[\\s,;\"]+");
    private static final int MOST = 100_000;

    /** @param line from 1 */
    public record Refused(int line, String why) {
    }

    public ChaserList {
        requests = List.copyOf(requests);
        refused = List.copyOf(refused);
    }

    /** @throws ReadException when the file cannot be read, or no line of it can */
    public static ChaserList read(SourceFile file) throws ReadException {
        List<String> lines = file.text().lines().toList();
        if (lines.size() > MOST) {
            throw new ReadException(file.name(), MOST, TEXTS.text("chasers.tooMany", "most", MOST), TEXTS.text("chasers.choose"));
        }
        boolean mails = lines.stream().anyMatch(line -> NEED.matcher(line).matches());
        Map<String, Request> found = new LinkedHashMap<>();
        List<Refused> refused = new ArrayList<>();
        int doubles = 0;
        for (int i = 0; i < lines.size(); i++) {
            Matcher need = NEED.matcher(lines.get(i));
            boolean counts = need.matches() || !mails && !lines.get(i).isBlank() && !(i == 0 && isHeader(lines.get(i)));
            if (counts) {
                try {
                    Request request = Request.of(words(mails ? need.group(1) : lines.get(i)));
                    doubles += found.containsKey(request.callSign()) ? 1 : 0;
                    found.merge(request.callSign(), request, Request::and);
                } catch (IllegalArgumentException e) {
                    refused.add(new Refused(i + 1, e.getMessage()));
                }
            }
        }
        if (found.isEmpty()) {
            throw new ReadException(file.name(), refused.isEmpty() ? 0 : refused.get(0).line,
                    refused.isEmpty() ? TEXTS.text("chasers.none") : refused.get(0).why, TEXTS.text("chasers.choose"));
        }
        return new ChaserList(List.copyOf(found.values()), doubles, refused);
    }

    /** No call sign and no locator has only letters. */
    private static boolean isHeader(String line) {
        return words(line).stream().limit(2).noneMatch(word -> word.chars().anyMatch(Character::isDigit));
    }

    private static List<String> words(String line) {
        return Stream.of(PARTS.split(line.strip())).filter(word -> !word.isEmpty()).toList();
    }
}
