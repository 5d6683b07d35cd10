package org.straddle.sky.prediction;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.SortedSet;

import org.orekit.frames.EOPEntry;
import org.straddle.sky.Window;
import org.straddle.sky.track.EarthFrames;
import org.straddle.words.Catalogue;

/**
 * What is known of the Earth's irregular turning (UT1−UTC) and of its moving pole, as the IERS
 * publishes it. Without such a file the Earth is taken to turn with UTC: at most 0.9 s of rotation,
 * which moves a rise by up to about 0.1 s and a bird in the sky by up to about 0.044°. That is enough for
 * planning, but {@link #notice} says it.
 */
public final class EarthOrientation {

    private static final Catalogue TEXTS = Catalogue.of(EarthOrientation.class);

    /** What the IERS calls its files: the newest observations with a forecast of a year, and the long series. */
    public static final String FINALS = "finals2000A";
    public static final String C04 = "eopc04";

    private static final EarthOrientation NONE = new EarthOrientation("none", EarthFrames.withoutOrientation(), null);

    /** What not knowing the Earth's turning adds to the time of a rise or set at most, seconds: UT1−UTC stays below 0.9 s. */
    static final double IGNORED_TIME_ERROR_S = 0.1;

    /** Modified Julian day of 1970-01-01. */
    private static final int UNIX_EPOCH_MJD = 40_587;

    private final String origin;
    private final EarthFrames frames;
    private final Window covered;

    private EarthOrientation(String origin, EarthFrames frames, Window covered) {
        this.origin = origin;
        this.frames = frames;
        this.covered = covered;
    }

    /** No data: UT1 is taken to be UTC and the pole to stand still. */
    public static EarthOrientation none() {
        return NONE;
    }

    /**
     * Reads a file as the IERS publishes it: {@code finals2000A} in columns (daily or all) or
     * {@code eopc04}.
     *
     * @throws IOException               when the file cannot be read
     * @throws EarthOrientationException when it is no such file, or larger than 20 MB; the message names it and says
     *                                   what to do
     */
    public static EarthOrientation read(Path file) throws IOException {
        return of(String.valueOf(file.getFileName()), EarthOrientationFile.read(file));
    }

    /** The same of a file in memory. @throws EarthOrientationException when it is no such file */
    public static EarthOrientation read(String name, byte[] bytes) {
        return of(name, EarthOrientationFile.read(name, bytes));
    }

    /** {@link #FINALS} or {@link #C04} by what the first rows look like; empty when they look like neither. */
    public static Optional<String> kind(byte[] bytes) {
        return EarthOrientationFile.kind(bytes);
    }

    private static EarthOrientation of(String name, SortedSet<EOPEntry> entries) {
        return new EarthOrientation(name, EarthFrames.with(entries), new Window(day(entries.first()), day(entries.last())));
    }

    private static Instant day(EOPEntry entry) {
        return Instant.EPOCH.plus(Duration.ofDays(entry.getMjd() - UNIX_EPOCH_MJD));
    }

    public boolean isLoaded() {
        return covered != null;
    }

    /** The time the data speak of; outside it the Earth is taken to turn with UTC. */
    public Optional<Window> coverage() {
        return Optional.ofNullable(covered);
    }

    /** What to tell the user about results for this window, in a sentence; empty when the data cover it. */
    public Optional<String> notice(Window window) {
        if (covered == null) {
            return Optional.of(TEXTS.text("earthOrientation.earthOrientationData"));
        }
        if (covered.contains(window)) {
            return Optional.empty();
        }
        return Optional.of(TEXTS.text("earthOrientation.ends", "origin", origin,
                "day", day(covered.end()), "day2", window.start().isBefore(covered.start())
                ? TEXTS.text("earthOrientation.begin", "day", day(covered.start())) : ""));
    }

    private static String day(Instant instant) {
        return instant.toString().substring(0, 10);
    }

    EarthFrames frames() {
        return frames;
    }

    @Override
    public String toString() {
        return origin;
    }
}
