package org.straddle.atlas.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.straddle.atlas.layer.UserLayer;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.atlas.scene.DemoScene;
import org.straddle.atlas.scene.PlaceSpot;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Words;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.exchange.maps.LayerRole;
import org.straddle.exchange.maps.MapFile;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.MapFeature;

class MapPictureTest {

    /** Letters 7 pixels wide. */
    static final Lettering LETTERS = new Lettering() {
        @Override
        public double width(String text, Face face) {
            return 7 * face.size() * text.length();
        }

        @Override
        public double height(Face face) {
            return 14 * face.size();
        }
    };

    private static MapContents demo;
    private static Sight whole;

    @BeforeAll
    static void demo() {
        demo = DemoScene.contents();
        whole = new Sight(0, 0, 1, 1200, 800).fitting(demo.scene().box(), 1);
    }

    private static Set<String> words(Sight sight, Shown shown) {
        return MapPicture.of(demo, sight, shown, LETTERS, null).marks().stream().filter(Words.class::isInstance)
                .map(mark -> ((Words) mark).text()).collect(Collectors.toSet());
    }

    @Test
    void namesCoarseAndFineByZoom() {
        Set<String> event = words(whole, Shown.EVERYTHING);
        assertTrue(event.contains("HP94"));
        assertTrue(event.contains("Four Winds Corner"));
        assertTrue(event.contains("Selfoss"));
        assertTrue(event.contains("29 %"), "demand of HP94 as a number: " + event);
        assertFalse(event.contains("HP"));
        Set<String> far = words(whole.zoomed(0.02, 600, 400), Shown.EVERYTHING);
        assertTrue(far.contains("JO") && far.contains("GP"));
        assertFalse(far.contains("HP94"));
        PlanePoint corner = demo.projector().plane().put(new GeoPosition(64, -20));
        Set<String> near = words(whole.centredOn(corner).zoomed(10, 600, 400), Shown.EVERYTHING);
        assertTrue(near.containsAll(Set.of("HP93xx", "IP04aa")));
    }

