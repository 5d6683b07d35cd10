package org.straddle.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.straddle.grid.FixAveraging;
import org.straddle.grid.Presence;
import org.straddle.grid.Standing;
import org.straddle.grid.StationSpread;
import org.straddle.words.Catalogue;

/**
 * How well it can be argued that a station occupies all squares it claims, and what would lift that to the level
 * the event asks for: a longer span, a better mark, or the mean of more fixes, each by itself.
 *
 * @param spread how the station lies about the line or corner
 * @param errorM R95 of the mark, metres
 * @param level  the wanted probability, above 0, at most 1
 */
public record PresenceArgument(StationSpread spread, double errorM, double level) {

    private static final Catalogue TEXTS = Catalogue.of(PresenceArgument.class);

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
        String where = spread.kind() == Standing.Kind.INSIDE ? TEXTS.text("presenceArgument.markLiesIts")
                : TEXTS.text("presenceArgument.stationStandsAll");
        return TEXTS.text("presenceArgument.probabilityIfOne", "where", where, "percent", percent(presence.common()),
                "percent2", percent(presence.independent()), "percent3", percent(presence.least()),
                "percent4", percent(level));
    }

    /** What would lift it to the level, in sentences; empty when it is there. */
    public String whatLifts() {
        if (suffices()) {
            return "";
        }
        List<String> ways = new ArrayList<>();
        spanNeededM().ifPresent(span -> ways.add(TEXTS.text("presenceArgument.spanInstead", "metresUp", metresUp(span),
                "metres", metres(spread.spanM()))));
        errorNeededM().ifPresent(error -> {
            if (error >= 0.1) {
                ways.add(TEXTS.text("presenceArgument.markGoodInstead", "metresDown", metresDown(error),
                        "metres", metres(errorM)));
            }
        });
        if (!spread.centred().equals(spread) && new PresenceArgument(spread.centred(), errorM, level).suffices()) {
            ways.add(TEXTS.text("presenceArgument.markMiddleCase", "case", spread.kind() == Standing.Kind.LINE,
                    "metres", metres(Math.hypot(spread.offM(), spread.otherOffM()))));
        }
        if (ways.isEmpty()) {
            return TEXTS.text("presenceArgument.neitherSpanNor", "percent", percent(level));
        }
        return TEXTS.text("presenceArgument.lift", "percent", percent(level),
                "ways", String.join(TEXTS.text("presenceArgument.or"), ways), "fixes", fixes());
    }

    private String fixes() {
        if (errorNeededM().orElse(0) < 0.1) {
            return "";
        }
        OptionalInt apart = fixesNeeded(0);
        OptionalInt together = fixesNeeded(FixAveraging.COMMON_R95_M);
        if (apart.isEmpty()) {
            return TEXTS.text("presenceArgument.averagingFixesAs");
        }
        String common = metres(FixAveraging.COMMON_R95_M);
        return TEXTS.text("presenceArgument.meanSuchFixes", "asInt", apart.getAsInt(), "common", together.isPresent()
                ? TEXTS.text("presenceArgument.ifErrorCommon", "asInt", together.getAsInt(), "common", common)
                : TEXTS.text("presenceArgument.commonTooLarge", "common", common));
    }

    /** Rounded down, so that a chance just short of a limit does not print as the limit. */
    public static String percent(double probability) {
        return TEXTS.text("presenceArgument.percent", "percent", Math.floor(probability * 1000 + 1e-6) / 10);
    }

    private static String metres(double length) {
        return length >= 100 || length == Math.rint(length) ? TEXTS.text("presenceArgument.wholeMetres", "metres", length)
                : TEXTS.text("presenceArgument.metres", "metres", length);
    }

    private static String metresUp(double length) {
        return metres(Math.ceil(length * 10 - 1e-6) / 10);
    }

    private static String metresDown(double length) {
        return metres(Math.floor(length * 10 + 1e-6) / 10);
    }
}
