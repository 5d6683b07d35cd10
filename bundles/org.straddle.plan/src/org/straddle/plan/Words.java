package org.straddle.plan;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.sky.Window;

/** What sentences about plans call things and times. */
final class Words {

    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH).withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm").withZone(ZoneOffset.UTC);

    private Words() {
    }

    static String of(Team team) {
        return "team " + team.getNumber();
    }

    static String of(Site site) {
        return named(site.getName(), "a site without a name")
                + (site.getSquares().isEmpty() ? "" : " (" + String.join(", ", site.getSquares()) + ")");
    }

    static String of(Bird bird) {
        return named(bird.getName(), "a bird without a name");
    }

    /** To the minute. */
    static String of(Window window) {
        return MINUTE.format(window.start()) + "–" + HOUR.format(window.end()) + " UTC";
    }

    /** Why a ban is there, or what it forbids when nobody said why. */
    static String of(Ban ban) {
        if (ban.getReason() != null && !ban.getReason().isBlank()) {
            return reason(ban);
        }
        return "a ban" + named(ban);
    }

    /** What a ban forbids, and why. */
    static String whole(Ban ban) {
        boolean reason = ban.getReason() != null && !ban.getReason().isBlank();
        String forbidden = ("Ban" + named(ban)).replace("Ban on t", "T").replace("Ban on ", "");
        return forbidden + (reason ? ": " + reason(ban) : "");
    }

    private static String reason(Ban ban) {
        return ban.getReason().strip().replaceFirst("\\.$", "");
    }

    private static String named(Ban ban) {
        StringBuilder words = new StringBuilder();
        if (ban.getTeam() != null) {
            words.append(" on ").append(of(ban.getTeam()));
        }
        if (ban.getBird() != null) {
            words.append(" on ").append(of(ban.getBird()));
        }
        if (ban.getSite() != null) {
            words.append(" at ").append(of(ban.getSite()));
        }
        if (ban.getSquare() != null && !ban.getSquare().isBlank()) {
            words.append(" in ").append(ban.getSquare().strip());
        }
        return words.append(since(ban.getFrom(), " from ")).append(since(ban.getUntil(), " until ")).toString();
    }

    private static String since(Instant instant, String word) {
        return instant == null ? "" : word + MINUTE.format(instant) + " UTC";
    }

    private static String named(String name, String otherwise) {
        return name == null || name.isBlank() ? otherwise : name;
    }
}
