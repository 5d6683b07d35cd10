package org.straddle.sky.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.orekit.time.OffsetModel;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Fixture;
import org.straddle.sky.Window;
import org.straddle.sky.track.EarthFrames;
import org.straddle.sky.track.EarthTurn;
import org.straddle.sky.track.LeapSeconds;
import org.straddle.sky.track.Sgp4;

class EarthOrientationTest {

    @TempDir
    Path folder;

    /**
     * With the IERS series of 1991 (UT1−UTC about 0.23 s there), against astropy's ITRS positions: within
     * 2 m, where ignoring the file costs a hundred.
     */
    @Test
    void eopc04TurnsTheEarthAsAstropyDoes() throws IOException {
        EarthOrientation loaded = EarthOrientation.read(copy("eopc04-1991.txt"));
        assertEquals("1991-06-20T00:00:00Z/1991-07-14T00:00:00Z", loaded.coverage().orElseThrow().toString());
        assertTrue(worstMetres(loaded) < 2, "worst, m: " + worstMetres(loaded));
        double without = worstMetres(EarthOrientation.none());
        assertTrue(without > 80 && without < 500, "without the file, m: " + without);
    }

    private static double worstMetres(EarthOrientation orientation) {
        var lines = Fixture.lines("earth-fixed-1991.txt");
        ElementSet set = ElementSet.ofTle("", lines.get(0), lines.get(1));
        Sgp4 model = new Sgp4(set, orientation.frames());
        double worst = 0;
        for (String line : lines.subList(2, lines.size())) {
            double[] n = Fixture.numbers(line);
            Vector3D ours = model.earthFixed(set.epoch().plusSeconds((long) n[0] * 60)).getPosition();
            worst = Math.max(worst, ours.subtract(new Vector3D(n[1], n[2], n[3]).scalarMultiply(1000)).getNorm());
        }
        return worst;
    }

    @Test
    void finalsInColumns() throws IOException {
        EarthOrientation loaded = EarthOrientation.read(copy("finals2000A-2016.txt"));
        assertTrue(loaded.isLoaded());
        // First row of the file: MJD 57419, UT1−UTC 0.0262864 s.
        Instant first = loaded.coverage().orElseThrow().start();
        assertEquals("2016-02-01T00:00:00Z", first.toString());
    }

    @Test
    void saysWhatIsMissing() throws IOException {
        Window june = Window.parse("1991-06-25T00:00:00Z/P3D");
        EarthOrientation loaded = EarthOrientation.read(copy("eopc04-1991.txt"));
        assertTrue(loaded.notice(june).isEmpty());
        assertTrue(loaded.notice(Window.parse("1991-07-13T00:00:00Z/P3D")).orElseThrow().contains("end on 1991-07-14"));
        assertTrue(EarthOrientation.none().notice(june).orElseThrow().contains("No Earth orientation data"));
        assertFalse(EarthOrientation.none().isLoaded());
    }

    /** Between full transforms the moving pole and the length of day count too. */
    @Test
    void theQuickTurnFollowsTheData() throws IOException {
        EarthFrames frames = EarthOrientation.read(copy("eopc04-1991.txt")).frames();
        EarthTurn turn = new EarthTurn(frames);
        Vector3D inTeme = new Vector3D(5e6, -3e6, 4e6);
        double[] state = new double[6];
        for (int minute = 0; minute < 4320; minute += 7) {
            var date = frames.date(Instant.parse("1991-06-25T00:00:00Z").plusSeconds(60 * minute));
            turn.apply(inTeme, Vector3D.ZERO, date, state);
            Vector3D full = frames.teme().getStaticTransformTo(frames.earthFixed(), date).transformPosition(inTeme);
            assertEquals(0, full.subtract(new Vector3D(state[0], state[1], state[2])).getNorm(), 0.02);
        }
    }

    @Test
    void refusesOtherFiles() throws IOException {
        assertEquals("finals2000A", EarthOrientation.kind(Files.readAllBytes(copy("finals2000A-2016.txt"))).orElseThrow());
        assertEquals("eopc04", EarthOrientation.kind(Files.readAllBytes(copy("eopc04-1991.txt"))).orElseThrow());
        for (String content : new String[] {"", "0", "hello\nworld\n", "<xml/>", "\0\1\2\3", "16 2 1 57419.00 I -0.0",
            "1991 6 20 48427 x y z"}) {
            Path file = folder.resolve("other.txt");
            Files.writeString(file, content, StandardCharsets.ISO_8859_1);
            IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> EarthOrientation.read(file),
                    content);
            assertTrue(e.getMessage().contains("other.txt") && e.getMessage().contains("finals2000A"), e.getMessage());
        }
        Path huge = folder.resolve("huge.txt");
        Files.write(huge, new byte[20_000_001]);
        assertThrows(EarthOrientationException.class, () -> EarthOrientation.read(huge));
        assertThrows(IOException.class, () -> EarthOrientation.read(folder.resolve("absent.txt")));
    }

    /** IERS Leap_Second.dat: dates and TAI−UTC of its first, some middle, and last rows; 28 in all. */
    @Test
    void leapSeconds() {
        var offsets = LeapSeconds.offsets();
        assertEquals(28, offsets.size());
        assertEquals("1972-01-01 10", text(offsets.get(0)));
        assertEquals("1981-07-01 20", text(offsets.get(10)));
        assertEquals("1994-07-01 29", text(offsets.get(19)));
        assertEquals("1999-01-01 32", text(offsets.get(22)));
        assertEquals("2009-01-01 34", text(offsets.get(24)));
        assertEquals("2017-01-01 37", text(offsets.get(27)));
    }

    private static String text(OffsetModel offset) {
        return offset.getStart() + " " + (int) offset.getOffset().toDouble();
    }

    private Path copy(String resource) throws IOException {
        Path file = folder.resolve(resource);
        try (InputStream in = Fixture.bytes(resource)) {
            Files.copy(in, file);
        }
        return file;
    }
}
