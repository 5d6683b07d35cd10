package org.straddle.exchange.elements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.exchange.elements.Published.KVN_23581;
import static org.straddle.exchange.elements.Published.L1_00005;
import static org.straddle.exchange.elements.Published.L2_00005;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.exchange.formats.Purpose;

/** Every reader, given what it cannot take: a clear word, in reasonable time. */
class HostileFilesTest {

    private static final List<FileFormat> FORMATS = Purpose.ELEMENTS.formats();

    private static final Map<FileFormat, String> GOOD = Map.of(FileFormat.TLE, "A\n" + L1_00005 + "\n" + L2_00005 + "\n",
            FileFormat.OMM_KVN, KVN_23581, FileFormat.OMM_XML, Published.xml(KVN_23581), FileFormat.OMM_JSON,
            Published.json(KVN_23581), FileFormat.OMM_CSV, Published.csv(KVN_23581));

    @TempDir
    Path temp;

    private ReadException refused(byte[] bytes) {
        return assertThrows(ReadException.class, () -> assertTimeoutPreemptively(Duration.ofSeconds(60),
                () -> ElementSetReader.read(new SourceFile("week", bytes))));
    }

    private ReadException refused(String text) {
        return refused(text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @FieldSource("FORMATS")
    void cutOffAnywhere(FileFormat format) throws ReadException {
        String good = GOOD.get(format);
        assertEquals(format, ElementSetReader.read(new SourceFile("week", good.getBytes(StandardCharsets.UTF_8))).format());
        // Beyond the last value only line ends, or optional lines of a message, are missing.
        int whole = format == FileFormat.OMM_KVN ? good.indexOf("BSTAR") + 7 : good.stripTrailing().length() - 1;
        for (int length = 0; length < whole; length += 1 + length / 50) {
            refused(good.substring(0, length));
        }
    }

    @ParameterizedTest
    @FieldSource("FORMATS")
    void noiseAfterAGoodStart(FileFormat format) throws IOException {
        byte[] noise = new byte[1 << 20];
        new Random(format.ordinal()).nextBytes(noise);
        refused(noise);
        byte[] start = GOOD.get(format).getBytes(StandardCharsets.UTF_8);
        System.arraycopy(start, 0, noise, 0, start.length);
        refused(noise);
        // The same as text.
        for (int i = start.length; i < noise.length; i++) {
            noise[i] = (byte) ('!' + (noise[i] & 63));
        }
        refused(noise);
    }

    @ParameterizedTest
    @FieldSource("FORMATS")
    void otherEncodings(FileFormat format) {
        assertTrue(refused(GOOD.get(format).getBytes(StandardCharsets.UTF_16)).what().contains("UTF-16"));
        refused(GOOD.get(format).getBytes(StandardCharsets.UTF_16LE));
        assertEquals(1, refused(("é" + GOOD.get(format)).getBytes(StandardCharsets.ISO_8859_1)).line());
    }

    @ParameterizedTest
    @FieldSource("FORMATS")
    void hundredMegabytes(FileFormat format) throws IOException {
        Path file = temp.resolve("large");
        Files.writeString(file, GOOD.get(format));
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(100 << 20);
        }
        ReadException e = assertThrows(ReadException.class, () -> ElementSetReader.read(file));
        assertTrue(e.what().contains("larger than 64 MB"), e.getMessage());
    }

    @ParameterizedTest
    @FieldSource("FORMATS")
    void oneEndlessLine(FileFormat format) {
        refused(GOOD.get(format).stripTrailing().replaceAll("[}>]$", "") + "x".repeat(30 << 20));
    }

    @Test
    void entitiesAreRefused() {
        String xml = Published.xml(KVN_23581);
        assertEquals(1, refused("<!DOCTYPE omm SYSTEM \"http://localhost:1/x.dtd\">" + xml).line());
        assertTrue(refused("<!DOCTYPE omm [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>" + xml.replace(">23581<", ">&e;<")).what()
                .contains("DOCTYPE"));
        StringBuilder bomb = new StringBuilder("<!DOCTYPE omm [<!ENTITY e0 \"boom\">");
        for (int i = 1; i < 60; i++) {
            bomb.append("<!ENTITY e").append(i).append(" \"").append(("&e" + (i - 1) + ";").repeat(10)).append("\">");
        }
        assertTrue(refused(bomb + "]>" + xml.replace(">23581<", ">&e59;<")).what().contains("DOCTYPE"));
    }

    @Test
    void deepNestingIsRefused() {
        refused("[".repeat(1_000_000));
        refused("{\"a\":".repeat(1_000_000));
        refused("<ndm>" + "<a>".repeat(1_000_000));
        refused("<omm version='2.0'><a>" + "x".repeat(1_000_000));
    }

    @Test
    void notAPlainFile() {
        assertTrue(assertThrows(ReadException.class, () -> ElementSetReader.read(temp)).what().contains("not a plain file"));
        assertTrue(assertThrows(ReadException.class, () -> ElementSetReader.read(temp.resolve("x"))).what().contains("no such file"));
    }
}
