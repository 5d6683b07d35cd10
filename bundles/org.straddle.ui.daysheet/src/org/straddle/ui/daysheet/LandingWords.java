package org.straddle.ui.daysheet;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.straddle.daysheet.fits.Landing;
import org.straddle.daysheet.fits.Obstacle;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** What is said of a place while something is carried over it, and after it was put there. */
final class LandingWords {

    private static final Catalogue TEXTS = Catalogue.of(LandingWords.class);

    private static final int MOST_OBSTACLES = 3;
    private static final int MOST_NOTES = 2;

    private LandingWords() {
    }

    /** Lines, the time first. */
    static List<String> lines(Landing landing, ZoneId zone) {
        List<String> lines = new ArrayList<>();
        Window window = landing.window();
        TimeText times = TimeText.of(zone);
        lines.add(TEXTS.text("landingWords.minLocal", "times", TimeText.zulu(window.start(), window.end()),
                "minutes", window.duration().toMinutes(), "day", times.weekday(window.start()),
                "local", times.clock(window.start())));
        List<String> obstacles = obstacles(landing);
        obstacles.stream().limit(MOST_OBSTACLES).forEach(lines::add);
        more(lines, obstacles.size() - MOST_OBSTACLES);
        landing.notes().stream().limit(MOST_NOTES).forEach(lines::add);
        more(lines, landing.notes().size() - MOST_NOTES);
        return lines;
    }

    /** One line; empty when nothing is wrong and nothing else happens. */
    static String line(Landing landing) {
        return String.join("; ", Stream.concat(obstacles(landing).stream(), landing.notes().stream()).toList());
    }

    private static List<String> obstacles(Landing landing) {
        return landing.obstacles().stream().map(Obstacle::sentence).distinct().toList();
    }

    private static void more(List<String> lines, int count) {
        if (count > 0) {
            lines.add(TEXTS.text("landingWords.more", "count", count));
        }
    }
}
