package org.straddle.grid;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.straddle.words.Catalogue;

/**
 * What things on a map are to a rove, such as {@code road} or {@code power-line}. Any word will do; the
 * constants are those with a usual weight (see {@link Surroundings#usual}).
 *
 * @param name in lower case, words joined by hyphens; the plural of a known role is taken for the role
 */
public record MapRole(String name) {

    private static final Catalogue TEXTS = Catalogue.of(MapRole.class);

    // Before the constants, whose constructor asks it.
    private static final List<String> NAMES = List.of("road", "power-line", "building", "railway", "quarry");

    public static final MapRole ROAD = new MapRole("road");
    public static final MapRole POWER_LINE = new MapRole("power-line");
    public static final MapRole BUILDING = new MapRole("building");
    public static final MapRole RAILWAY = new MapRole("railway");
    public static final MapRole QUARRY = new MapRole("quarry");

    /** The roles that this class names. */
    public static final List<MapRole> KNOWN = List.of(ROAD, POWER_LINE, BUILDING, RAILWAY, QUARRY);

    /** @throws IllegalArgumentException if the name is empty or longer than a word or two */
    public MapRole {
        name = singular(Objects.requireNonNull(name, "name").strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-"));
        if (!name.matches("[\\p{L}\\p{N}-]{1,40}")) {
            throw new IllegalArgumentException(TEXTS.text("mapRole.unreadable", "text", Quoted.shortened(name)));
        }
    }

    private static String singular(String name) {
        for (String known : NAMES) {
            if (name.equals(known + "s") || known.endsWith("y") && name.equals(known.substring(0, known.length() - 1) + "ies")) {
                return known;
            }
        }
        return name;
    }

    public boolean isKnown() {
        return NAMES.contains(name);
    }

    @Override
    public String toString() {
        return name;
    }
}
