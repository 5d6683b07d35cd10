package org.straddle.exchange.sites;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.sky.Horizon;

class HorizonTableTest {

    private static Horizon read(String text) throws ReadException {
        return HorizonTable.read(new SourceFile("mask.csv", text.getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
        "0,5~90,12.5~180,3               | 0:5 90:12.5 180:3",
        "azimuth,elevation~90,1~0,2~     | 0:2 90:1",
        "Elevation;Azimuth~1;90~2°;0°    | 0:2 90:1",
        "# from a clinometer~~10,-0.5    | 10:-0.5",
        "360,4~90,1                      | 0:4 90:1",
    })
    void tables(String text, String horizon) throws ReadException {
        assertEquals(horizon, read(text.strip().replace("~", "\r\n")).toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
        "0,5~90                | line 2: the line has 1 value",
        "0,5~90,12,5           | line 2: the line has 3 values",
        "0;5~90;12,5           | line 2: \"12,5\" is not a number",
        "0,5~ninety,3          | line 2: \"ninety\" is not a number",
        "0,5~361,3             | line 2: The azimuth",
        "0,5~90,95             | line 2: The elevation",
        "0,5~90,1~360,4        | line 3: azimuth 360° stands in line 1 already (360° is 0°)",
        "azimuth,elevation     | the file holds no points",
        "0,NaN                 | line 1: \"NaN\" is not a number",
    })
    void errorsNameTheLine(String text, String expected) {
        String message = assertThrows(ReadException.class, () -> read(text.strip().replace("~", "\n"))).getMessage();
        assertTrue(message.contains(expected), message);
    }

    @Test
    void emptyBinaryAndHuge(@TempDir Path folder) throws IOException {
        assertThrows(ReadException.class, () -> read(""));
        assertThrows(ReadException.class, () -> HorizonTable.read(new SourceFile("x", new byte[] {1, 0, 2, (byte) 0xC3})));
        Path huge = folder.resolve("huge.csv");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(100 << 20);
        }
        assertTrue(assertThrows(ReadException.class, () -> HorizonTable.read(huge)).getMessage().contains("larger than"));
    }

    @Test
    void whatIsWrittenReadsBack() throws ReadException {
        Horizon horizon = Horizon.parse("0:5.25 90:12 181.5:-3");
        assertEquals(horizon, read(HorizonTable.write(horizon)));
    }
}