    @Test
    void namesDoNotLieOnEachOther() {
        List<Words> placed = MapPicture.of(demo, whole, Shown.EVERYTHING.with(Part.DRIVES, false).with(Part.TEAMS, false),
                LETTERS, null).marks().stream().filter(Words.class::isInstance).map(Words.class::cast).toList();
        assertTrue(placed.size() > 30);
        for (int i = 0; i < placed.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertFalse(box(placed.get(i)).grown(-0.01).meets(box(placed.get(j)).grown(-0.01)),
                        placed.get(i) + " and " + placed.get(j));
            }
        }
    }

    private static Frame box(Words words) {
        double width = LETTERS.width(words.text(), words.face()) / 2;
        double height = LETTERS.height(words.face()) / 2;
        return new Frame(words.x() - width, words.y() - height, words.x() + width, words.y() + height);
    }

    /** Places beside every site and base, as a line scout finds them: ranks make way for names, the better goes first. */
    @Test
    void ranksOfPlacesMakeWayForNames() {
        List<PlaceSpot> places = new ArrayList<>();
        demo.scene().sites().forEach(site -> places.add(new PlaceSpot(places.size() + 1,
                new PlanePoint(site.at().x() + 14 * whole.metresPerPx(), site.at().y() + 3 * whole.metresPerPx()))));
        places.add(new PlaceSpot(places.size() + 1, places.get(0).at()));
        MapContents found = demo.withPlaces(places);
        Shown shown = Shown.EVERYTHING.with(Part.DRIVES, false).with(Part.TEAMS, false);
        List<Words> placed = MapPicture.of(found, whole, shown, LETTERS, null).marks().stream()
                .filter(Words.class::isInstance).map(Words.class::cast).toList();
        Set<String> ranks = placed.stream().map(Words::text).filter(text -> text.matches("[0-9]+"))
                .collect(Collectors.toSet());
        assertTrue(ranks.contains("1") && ranks.size() > 10, ranks.toString());
        for (int i = 0; i < placed.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertFalse(box(placed.get(i)).grown(-0.01).meets(box(placed.get(j)).grown(-0.01)),
                        placed.get(i) + " and " + placed.get(j));
            }
        }
        int without = MapPicture.of(demo, whole, shown, LETTERS, null).marks().size();
        assertEquals(without, MapPicture.of(found, whole, shown.with(Part.PLACES, false), LETTERS, null).marks().size());
        assertTrue(Legend.of(found, shown).stream().anyMatch(entry -> entry.words().startsWith("place found")));
        assertTrue(Legend.of(demo, shown).stream().noneMatch(entry -> entry.words().startsWith("place found")));
    }

    /** With hundreds of places in sight, the best are drawn and none is numbered. */
    @Test
    void manyPlacesAreDrawnWithoutRanks() {
        List<PlaceSpot> places = IntStream.rangeClosed(1, 2000).mapToObj(rank -> new PlaceSpot(rank,
                whole.at(rank % 50 * 20 + 100, rank / 50 * 15 + 50))).toList();
        MapContents found = demo.withPlaces(places);
        Shown shown = Shown.EVERYTHING.with(Part.DRIVES, false).with(Part.TEAMS, false);
        List<Mark> marks = MapPicture.of(found, whole, shown, LETTERS, null).marks();
        assertTrue(marks.stream().noneMatch(mark -> mark instanceof Words words && words.text().matches("[0-9]+")));
        int without = MapPicture.of(found, whole, shown.with(Part.PLACES, false), LETTERS, null).marks().size();
        assertTrue(marks.size() - without > 300 && marks.size() - without < 2000, marks.size() + " " + without);
    }

    @Test
    void theDemandOfASquareThatFillsTheMapStaysInSight() {
        PlanePoint inside = demo.projector().plane().put(new GeoPosition(64.2, -20.4));
        Sight near = new Sight(inside.x(), inside.y(), 5, 1200, 800);
        List<Words> numbers = MapPicture.of(demo, near, Shown.EVERYTHING, LETTERS, null).marks().stream()
                .filter(mark -> mark instanceof Words words && words.text().equals("29 %")).map(Words.class::cast).toList();
        assertEquals(1, numbers.size());
        assertTrue(near.frame().contains(numbers.get(0).x(), numbers.get(0).y()), numbers.toString());
    }

    @Test
    void regionsOfChasersAreNamedWithTheirShare() {
        Sight far = whole.zoomed(0.25, 600, 400);
        assertTrue(words(far, Shown.EVERYTHING).contains("Ice Margin (demo), 5 % of chasers"),
                words(far, Shown.EVERYTHING).toString());
        assertTrue(words(far, Shown.EVERYTHING.with(Part.REGIONS, false)).stream()
                .noneMatch(name -> name.contains("of chasers")));
        assertTrue(Legend.of(demo, Shown.EVERYTHING).stream().anyMatch(entry -> entry.words().equals("where chasers live")));
    }

    @Test
    void hiddenPartsAreNotDrawn() {
        Shown bare = Shown.EVERYTHING;
        for (Part part : Part.values()) {
            bare = bare.with(part, false);
        }
        MapPicture picture = MapPicture.of(demo, whole, bare, LETTERS, null);
        assertTrue(picture.marks().stream().noneMatch(Words.class::isInstance));
        assertTrue(picture.marks().size() <= 3, "paper, sea and rim");
        for (Part part : List.of(Part.SITES, Part.SQUARES, Part.DEMAND, Part.DRIVES, Part.BASES)) {
            assertTrue(MapPicture.of(demo, whole, bare.with(part, true), LETTERS, null).marks().size()
                    > picture.marks().size(), part.label());
        }
    }

    @Test
    void twiceTheDemandTwiceTheLines() {
        List<float[]> square = List.of(new Frame(0, 0, 600, 600).ring());
        double half = length(Hatching.falling(square, DemandPainter.pitch(0.4), 0));
        double full = length(Hatching.falling(square, DemandPainter.pitch(0.8), 0));
        assertEquals(2, full / half, 0.03);
    }

    private static double length(List<float[]> lines) {
        return lines.stream().mapToDouble(line -> Math.hypot(line[2] - line[0], line[3] - line[1])).sum();
    }

    @Test
    void nothingReachesFarOutOfTheWindow() {
        PlanePoint corner = demo.projector().plane().put(new GeoPosition(64, -20));
        for (double metresPerPx : new double[] {0.01, 1, 400, 20_000}) {
            Sight sight = new Sight(corner.x(), corner.y(), metresPerPx, 900, 600);
            for (Mark mark : MapPicture.of(demo, sight, Shown.EVERYTHING, LETTERS, null).marks()) {
                if (mark instanceof Mark.Line line) {
                    line.lines().forEach(points -> within(points, sight));
                } else if (mark instanceof Mark.Fill fill) {
                    fill.rings().forEach(points -> within(points, sight));
                }
            }
        }
    }

    private static void within(float[] points, Sight sight) {
        Frame frame = sight.frame().grown(200);
        for (int i = 0; i < points.length; i += 2) {
            assertTrue(frame.contains(points[i], points[i + 1]), points[i] + ", " + points[i + 1]);
        }
    }

    @Test
    void aLayerOfTheUserIsDrawnUntilHidden() {
        MapFeature road = MapFeature.line("Kelda track", new GeoPosition(64, -21), new GeoPosition(64.5, -19),
                new GeoPosition(65, -17));
        UserLayer layer = UserLayer.of(new MapFile("roads.geojson", FileFormat.GEOJSON, List.of(road), List.of()),
                "roads.geojson", LayerRole.BY_THEMSELVES);
        MapContents with = demo.with(List.of(layer.lay(demo.projector(), null)));
        int bare = MapPicture.of(demo, whole, Shown.EVERYTHING, LETTERS, null).marks().size();
        assertEquals(bare + 1, MapPicture.of(with, whole, Shown.EVERYTHING, LETTERS, null).marks().size());
        assertEquals(bare, MapPicture.of(with, whole, Shown.EVERYTHING.withLayer("roads.geojson", false), LETTERS, null)
                .marks().size());
        assertEquals(Set.of("road"), layer.lay(demo.projector(), null).byRole().keySet());
        UserLayer rails = UserLayer.of(new MapFile("roads.geojson", FileFormat.GEOJSON, List.of(road), List.of()), "Rails",
                new LayerRole("railway"));
        assertEquals(Set.of("railway"), rails.lay(demo.projector(), null).byRole().keySet());
    }

    @Test
    void stopsWhenCancelled() {
        NullProgressMonitor monitor = new NullProgressMonitor();
        monitor.setCanceled(true);
        assertThrows(OperationCanceledException.class,
                () -> MapPicture.of(demo, whole, Shown.EVERYTHING, LETTERS, monitor));
    }

    @Test
    void zoomHoldsWhatIsUnderThePointer() {
        Sight sight = new Sight(1000, -500, 40, 800, 600);
        PlanePoint held = sight.at(700, 100);
        Sight nearer = sight.zoomed(3.7, 700, 100);
        assertEquals(held.x(), nearer.at(700, 100).x(), 1e-6);
        assertEquals(held.y(), nearer.at(700, 100).y(), 1e-6);
        assertEquals(40 / 3.7, nearer.metresPerPx(), 1e-12);
        Envelope box = new Envelope(0, 10_000, 0, 2000);
        assertTrue(sight.fitting(box, 1).box().contains(box));
        assertEquals(Optional.of(1.0), Optional.of(sight.fitting(new Envelope(5, 5, 5, 5), 1).metresPerPx()));
    }
}
