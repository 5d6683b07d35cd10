package org.straddle.exchange.formats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileKindTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "name,lat,lon\\na,1,2                                                   | SITES",
        "Name;Position\\na;HP94bc                                               | SITES",
        "<?xml version='1.0'?>\\n<gpx xmlns='x'>                                | SITES",
        "{\"features\":[],\"type\":\"FeatureCollection\"}                       | SITES",
        "<ndm><omm>                                                             | SKY",
        "[{\"OBJECT_NAME\":\"X\",\"MEAN_MOTION\":1}]                            | SKY",
        "OBJECT_NAME,EPOCH,MEAN_MOTION\\nX,2026-01-01,1                         | SKY",
        "CCSDS_OMM_VERS = 2.0                                                   | SKY",
        "Tern-1, (demo)\\n1 00005U 58002B   00179.78495062  .00000023  00000-0  | SKY",
        "name\u001B[31m,lat,lon\\na,1,2                                          | SITES",
        "hello                                                                  | SKY",
        "# Earth orientation, daily; MJD                                        | SKY",
        "` `                                                                    | SKY"})
    void byContent(String start, FileKind kind) throws IOException {
        assertEquals(kind, FileKind.of(Files.writeString(folder.resolve("x"), start.replace("\\n", "\n"))));
    }

    @Test
    void everyPurposeHasFormatsThatDialogsCanName() {
        for (Purpose purpose : Purpose.values()) {
            assertFalse(purpose.formats().isEmpty(), purpose.name());
        }
        assertEquals("GPX, GeoJSON", Purpose.LAYER.names());
        assertEquals("*.gpx;*.GPX;*.geojson;*.GEOJSON;*.json;*.JSON", Purpose.LAYER.patterns());
        assertEquals("OMM, TLE", Purpose.ELEMENTS.names());
    }
}
