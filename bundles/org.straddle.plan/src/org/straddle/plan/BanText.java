package org.straddle.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.straddle.model.Ban;
import org.straddle.model.Written;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.Sentence;
import org.straddle.words.TimeText;

/** What a ban forbids, and why, in a line. */
public final class BanText {

    private static final Catalogue TEXTS = Catalogue.of(BanText.class);

    private BanText() {
    }

    /** Why a ban is there, or what it forbids when nobody said why. */
    public static String why(Ban ban) {
        return Written.isBlank(ban.getReason()) ? TEXTS.text("ban.on", "what", what(ban), "period", period(ban)) : reason(ban);
    }

    /** What a ban forbids, when, and why; a reason that names the thing itself is enough. */
    public static String whole(Ban ban) {
        String what = what(ban);
        if (Written.isBlank(ban.getReason())) {
            return Sentence.begun(TEXTS.text("ban.forbids", "what", what, "period", period(ban)));
        }
        String reason = reason(ban);
        return things(ban).isEmpty() || reason.toLowerCase(Locale.ROOT).startsWith(what.toLowerCase(Locale.ROOT))
                ? TEXTS.text("ban.forbids", "what", reason, "period", period(ban))
                : Sentence.begun(TEXTS.text("ban.because", "what", what, "period", period(ban), "reason", reason));
    }

    private static String reason(Ban ban) {
        return ban.getReason().strip().replaceFirst("\\.$", "");
    }

    private static String what(Ban ban) {
        List<String> things = things(ban);
        return things.isEmpty() ? TEXTS.text("ban.everything") : String.join(", ", things);
    }

    private static List<String> things(Ban ban) {
        List<String> things = new ArrayList<>();
        if (ban.getTeam() != null) {
            things.add(Naming.number(ban.getTeam()));
        }
        if (ban.getBird() != null) {
            things.add(Naming.name(ban.getBird()));
        }
        if (ban.getSite() != null) {
            things.add(Naming.name(ban.getSite()));
        }
        if (!Written.isBlank(ban.getSquare())) {
            things.add(ban.getSquare().strip());
        }
        return things;
    }

    private static String period(Ban ban) {
        return said("ban.from", ban.getFrom()) + said("ban.until", ban.getUntil());
    }

    private static String said(String key, Instant instant) {
        return instant == null ? "" : key.equals("ban.from") ? TEXTS.text("ban.from", "instant", TimeText.utc().at(instant))
                : TEXTS.text("ban.until", "instant", TimeText.utc().at(instant));
    }
}
