package org.straddle.atlas.plane;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.sf.geographiclib.GeodesicData;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.straddle.drawing.PointList;
import org.straddle.grid.GeoPosition;

class ProjectorTest {

    private static Projector about(double latitude, double longitude) {
        return new Projector(Plane.about(new GeoPosition(latitude, longitude)));
    }

    private static Geometry wkt(String text) {
        try {
            return new WKTReader(Projector.SHAPES).read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    /** GeographicLib 2.1 says where a geodesic runs; the drawn line lies on it. */
    @ParameterizedTest
    @CsvSource({"65,-18.5,64.1,-21.9,65.7,-14", "-17,179.9,-16.5,179,-18,-178.5", "89.4,0,88,100,88,-100",
        "50,0,50,-20,50,25"})
    void geodesicsAsGeographicLibHasThem(double latitude, double longitude, double fromLatitude, double fromLongitude,
            double toLatitude, double toLongitude) {
        Projector projector = about(latitude, longitude);
        List<double[]> parts = projector.geodesic(new GeoPosition(fromLatitude, fromLongitude),
                new GeoPosition(toLatitude, toLongitude));
        assertEquals(1, parts.size());
        double[] line = parts.get(0);
        GeodesicData way = net.sf.geographiclib.Geodesic.WGS84.Inverse(fromLatitude, fromLongitude, toLatitude, toLongitude);
        double longest = 0;
        for (int i = 0; i < line.length; i += 2) {
            GeoPosition place = projector.plane().position(line[i], line[i + 1]);
            GeodesicData there = net.sf.geographiclib.Geodesic.WGS84.Inverse(fromLatitude, fromLongitude,
                    place.latitudeDeg(), place.longitudeDeg());
            GeodesicData rest = net.sf.geographiclib.Geodesic.WGS84.Inverse(place.latitudeDeg(), place.longitudeDeg(),
                    toLatitude, toLongitude);
            assertEquals(way.s12, there.s12 + rest.s12, 0.01);
            if (i > 0) {
                longest = Math.max(longest, Math.hypot(line[i] - line[i - 2], line[i + 1] - line[i - 1]));
            }
        }
        assertTrue(longest < 62_000, "the gaps are small, not from one edge of the map to the other: " + longest);
    }

    @Test
    void anAreaAcross180IsOnePiece() {
        Outline area = about(-17, 179).area(wkt("POLYGON ((178 -19, 182 -19, 182 -16, 178 -16, 178 -19))"), "");
        assertEquals(1, area.parts().size());
        assertTrue(area.box().getWidth() < 450_000);
    }

    @Test
    void aLineStopsAtTheRim() {
        Projector projector = about(0, 0);
        Outline line = projector.lines(wkt("LINESTRING (0 0, 40 0, 80 0, 120 0, 160 0, 200 0, 240 0, 280 0, 320 0)"), "");
        assertEquals(2, line.parts().size());
        for (double[] part : line.parts()) {
            for (int i = 0; i < part.length; i += 2) {
                assertTrue(Math.hypot(part[i], part[i + 1]) <= projector.plane().rimM());
            }
        }
    }

    @Test
    void anAreaAroundThePlaceOppositeIsNotDrawn() {
        assertEquals(List.of(), about(10, 10).area(wkt("POLYGON ((185 -15, 195 -15, 195 -5, 185 -5, 185 -15))"), "").parts());
    }

    @Test
    void thePlaceOppositeIsNoPlace() {
        assertEquals(List.of(), about(30, 40).points(wkt("POINT (-140 -30)"), "").parts());
        assertEquals(1, about(30, 40).points(wkt("POINT (-10 -30)"), "").parts().size());
    }

    @Test
    void generalisedLinesStayWithinHalfAPixel() {
        PointList wave = new PointList(4_001);
        for (int i = 0; i <= 4_000; i++) {
            wave.add(i * 50.0, 3_000 * Math.sin(i / 140.0) + 40 * Math.sin(i * 1.7));
        }
        double[] line = wave.toArray();
        Generalised generalised = new Generalised(List.of(new Outline(Outline.Kind.LINES, List.of(line), "")));
        for (double metresPerPx : new double[] {200, 600, 2000}) {
            double[] drawn = generalised.in(generalised.box(), metresPerPx, null).get(0).parts().get(0);
            for (int i = 0; i < line.length; i += 2) {
                assertTrue(distance(line[i], line[i + 1], drawn) <= 0.5 * metresPerPx, "at " + metresPerPx + " m/px");
            }
        }
        assertTrue(generalised.in(generalised.box(), 2000, null).get(0).size() < 300);
        assertEquals(4_001, generalised.in(generalised.box(), 1, null).get(0).size());
    }

    private static double distance(double x, double y, double[] line) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 2; i < line.length; i += 2) {
            least = Math.min(least, Distance.pointToSegment(new Coordinate(x, y),
                    new Coordinate(line[i - 2], line[i - 1]), new Coordinate(line[i], line[i + 1])));
        }
        return least;
    }
}
