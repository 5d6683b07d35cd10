package org.straddle.daysheet.sheet;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.model.Bird;

/**
 * How a bird is told apart in a small block: letters that no other bird of the event has, and a hatch.
 *
 * @param letters one letter and perhaps a number, such as {@code T1}
 */
public record BirdMark(String letters, Hatch hatch) {

    /** For turns that name no bird. */
    public static final BirdMark NONE = new BirdMark("?", Hatch.LEVEL);

    private static final Pattern LETTER = Pattern.compile("\\p{L}");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,2}");

    /** A mark for each bird, in the order of the event. */
    public static Map<Bird, BirdMark> all(List<Bird> birds) {
        Map<Bird, BirdMark> marks = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (Bird bird : birds) {
            String wanted = letters(bird.getName() == null ? "" : bird.getName());
            String letters = wanted;
            for (char more = 'b'; !taken.add(letters); more++) {
                letters = wanted + more;
            }
            marks.put(bird, new BirdMark(letters, Hatch.of(marks.size())));
        }
        return marks;
    }

    private static String letters(String name) {
        return first(LETTER, name).toUpperCase(Locale.ROOT) + first(NUMBER, name);
    }

    private static String first(Pattern wanted, String name) {
        Matcher found = wanted.matcher(name);
        return found.find() ? found.group() : "";
    }
}
