package org.straddle.daysheet.fits;

import java.time.Duration;

import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Short words for times and teams: an obstacle is one line. */
final class Say {

    private static final Catalogue TEXTS = Catalogue.of(Say.class);

    private Say() {
    }

    static String team(Team team) {
        return Naming.number(team);
    }

    static String during(Window window) {
        return TimeText.zulu(window.start(), window.end());
    }

    /** Rounded up: what is needed must not sound shorter. */
    static String need(Duration duration) {
        return TEXTS.text("minutes", "minutes", Math.floorDiv(duration.toSeconds() + 59, 60));
    }

    /** Rounded down: what there is must not sound longer. */
    static String have(Duration duration) {
        return TEXTS.text("minutes", "minutes", duration.toMinutes());
    }
}
