package org.straddle.cli;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import javax.imageio.ImageIO;

import org.straddle.exchange.elements.InventedOrientation;
import org.straddle.exchange.elements.Published;
import org.straddle.exchange.fixes.FixReader;
import org.straddle.exchange.sites.HorizonTable;
import org.straddle.visit.VisitPhoto;
import org.straddle.visit.TinyExif;
import org.straddle.terrain.TinyTiff;

/** A spoiled file for each reader: it is read or refused, and a dry run changes nothing. */
final class Mutations extends Campaign {

    /** What is done with a file. */
    private interface Use {
        void of(Path file, Random random) throws Exception;
    }

    private record Sample(byte[] good, Use use) {
    }

    private static final String WGS84 = "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],"
            + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]]";

    private final Map<String, Sample> samples = new LinkedHashMap<>();
    private final Path event;

    Mutations(Bench bench) throws IOException {
        super(bench);
        event = Bench.copy(bench.good(), bench.work().resolve("read"));
        sky();
        sites();
        maps();
        rasters();
        receivers();
        photos();
        requireGood();
    }

    /** What its reader refuses unspoiled would try nothing. */
    private void requireGood() throws IOException {
        for (Map.Entry<String, Sample> sample : samples.entrySet()) {
            int refused = tally().refused;
            try {
                sample.getValue().use.of(Files.write(bench.work().resolve(sample.getKey()), sample.getValue().good), new Random(1));
            } catch (Exception e) {
                throw new IllegalStateException(sample.getKey(), e);
            }
            if (tally().refused > refused) {
                throw new IllegalStateException(sample.getKey() + " is refused unspoiled: " + bench.lastRefusal());
            }
        }
    }

    private void sky() throws IOException {
        for (Path file : Bench.files(bench.good().resolve("elements"), "")) {
            add(file.getFileName().toString(), Files.readAllBytes(file), this::bring);
        }
        add("week.xml", Published.xml(Published.KVN_23581), this::bring);
        add("week.json", Published.json(Published.KVN_23581), this::bring);
        add("week.csv", Published.csv(Published.KVN_23581), this::bring);
        add("week.kvn", Published.KVN_DEMO, this::bring);
        add("finals2000a.txt", InventedOrientation.finals(), this::bring);
        add("eopc04.txt", InventedOrientation.c04(), this::bring);
        add("eopc04-20.txt", InventedOrientation.newerC04(), this::bring);
    }

    private void sites() {
        for (String format : List.of("csv", "gpx", "geojson")) {
            add("sites." + format, run("export", event, "--format", format).out(), this::bring);
        }
        add("chasers.csv", "call,locator,squares\nQ1AA,HP94,IP04 IP05\nQ2BB/P;IO91wm;HP84\nQ3CC\tJO22\tIP03 IP13\n", this::chasers);
        add("mails.txt", "> NEED Q1AA HP94 IP04, IP05\nsome words\nNEED: Q2BB IO91wm HP84\n", this::chasers);
        add("horizon.csv", "azimuth,elevation\n0,1.5\n90,3\n180,0.5\n270,-1\n",
                (file, random) -> bench.read(tally(), file, () -> HorizonTable.read(file)));
    }

    private void maps() throws IOException {
        for (Path file : Bench.files(bench.good().resolve("layers"), "")) {
            add(file.getFileName().toString(), Files.readAllBytes(file), this::map);
        }
        add("areas.geojson", "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"name\":\"Marsh\"},\"geometry\":"
                + "{\"type\":\"MultiPolygon\",\"coordinates\":[[[[-20,64],[-19,64],[-19,65],[-20,64]]]]}},{\"type\":\"Feature\",\"properties\":null,"
                + "\"geometry\":{\"type\":\"GeometryCollection\",\"geometries\":[{\"type\":\"Point\",\"coordinates\":[-20,64,12]},"
                + "{\"type\":\"MultiLineString\",\"coordinates\":[[[-20,64],[-20.1,64.1]],[[-20.2,64],[-20.3,64.2]]]}]}}]}", this::map);
        add("way.gpx", run("export", event, "--team", "1").out(), this::map);
    }

    private void rasters() throws IOException {
        Files.writeString(bench.work().resolve("heights.prj"), WGS84);
        StringBuilder heights = new StringBuilder("ncols 40\nnrows 40\nxllcorner -20.2\nyllcorner 63.8\ncellsize 0.01\nNODATA_value -9999\n");
        for (int i = 0; i < 1600; i++) {
            heights.append(i % 97 * 10).append(i % 40 == 39 ? "\n" : " ");
        }
        add("heights.asc", heights.toString(), this::horizon);
        Files.writeString(bench.work().resolve("named.asc"), heights);
        add("named.prj", WGS84, (file, random) -> horizon(bench.work().resolve("named.asc"), random));
        add("heights.tif", new TinyTiff(40, 40, -20.2, 64.2, 0.01).wgs84().heights((x, y) -> 300 + 200 * Math.sin(400 * x)).bytes(), this::horizon);
        add("metres.tif", new TinyTiff(40, 40, 540_000, 7_120_000, 1000).projected(32627).heights((x, y) -> 100).bytes(), this::horizon);
    }

    private void receivers() {
        add("fixes.gpx", "<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><name>mark</name><trkseg>"
                + ("<trkpt lat=\"64.1234\" lon=\"-20.00001\"><ele>100.5</ele><time>2027-06-20T10:00:00Z</time><geoidheight>60</geoidheight>"
                        + "<hdop>1.2</hdop></trkpt>\n").repeat(20) + "</trkseg></trk><wpt lat=\"64\" lon=\"-20\"/></gpx>", this::fixes);
        StringBuilder log = new StringBuilder();
        for (int second = 10; second < 40; second++) {
            log.append(Sentences.of("GPGGA,1000" + second + ",6407.4040,N,02000.0006,W,1,7,1.2,100.5,M,60.5,M,,"))
                    .append(Sentences.of("GPRMC,1000" + second + ",A,6407.4040,N,02000.0006,W,0.0,0.0,200627,,,A"))
                    .append(Sentences.of("GPGST,1000" + second + ",28.7,21.6,12.0,20.4,2.7,1.6,11.9"))
                    .append(Sentences.of("GPDTM,W84,,0.0,N,0.0,E,0.0,W84"));
        }
        add("fixes.nmea", log.toString(), this::fixes);
    }

    private void photos() throws IOException {
        add("view.jpg", new TinyExif().position(64, 8, 48, 'N', 21, 56, 24, 'W').direction('T', 21050).gpsTime("2027:06:20", 12, 30, 15)
                .local("2027:06:20 14:30:15").offset("+02:00").datum("WGS-84").into(picture("jpg")), this::photo);
        add("view.png", picture("png"), this::photo);
    }

    private static byte[] picture(String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    private void add(String name, String good, Use use) {
        add(name, good.getBytes(StandardCharsets.UTF_8), use);
    }

    private void add(String name, byte[] good, Use use) {
        samples.put(name, new Sample(good, use));
    }

    @Override
    void run(Random random) throws Exception {
        String name = Bench.one(List.copyOf(samples.keySet()), random);
        Sample sample = samples.get(name);
        sample.use.of(Files.write(bench.work().resolve(name), Mutator.spoil(sample.good, random)), random);
    }

    private void bring(Path file, Random random) {
        List<Object> words = new ArrayList<>(List.of("import", event, file, "--dry-run"));
        if (random.nextInt(3) == 0) {
            words.add("--partial");
        }
        run(words.toArray());
    }

    private void map(Path file, Random random) {
        run(random.nextBoolean() ? new Object[] {"import", event, file, "--dry-run", "--layer", "road"} : new Object[] {"lines", file, "--top", 5});
    }

    private void chasers(Path file, Random random) {
        run("import", event, file, "--chasers", "--dry-run");
    }

    private void horizon(Path file, Random random) {
        run("horizon", event, "--site", "four", "--raster", file, "--far", random.nextBoolean() ? 5 : 50, "--dry-run");
    }

    private void fixes(Path file, Random random) throws IOException {
        if (file.toString().endsWith(".nmea") && random.nextBoolean()) {
            Files.writeString(file, Sentences.withFreshSums(Files.readString(file, StandardCharsets.ISO_8859_1)), StandardCharsets.ISO_8859_1);
        }
        bench.read(tally(), file, () -> FixReader.read(file, null));
    }

    private void photo(Path file, Random random) {
        bench.read(tally(), file, () -> VisitPhoto.read(file));
    }
}
