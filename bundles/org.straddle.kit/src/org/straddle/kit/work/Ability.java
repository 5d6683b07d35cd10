package org.straddle.kit.work;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A function that gear gives, or that it needs.
 *
 * @param bands bands such as {@code 2m}; empty means every band where it is given, any band where it is needed
 * @param fit   connector or voltage, such as {@code SMA}; empty fits everything
 */
public record Ability(Function function, Set<String> bands, String fit) {

    private static final Pattern BLANKS = Pattern.compile("\\s+");

    public Ability {
        bands = bands.stream().map(Ability::plain).filter(band -> !band.isEmpty())
                .collect(Collectors.toUnmodifiableSet());
        fit = plain(fit);
    }

    public static Ability of(Function function, String... bands) {
        return new Ability(function, Set.of(bands), "");
    }

    /** Does this, given, meet that, needed? */
    public boolean meets(Ability needed) {
        return function == needed.function
                && (bands.isEmpty() || bands.containsAll(needed.bands))
                && (fit.isEmpty() || needed.fit.isEmpty() || fit.equals(needed.fit));
    }

    /** However people space and write it: {@code 70 cm} is {@code 70cm}, {@code 12V} is {@code 12 v}. */
    private static String plain(String text) {
        return text == null ? "" : BLANKS.matcher(text).replaceAll("").toLowerCase(Locale.ROOT);
    }
}
