package org.straddle.daysheet.fits;

import java.time.Duration;

import org.straddle.model.Base;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.things.Times;
import org.straddle.sky.Window;

/** Short words for times and teams: an obstacle is one line. */
final class Say {

    private Say() {
    }

    static String team(Team team) {
        return team.getNumber() > 0 ? "team " + team.getNumber() : "a team without a number";
    }

    /** @param place a site or a base */
    static String place(Identified place) {
        boolean isSite = place instanceof Site;
        String name = isSite ? ((Site) place).getName() : ((Base) place).getName();
        return name == null || name.isBlank() ? "a " + (isSite ? "site" : "base") + " without a name" : name;
    }

    static String during(Window window) {
        return Times.utcClock(window.start()).replace("Z", "") + "–" + Times.utcClock(window.end());
    }

    /** Rounded up: what is needed must not sound shorter. */
    static String need(Duration duration) {
        return Math.floorDiv(duration.toSeconds() + 59, 60) + " min";
    }

    /** Rounded down: what there is must not sound longer. */
    static String have(Duration duration) {
        return duration.toMinutes() + " min";
    }
}
