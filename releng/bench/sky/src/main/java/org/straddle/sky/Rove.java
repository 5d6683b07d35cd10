package org.straddle.sky;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * What is searched: invented birds over invented sites from a fixed seed, the same for every way measured.
 *
 * @param lines the element sets as TLE, two lines each
 */
record Rove(List<ElementSet> birds, List<List<String>> lines, List<Viewpoint> sites, Window window) {

    private static final Instant START = Instant.parse("2031-06-21T00:00:00Z");

    /** 14 to 15 revolutions a day: 500 to 900 km up, at all inclinations that have passes nearly everywhere. */
    static Rove of(int birdCount, int siteCount, int days) {
        Random dice = new Random(20310621);
        List<ElementSet> birds = new ArrayList<>();
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < birdCount; i++) {
            List<String> tle = new ElementSet("", 99_000 + i, "", START.minus(Duration.ofHours(12)),
                    dice.nextDouble(14, 15), dice.nextDouble(0, 0.01), dice.nextDouble(60, 120), dice.nextDouble(0, 359),
                    dice.nextDouble(0, 359), dice.nextDouble(0, 359), 1e-5, 0, 0, 1, 1).toTleLines();
            lines.add(tle);
            birds.add(ElementSet.ofTle("Bird " + i, tle.get(0), tle.get(1)));
        }
        List<Viewpoint> sites = new ArrayList<>();
        for (int i = 0; i < siteCount; i++) {
            sites.add(new Viewpoint(new Place(dice.nextDouble(-70, 70), dice.nextDouble(-180, 180), dice.nextInt(1500)),
                    Horizon.flat(0)));
        }
        return new Rove(birds, lines, sites, Window.of(START, Duration.ofDays(days)));
    }

    /** The same with a jagged mask of so many corners, up to 20°, at every site. */
    Rove masked(int corners) {
        Random dice = new Random(7);
        return new Rove(birds, lines, sites.stream().map(site -> {
            List<Horizon.Point> points = new ArrayList<>();
            for (int i = 0; i < corners; i++) {
                points.add(new Horizon.Point((i + 0.9 * dice.nextDouble()) * 360 / corners, dice.nextDouble(0, 20)));
            }
            return new Viewpoint(site.place(), new Horizon(points));
        }).toList(), window);
    }

    long birdSiteDays() {
        return birds.size() * sites.size() * window.duration().toDays();
    }

    /** The same for programs in other languages: lines of elements, then of sites, then the window in seconds of Unix time. */
    void write(Path file) {
        StringBuilder text = new StringBuilder();
        lines.forEach(tle -> text.append("tle\n").append(tle.get(0)).append('\n').append(tle.get(1)).append('\n'));
        sites.forEach(site -> text.append(String.format(Locale.ROOT, "site %.8f %.8f %.1f%n", site.place().latitudeDeg(),
                site.place().longitudeDeg(), site.place().altitudeM())));
        text.append(String.format(Locale.ROOT, "window %d %d%n", window.start().getEpochSecond(),
                window.end().getEpochSecond()));
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
