package org.straddle.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.straddle.grid.FixAveraging;
import org.straddle.grid.Presence;
import org.straddle.grid.Standing;
import org.straddle.grid.StationSpread;

/**
 * How well it can be argued that a station occupies all squares it claims, and what would lift that to the level
 * the event asks for: a longer span, a better mark, or the mean of more fixes, each by itself.
 *
 * @param spread how the station lies about the line or corner
 * @param errorM R95 of the mark, metres
 * @param level  the wanted probability, above 0, at most 1
 */
public record PresenceArgument(StationSpread spread, double errorM, double level) {

    /** With the mark as good as it is. */
    public Presence presence() {
        return spread.presence(errorM);
    }

    public boolean suffices() {
        return presence().least() >= level;
    }

    /** The largest R95 of the mark that would do, metres; empty if no mark is good enough. */
    public OptionalDouble errorNeededM() {
        return spread.errorFor(level);
    }

    /** The shortest span that would do, metres; empty inside one square, or if none would. */
    public OptionalDouble spanNeededM() {
        return spread.spanFor(level, errorM);
    }

    /**
     * How many fixes, each as good as the mark is now, would do in the mean; empty if no number does.
     *
     * @param commonR95M the part of their error that all share, R95 in metres: 0 for independent errors
     */
    public OptionalInt fixesNeeded(double commonR95M) {
        OptionalDouble needed = errorNeededM();
        return needed.isPresent() ? FixAveraging.fixesFor(needed.getAsDouble(), errorM, commonR95M) : OptionalInt.empty();
    }

    /** Both models in a sentence. */
    public String words() {
        Presence presence = presence();
        String where = spread.kind() == Standing.Kind.INSIDE ? "The mark lies in its square"
                : "The station stands in all its squares";
        return where + " with a probability of " + percent(presence.common()) + " if one error shifts all of it together, "
                + percent(presence.independent()) + " if each part has an error of its own. The lower counts, "
                + percent(presence.least()) + "; the event asks for " + percent(level) + ".";
    }

    /** What would lift it to the level, in sentences; empty when it is there. */
    public String whatLifts() {
        if (suffices()) {
            return "";
        }
        List<String> ways = new ArrayList<>();
        spanNeededM().ifPresent(span -> ways.add("a span of " + metresUp(span) + " instead of " + metres(spread.spanM())));
        errorNeededM().ifPresent(error -> {
            if (error >= 0.1) {
                ways.add("a mark good to " + metresDown(error) + " instead of " + metres(errorM));
            }
        });
        if (!spread.centred().equals(spread) && new PresenceArgument(spread.centred(), errorM, level).suffices()) {
            ways.add("a mark in the middle of the " + (spread.kind() == Standing.Kind.LINE ? "line" : "corner")
                    + " instead of " + metres(Math.hypot(spread.offM(), spread.otherOffM())) + " off");
        }
        if (ways.isEmpty()) {
            return "Neither a span nor a better mark here lifts it to " + percent(level) + ": choose another mark.";
        }
        return "To lift it to " + percent(level) + ": " + String.join(", or ", ways) + "." + fixes();
    }

    private String fixes() {
        if (errorNeededM().orElse(0) < 0.1) {
            return "";
        }
        OptionalInt apart = fixesNeeded(0);
        OptionalInt together = fixesNeeded(FixAveraging.COMMON_R95_M);
        if (apart.isEmpty()) {
            return " Averaging fixes as good as this one does not get there.";
        }
        String common = metres(FixAveraging.COMMON_R95_M);
        return " The mean of " + apart.getAsInt() + " such fixes is that good if their errors are independent; "
                + (together.isPresent()
                        ? "of " + together.getAsInt() + " if " + common + " of the error are common to all"
                        : "if " + common + " of the error are common to all, no number of fixes is")
                + " (common practice, no source).";
    }

    /** Rounded down, so that a chance just short of a limit does not print as the limit. */
    public static String percent(double probability) {
        return String.format(Locale.ENGLISH, "%.1f %%", Math.floor(probability * 1000 + 1e-6) / 10);
    }

    private static String metres(double length) {
        return String.format(Locale.ENGLISH, length >= 100 || length == Math.rint(length) ? "%.0f m" : "%.1f m", length);
    }

    private static String metresUp(double length) {
        return metres(Math.ceil(length * 10 - 1e-6) / 10);
    }

    private static String metresDown(double length) {
        return metres(Math.floor(length * 10 + 1e-6) / 10);
    }
}
