package org.straddle.exchange.fixes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.fixes.FixLog.Reading;

class FixReaderTest {

    private static FixLog read(String text) throws ReadException {
        return FixReader.read(new SourceFile("log", text.getBytes(StandardCharsets.UTF_8)));
    }

    private static ReadException refused(String text) {
        return assertThrows(ReadException.class, () -> read(text));
    }

    /** A sentence with its checksum. */
    private static String nmea(String between) {
        return String.format("$%s*%02X\r\n", between, NmeaLog.checksum(between));
    }

    /** Sample sentences of receivers' manuals for GST. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "GPGST,172814.0,0.006,0.023,0.020,273.6,0.023,0.020,0.031 | 6A",
        "GPGST,192911.0,28.7,21.6,12.0,20.4,20.7,13.6,11.9        | 51",
    })
    void checksumsOfPublishedSamples(String between, String sum) {
        assertEquals(Integer.parseInt(sum, 16), NmeaLog.checksum(between));
    }

    /** More blanks than are looked at ahead. */
    @Test
    void blanksWithoutEnd() {
        assertTrue(refused(" ".repeat(10_000) + "<gpx/>").what().contains("blanks"));
        assertTrue(refused("\n".repeat(4096)).what().contains("blanks"));
        assertTrue(refused("\n".repeat(4095)).what().contains("empty"));
    }

    /** The GST sample's σ of 20.7 m and 13.6 m: R95 = 2.4477 √((20.7² + 13.6²)/2) = 42.87 m. */
    @Test
    void sentencesOfOneTimeMakeOneFix() throws ReadException {
        FixLog log = read(nmea("GPGGA,192911.0,6400.0000,N,02000.6000,W,1,7,1.2,100.0,M,60.5,M,,")
                + nmea("GPRMC,192911.0,A,6400.0000,N,02000.6000,W,0.0,0.0,200626,,,A")
                + "$GPGST,192911.0,28.7,21.6,12.0,20.4,20.7,13.6,11.9*51\r\n"
                + nmea("GNGGA,192912.0,6400.0006,N,02000.6000,W,1,7,1.2,100.0,M,,M,,"));
        Reading first = log.readings().get(0);
        assertEquals(2, log.readings().size());
        assertEquals(64, first.position().latitudeDeg(), 1e-12);
        assertEquals(-20.01, first.position().longitudeDeg(), 1e-12);
        assertEquals(Optional.of(Instant.parse("2026-06-20T19:29:11Z")), first.at());
        assertEquals(160.5, first.altitudeM().orElseThrow(), 1e-9);
        assertEquals(42.87, first.r95M().orElseThrow(), 0.005);
        assertEquals(OptionalDouble.empty(), log.readings().get(1).altitudeM(), "the geoid's height is missing");
        assertEquals(Instant.parse("2026-06-20T19:29:12Z"), log.readings().get(1).at().orElseThrow());
    }

    @Test
    void datesReachBackToTheFirstSentenceAndOverMidnight() throws ReadException {
        FixLog log = read(nmea("GPGGA,235958,0000.0,N,17959.9,E,1,7,1.2,1,M,1,M,,")
                + nmea("GPRMC,235959,A,0000.0,N,17959.9,E,0.0,0.0,311226,,,A")
                + nmea("GPGGA,000001,0000.0,N,17959.9,W,1,7,1.2,1,M,1,M,,"));
        assertEquals("[2026-12-31T23:59:58Z, 2026-12-31T23:59:59Z, 2027-01-01T00:00:01Z]",
                log.readings().stream().map(reading -> reading.at().orElseThrow()).toList().toString());
        assertTrue(log.readings().get(2).position().longitudeDeg() < -179);
    }

