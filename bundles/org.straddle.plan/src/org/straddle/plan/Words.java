package org.straddle.plan;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;

import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.InertText;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.sky.Window;

/** What sentences about plans call things and times. */
public final class Words {

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH).withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm").withZone(ZoneOffset.UTC);

    private Words() {
    }

    public static String of(Team team) {
        return "team " + team.getNumber();
    }

    public static String of(Site site) {
        return named(site.getName(), "a site without a name")
                + (site.getSquares().isEmpty() ? "" : " (" + String.join(", ", site.getSquares()) + ")");
    }

    public static String of(Bird bird) {
        return named(bird.getName(), "a bird without a name");
    }

    public static String alone(Team team) {
        return of(team) + " is one operator alone, and the event wants two";
    }

    public static String unlicensed(Team team, Bird bird) {
        return "nobody in " + of(team) + " has a licence for the uplink of " + of(bird);
    }

    public static String unlicensed(Team team, Bird bird, Site site) {
        return "no licence in " + of(team) + " covers the uplink of " + of(bird) + " at " + of(site);
    }

    /** To the minute. */
    public static String of(Window window) {
        return MINUTE.format(window.start()) + "–" + HOUR.format(window.end()) + " UTC";
    }

    /** Why a ban is there, or what it forbids when nobody said why. */
    public static String of(Ban ban) {
        if (ban.getReason() != null && !ban.getReason().isBlank()) {
            return reason(ban);
        }
        return "a ban on " + (things(ban).isEmpty() ? "everything" : things(ban)) + period(ban);
    }

    /** What a ban forbids, when, and why; a reason that names the thing itself is enough. */
    public static String whole(Ban ban) {
        String things = things(ban);
        String reason = ban.getReason() == null || ban.getReason().isBlank() ? "" : reason(ban);
        if (!reason.isEmpty() && (things.isEmpty() || reason.toLowerCase(Locale.ROOT).startsWith(things.toLowerCase(Locale.ROOT)))) {
            return reason + period(ban);
        }
        String forbidden = (things.isEmpty() ? "everything" : things) + period(ban);
        return Character.toUpperCase(forbidden.charAt(0)) + forbidden.substring(1) + (reason.isEmpty() ? "" : ": " + reason);
    }

    private static String reason(Ban ban) {
        return ban.getReason().strip().replaceFirst("\\.$", "");
    }

    private static String things(Ban ban) {
        StringJoiner things = new StringJoiner(", ");
        Optional.ofNullable(ban.getTeam()).map(Words::of).ifPresent(things::add);
        Optional.ofNullable(ban.getBird()).map(Words::of).ifPresent(things::add);
        Optional.ofNullable(ban.getSite()).map(Words::of).ifPresent(things::add);
        Optional.ofNullable(ban.getSquare()).filter(square -> !square.isBlank()).map(String::strip).ifPresent(things::add);
        return things.toString();
    }

    private static String period(Ban ban) {
        return since(ban.getFrom(), " from ") + since(ban.getUntil(), " until ");
    }

    private static String since(Instant instant, String word) {
        return instant == null ? "" : word + MINUTE.format(instant) + " UTC";
    }

    private static String named(String name, String otherwise) {
        return name == null || name.isBlank() ? otherwise : InertText.line(name);
    }
}
