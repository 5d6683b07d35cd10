package org.straddle.terrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.grid.GeoPosition;

/**
 * A part of a real SRTM tile (U.S. Geological Visit, public domain, from matplotlib's sample data), and its skyline by
 * releng/fixtures/terrain_real_tile.py, which computes in three dimensions with numpy and knows neither a radius of the
 * Earth nor a geodesic.
 */
class RealTileTest {

    @Test
    void theSkylineOfARealValleyIsTheOneComputedInThreeDimensions(@TempDir Path folder) throws IOException {
        for (String name : List.of("real-tile.asc", "real-tile.prj")) {
            try (InputStream in = RealTileTest.class.getResourceAsStream(name)) {
                Files.copy(in, folder.resolve(name));
            }
        }
        List<String> lines;
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                RealTileTest.class.getResourceAsStream("real-tile-skyline.csv"), StandardCharsets.UTF_8))) {
            lines = in.lines().filter(line -> !line.startsWith("#")).toList();
        }
        double[] mark = numbers(lines.get(0));
        TerrainHorizon seen = TerrainHorizon.compute(List.of(folder.resolve("real-tile.asc")),
                new HorizonRequest(new GeoPosition(mark[0], mark[1]), mark[3], 0, mark[4], false), null);
        assertEquals(mark[2], seen.groundM(), 0.01);
        assertEquals(0, seen.unknownShare());
        double highest = 0;
        for (String line : lines.subList(1, lines.size())) {
            double[] expected = numbers(line);
            double found = seen.skylineDeg().get((int) (expected[0] / TerrainHorizon.STEP_DEG));
            // The reference steps every 2 m and so meets a crest more exactly than the fewer steps here do.
            assertEquals(expected[1], found, 0.05, "towards " + expected[0] + "°");
            highest = Math.max(highest, found);
        }
        assertTrue(highest > 5, "a valley");
    }

    private static double[] numbers(String line) {
        return List.of(line.split(",")).stream().mapToDouble(Double::parseDouble).toArray();
    }
}