    @Test
    void whatIsNoFixIsLeftOutAndTold() throws ReadException {
        String good = nmea("GPGGA,100000,6400.0,N,02000.0,W,1,7,1.2,1,M,1,M,,");
        FixLog log = read("9,N,02000.0,W,1,7,1.2,1,M,1,M,,*5C\r\n" + good + good.replace("6400", "6401")
                + nmea("GPGGA,100001,,,,,0,0,,,M,,M,,") + nmea("GPGGA,100002,6400.0,N,02000.0,W,8,7,1.2,1,M,1,M,,")
                + nmea("GPGGA,100003,6475.0,N,02000.0,W,1,7,1.2,1,M,1,M,,") + nmea("GPGGA,1000") + "$GPGGA,100004,64");
        assertEquals(1, log.readings().size());
        assertTrue(log.remarks().contains("Line 3 has a wrong checksum; it is left out."), log.remarks().toString());
        assertTrue(log.remarks().toString().contains("quality 8"), log.remarks().toString());
        assertTrue(log.remarks().toString().contains("Line 8 has a damaged sentence"), log.remarks().toString());
    }

    @Test
    void anotherDatumIsRefused() {
        String position = nmea("GPGGA,100000,6400.0,N,02000.0,W,1,7,1.2,1,M,1,M,,");
        String message = refused(nmea("GPDTM,999,,0.08,N,0.07,E,-47.7,W84") + position).getMessage();
        assertTrue(message.contains("line 1") && message.contains("\"999\"") && message.contains("WGS 84"), message);
        assertEquals(1, assertReads(nmea("GPDTM,W84,,0.0,N,0.0,E,0.0,W84") + position));
    }

    private static int assertReads(String text) {
        try {
            return read(text).readings().size();
        } catch (ReadException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void pointsOfGpx() throws ReadException {
        FixLog log = read("""
                <gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>mark</name><trkseg>
                <trkpt lat="64" lon="-20.00001"><ele>100</ele><time>2026-06-20T10:00:00Z</time><geoidheight>60</geoidheight>
                <extensions><x><time>no</time></x></extensions></trkpt>
                <trkpt lat="64" lon="-20"><time>2026-06-20T12:01:00+02:00</time></trkpt>
                <trkpt lat="0" lon="0"><fix>none</fix></trkpt></trkseg></trk><wpt lat="64" lon="-20"/></gpx>""");
        assertEquals(3, log.readings().size());
        assertEquals(160, log.readings().get(0).altitudeM().orElseThrow());
        assertEquals(Instant.parse("2026-06-20T10:00:00Z"), log.readings().get(0).at().orElseThrow());
        assertEquals(Instant.parse("2026-06-20T10:01:00Z"), log.readings().get(1).at().orElseThrow());
        assertEquals("[1 point without a fix is left out., 1 point has no time.]", log.remarks().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   \n", "latitude,longitude\n64,-20\n", "<gpx/>", "<gpx><wpt lat='64' lon='-20'>", "<kml/>",
        "<gpx><wpt lat='95' lon='0'/></gpx>", "<gpx><wpt lat='1e999' lon='0'/></gpx>",
        "<gpx><wpt lat='0' lon='0'><time>yesterday</time></wpt></gpx>",
        "<!DOCTYPE x [<!ENTITY a 'aaaa'>]><gpx>&a;</gpx>", "$GPGGA,100000,64", "$GPGSV,1,1,00*79"})
    void filesThatCannotBeUsed(String text) {
        assertTrue(refused(text).getMessage().contains("\n"));
    }

    @Test
    void binaryAndHugeFiles(@TempDir Path folder) throws IOException {
        byte[] noise = new byte[100_000];
        new Random(5).nextBytes(noise);
        assertThrows(ReadException.class, () -> FixReader.read(new SourceFile("noise", noise)));
        Path huge = folder.resolve("huge.nmea");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(100 << 20);
        }
        assertTrue(assertThrows(ReadException.class, () -> FixReader.read(huge, null)).getMessage().contains("larger than"));
        assertThrows(ReadException.class, () -> FixReader.read(folder, null));
    }
}
