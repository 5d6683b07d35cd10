package org.straddle.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** A spoiled file for each reader: it is read or refused, and a dry run changes nothing. */
final class Mutations extends Campaign {

    private final Map<String, byte[]> samples = new LinkedHashMap<>();
    private final Path event;

    Mutations(Bench bench) throws IOException {
        super(bench);
        event = Bench.copy(bench.good(), bench.work().resolve("read"));
        for (Path file : Bench.files(bench.good().resolve("elements"), "")) {
            samples.put(file.getFileName().toString(), Files.readAllBytes(file));
        }
        for (Path file : Bench.files(bench.good().resolve("layers"), "")) {
            samples.put(file.getFileName().toString(), Files.readAllBytes(file));
        }
        for (String format : List.of("csv", "gpx", "geojson")) {
            samples.put("sites." + format, run("export", event, "--format", format).out().getBytes(StandardCharsets.UTF_8));
        }
        samples.put("way.gpx", run("export", event, "--team", "1").out().getBytes(StandardCharsets.UTF_8));
        samples.put("heights.asc", heights().getBytes(StandardCharsets.UTF_8));
        Files.writeString(bench.work().resolve("heights.prj"), "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],"
                + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]]");
    }

    private static String heights() {
        StringBuilder text = new StringBuilder("ncols 40\nnrows 40\nxllcorner -25\nyllcorner 63\ncellsize 0.25\nNODATA_value -9999\n");
        for (int i = 0; i < 1600; i++) {
            text.append(i % 97 * 10).append(i % 40 == 39 ? "\n" : " ");
        }
        return text.toString();
    }

    @Override
    void run(Random random) throws Exception {
        String name = Bench.one(List.copyOf(samples.keySet()), random);
        Path file = Files.write(bench.work().resolve(name), Mutator.spoil(samples.get(name), random));
        List<Object> words = new ArrayList<>();
        if (name.endsWith(".asc")) {
            words.addAll(List.of("horizon", event, "--site", "four", "--raster", file, "--far", "5", "--dry-run"));
        } else {
            words.addAll(List.of("import", event, file, "--dry-run"));
            boolean map = name.endsWith(".gpx") || name.endsWith(".geojson");
            if (map && random.nextBoolean()) {
                words.addAll(List.of("--layer", "road"));
            }
            if (random.nextInt(3) == 0) {
                words.add("--partial");
            }
        }
        run(words.toArray());
    }
}
