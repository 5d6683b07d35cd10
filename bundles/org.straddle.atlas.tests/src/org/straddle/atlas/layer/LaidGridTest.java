package org.straddle.atlas.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.geotools.data.simple.SimpleFeatureIterator;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.Projector;
import org.straddle.grid.GeoBounds;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Locator;

class LaidGridTest {

    private static LaidGrid about(double latitude, double longitude) {
        return new LaidGrid(new Projector(Plane.about(new GeoPosition(latitude, longitude))));
    }

    private static Set<String> names(List<LaidGrid.Tile> tiles, Envelope box) {
        return tiles.stream().flatMap(tile -> tile.cells().stream()).filter(cell -> cell.box().intersects(box))
                .map(LaidGrid.Cell::locator).collect(Collectors.toSet());
    }

    private static Envelope around(double metres) {
        return new Envelope(-metres, metres, -metres, metres);
    }

    /** 18 × 18 fields, 10 × 10 squares in each, 24 × 24 subsquares in each: IARU Region 1 VHF handbook. */
    @Test
    void asManyAsTheLocatorHas() {
        assertEquals(324, GridCells.areas(GridLevel.FIELD, new GeoBounds(-90, -180, 90, 180)).size());
        assertEquals(100, GridCells.areas(GridLevel.SQUARE, new Locator("HP").bounds()).size());
        for (String square : List.of("HP94", "AA00", "RR99", "JJ00", "IP03")) {
            assertEquals(576, GridCells.areas(GridLevel.SUBSQUARE, new Locator(square).bounds()).size(), square);
        }
    }

    @Test
    void everyAreaBearsItsName() {
        try (SimpleFeatureIterator each = GridCells.areas(GridLevel.SUBSQUARE, new Locator("HP94").bounds()).features()) {
            while (each.hasNext()) {
                var area = each.next();
                Envelope box = new Envelope(area.getBounds().getMinX(), area.getBounds().getMaxX(), area.getBounds().getMinY(),
                        area.getBounds().getMaxY());
                var bounds = new Locator((String) area.getAttribute(GridCells.LOCATOR)).bounds();
                assertEquals(bounds.westDeg(), box.getMinX(), 1e-9);
                assertEquals(bounds.northDeg(), box.getMaxY(), 1e-9);
            }
        }
    }

    @Test
    void aroundACornerOfFour() {
        LaidGrid grid = about(64, -20);
        assertEquals(Set.of("HP93", "HP94", "IP03", "IP04"), names(grid.in(around(1000), GridLevel.SQUARE), around(1000)));
        assertEquals(Set.of("HP93xx", "HP94xa", "IP03ax", "IP04aa"),
                names(grid.in(around(500), GridLevel.SUBSQUARE), around(500)));
    }

    @Test
    void across180() {
        LaidGrid grid = about(-17, 180);
        assertEquals(Set.of("AH03", "AH02", "RH93", "RH92"), names(grid.in(around(1000), GridLevel.SQUARE), around(1000)));
    }

    /** All 180 squares of the northernmost row meet at the pole. */
    @Test
    void atThePole() {
        LaidGrid grid = about(89.9, 0);
        Set<String> names = names(grid.in(around(50_000), GridLevel.SQUARE), around(50_000));
        assertEquals(180, names.size());
        assertTrue(names.stream().allMatch(name -> name.charAt(1) == 'R' && name.charAt(3) == '9'));
    }

    @Test
    void aRingHasTheCornersOfItsSquare() {
        LaidGrid grid = about(64.5, -21);
        double[] ring = grid.ring(new Locator("HP94")).parts().get(0);
        Plane plane = Plane.about(new GeoPosition(64.5, -21));
        for (double[] corner : new double[][] {{64, -22}, {64, -20}, {65, -22}, {65, -20}}) {
            var at = plane.put(new GeoPosition(corner[0], corner[1]));
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < ring.length; i += 2) {
                least = Math.min(least, Math.hypot(ring[i] - at.x(), ring[i + 1] - at.y()));
            }
            assertEquals(0, least, 0.001);
        }
    }
}
