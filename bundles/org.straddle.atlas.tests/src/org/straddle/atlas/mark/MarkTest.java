package org.straddle.atlas.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.NearBoundary;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.outlook.things.Claim;

class MarkTest {

    /** 0.1 m, 1 m and 10 m by GeographicLib, also across 180° and near a pole. */
    @ParameterizedTest
    @CsvSource({"64.1,-20,0.1,0", "64.1,-20,0,0.1", "64.1,-20,-1,0", "64.1,-20,0,-10", "-17,179.99999999,0,10",
        "89.9999,30,10,0"})
    void nudgesByMetres(double latitude, double longitude, double northM, double eastM) {
        GeoPosition from = new GeoPosition(latitude, longitude);
        GeoPosition to = Nudge.of(from, northM, eastM);
        assertEquals(Math.hypot(northM, eastM), Geodesic.distanceM(from, to), 1e-6);
        double bearing = northM > 0 ? 0 : northM < 0 ? 180 : eastM > 0 ? 90 : 270;
        assertEquals(0, Math.IEEEremainder(Geodesic.initialBearingDeg(from, to) - bearing, 360), 1e-3);
    }

    @ParameterizedTest
    @CsvSource({"63.61,-20.0004,100,20°W", "64.0002,-21.15,100,64°N", "-17.5,179.9999,100,180°W", "64.4,-20.9,100,none",
        "64.3,-20.9,120000,64°N"})
    void snapsToTheNearestLine(double latitude, double longitude, double withinM, String line) {
        Optional<NearBoundary> near = Snap.toLine(new GeoPosition(latitude, longitude), withinM);
        assertEquals(line, near.map(found -> found.boundary().toString()).orElse("none"));
        near.filter(found -> found.boundary().toString().endsWith("W")).ifPresent(found ->
                assertEquals(0, Math.IEEEremainder(found.foot().longitudeDeg(), 2), 0));
    }

    @Test
    void snapsToACornerBeforeItsLines() {
        GeoPosition rough = new GeoPosition(64.00001, -20.0008);
        assertEquals("64°N 20°W", Snap.toAny(rough, 100).orElseThrow().boundary().toString());
        assertEquals(new GeoPosition(64, -20), Snap.toAny(rough, 100).orElseThrow().foot());
        assertEquals("64°N", Snap.toAny(rough, 10).orElseThrow().boundary().toString());
        assertTrue(Snap.toAny(new GeoPosition(64.4, -20.9), 100).isEmpty());
    }

    @Test
    void claimsWhatTheMarkAllows() {
        assertEquals(new Claim(SiteKind.LINE, List.of("HP93", "IP03")), Claim.of(new GeoPosition(63.61, -20), 5, 10));
        assertEquals(new Claim(SiteKind.CORNER, List.of("HP93", "HP94", "IP03", "IP04")),
                Claim.of(new GeoPosition(64, -20), 5, 10));
        Site site = Fresh.site();
        site.setKind(SiteKind.LINE);
        site.getSquares().addAll(List.of("IP03", "HP93"));
        assertTrue(Claim.of(new GeoPosition(63.61, -20), 5, 10).isOf(site));
        site.getSquares().remove(0);
        assertEquals(false, Claim.of(new GeoPosition(63.61, -20), 5, 10).isOf(site));
    }

    @Test
    void tellsAPlaceExactly() {
        List<String> lines = PlaceWords.lines(new GeoPosition(63.61, -20.0002));
        assertEquals("63.610000° N, 20.000200° W", lines.get(0));
        assertEquals("63° 36′ 36.00″ N, 20° 00′ 00.72″ W", lines.get(1));
        assertEquals("HP93xo96xj", lines.get(2));
        assertEquals("20°W  9.9 m east", lines.get(3));
        assertTrue(lines.get(4).startsWith("64°N  43.5 km north"), lines.get(4));
        assertEquals("here", PlaceWords.words(new GeoPosition(63.61, -20),
                PlaceWords.nearest(new GeoPosition(63.61, -20)).get(0)).substring(6));
    }
}
