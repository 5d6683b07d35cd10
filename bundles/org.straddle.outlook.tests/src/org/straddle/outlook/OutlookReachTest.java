package org.straddle.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Fresh;
import org.straddle.model.Region;
import org.straddle.model.Site;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.Windows;
import org.straddle.sky.prediction.Area;
import org.straddle.sky.prediction.AreaReach;
import org.straddle.sky.prediction.CommonView;
import org.straddle.sky.prediction.Ephemeris;

/** Whom passes reach: regions by squares and outlines, shares, and the far end of a view. */
class OutlookReachTest {

    private final World world = new World();
    private Site site;
    private Bird bird;

    @BeforeEach
    void aSiteInTheNorth() {
        site = world.site(64.5, -19.5, "IP04");
        bird = world.bird("Tern-1 (demo)", World.low(World.MORNING, 33));
    }

    private Region region(double sharePercent, String outline, String... squares) {
        Region region = Fresh.region();
        region.setName("Region " + (world.event.getRegions().size() + 1));
        region.setSharePercent(sharePercent);
        region.setOutline(outline);
        region.getSquares().addAll(List.of(squares));
        world.event.getRegions().add(region);
        return region;
    }

    private static double mean(Outlook outlook, SitePass pass, Region region) {
        return outlook.reach().of(pass).orElseThrow().byRegion().get(region).mean();
    }

    @Test
    void sharesWeighRegions() {
        world.event.getPolicies().setReachElevationDeg(0);
        Region here = region(30, null, "IP04");
        Region antipodes = region(10, "POLYGON((155 -70, 165 -70, 165 -60, 155 -60, 155 -70))");
        Region nobody = region(0, null, "JO21");
        Outlook outlook = world.outlook();
        SitePass pass = outlook.passes(site, bird).stream().filter(p -> p.pass().peakElevationDeg() > 40).findFirst().orElseThrow();
        Reach.PassReach reach = outlook.reach().of(pass).orElseThrow();
        assertEquals(List.of(here, antipodes, nobody), List.copyOf(reach.byRegion().keySet()));
        // The site lies in the middle of its square: both have the bird up at the same time, but for the edges.
        assertEquals(1, reach.byRegion().get(here).mean(), 0.02);
        assertEquals(0, reach.byRegion().get(antipodes).ever());
        assertEquals(0.75 * mean(outlook, pass, here), reach.mean(), 1e-9);
        assertEquals(0.75, reach.ever(), 1e-9);
        assertTrue(reach.byRegion().get(nobody).ever() > 0);
    }

    @Test
    void withoutSharesThereIsNoReach() {
        region(0, null, "IP04");
        Outlook outlook = world.outlook();
        assertEquals(Optional.empty(), outlook.reach().of(outlook.passes().get(0)));
        assertEquals(Optional.empty(), new World().outlook().reach().regions().stream().findAny());
    }

    @Test
    void theFarElevationIsThePolicysUnlessAnotherIsAsked() {
        region(50, "POLYGON((-8 50, 2 50, 2 59, -8 59, -8 50))");
        world.event.getPolicies().setReachElevationDeg(15);
        Outlook outlook = world.outlook();
        assertEquals(15, outlook.reach().leastDeg());
        for (SitePass pass : outlook.passes()) {
            double at15 = outlook.reach().of(pass).orElseThrow().mean();
            double at5 = outlook.reach().above(5).of(pass).orElseThrow().mean();
            assertTrue(at15 <= at5, pass + ": " + at15 + " " + at5);
            assertTrue(at5 <= 1 && at15 >= 0);
        }
        assertThrows(IllegalArgumentException.class, () -> outlook.reach().above(91));
    }

    /** Squares and an outline of the same ground are the same area, and so is their overlap. */
    @Test
    void squaresAndOutlineMakeOneArea() {
        Region squares = region(10, null, "IP04", "IP05", "IP14", "IP15");
        Region outline = region(10, "POLYGON((-20 64, -16 64, -16 66, -20 66, -20 64))");
        Region both = region(10, outline.getOutline(), "IP04", "IP05");
        Outlook outlook = world.outlook();
        assertTrue(outlook.passes().stream().anyMatch(pass -> mean(outlook, pass, squares) > 0), "some pass reaches it");
        for (SitePass pass : outlook.passes()) {
            assertEquals(mean(outlook, pass, squares), mean(outlook, pass, outline), 1e-9);
            assertEquals(mean(outlook, pass, squares), mean(outlook, pass, both), 1e-9);
        }
    }

    /** The sampling error promised: against places ten times as dense in each direction. */
    @Test
    void samplingErrorStaysBelowWhatIsPromised() throws ParseException {
        Region large = region(10, "POLYGON((-10 50, 30 50, 30 71, 5 62, -10 59, -10 50))");
        Outlook outlook = world.outlook();
        List<Place> places = new ArrayList<>();
        Geometry shape = new WKTReader().read(large.getOutline());
        for (double latitude = 50.05; latitude < 71; latitude += 0.2) {
            for (double longitude = -9.9; longitude < 30; longitude += 0.4) {
                if (shape.contains(shape.getFactory().createPoint(
                        new Coordinate(longitude, latitude)))) {
                    places.add(Place.of(latitude, longitude));
                }
            }
        }
        Area dense = Area.of(places, places.stream().mapToDouble(p -> Math.cos(Math.toRadians(p.latitudeDeg()))).toArray());
        double worst = 0;
        for (SitePass pass : outlook.passes()) {
            AreaReach exact = AreaReach.of(outlook.ephemeris(pass.pass()), pass.pass().window(), dense, 10);
            double ours = outlook.reach().above(10).of(pass).orElseThrow().mean();
            worst = Math.max(worst, Math.abs(exact.mean() - ours));
        }
        assertTrue(worst < 0.01, "worst " + worst);
    }

    @Test
    void anOutlineAcross180() {
        Region east = region(10, "POLYGON((178 60, 184 60, 184 66, 178 66, 178 60))");
        Region west = region(10, "POLYGON((-182 60, -176 60, -176 66, -182 66, -182 60))");
        World there = new World();
        there.site(63, 179.9, "");
        there.bird("Tern-1 (demo)", World.low(World.MORNING, 33));
        there.event.getRegions().addAll(List.of(east, west));
        Outlook outlook = there.outlook();
        SitePass pass = outlook.passes().get(0);
        assertEquals(mean(outlook, pass, east), mean(outlook, pass, west), 1e-9);
        assertTrue(mean(outlook, pass, east) > 0.5);
    }

    @Test
    void aViewOfASquareIsToItsMiddle() {
        Outlook outlook = world.outlook();
        Square far = Square.parse("JO01");
        List<CommonView> views = outlook.reach().above(3).views(site, bird, far);
        assertFalse(views.isEmpty());
        Place middle = Place.of(51.5, 1);
        for (CommonView view : views) {
            assertTrue(outlook.above(bird, site, view.window()));
            assertTrue(view.lowerDeg() > 3);
            Ephemeris ephemeris = outlook.ephemeris(bird, view.best()).orElseThrow();
            assertEquals(ephemeris.lookAt(middle, view.best()).elevationDeg(), view.thereDeg(), 1e-6);
        }
        List<Window> expected = Windows.common(outlook.passes(site, bird).stream().map(p -> p.pass().window()).toList(),
                Windows.common(ephemerisAbove(outlook, middle), ephemerisAbove(outlook, outlook.place(site))));
        assertEquals(expected.size(), views.size());
    }

    private List<Window> ephemerisAbove(Outlook outlook, Place place) {
        return outlook.ephemeris(bird, World.MORNING).orElseThrow().above(place, outlook.span(), 3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "POLYGON((1 2, 3                                   | cannot be read",
        "POINT(1 2)                                        | is a Point",
        "POLYGON((0 0, 1 1, 0 0, 0 0))                     | encloses nothing",
        "POLYGON((0 0, 1 95, 2 0, 0 0))                    | latitude 95",
        "POLYGON EMPTY                                     | encloses nothing",
        "''                                                | neither squares nor an outline"})
    void aRegionThatIsNoneIsLeftOutAndTold(String outline, String why) {
        Region region = region(50, outline);
        Outlook outlook = world.outlook();
        assertTrue(outlook.reach().regions().isEmpty());
        assertTrue(outlook.troubles().stream().anyMatch(trouble -> trouble.kind() == Trouble.Kind.REGION
                && trouble.object() == region && trouble.sentence().contains(why)), outlook.troubles().toString());
        assertThrows(IllegalArgumentException.class, () -> outlook.reach().views(site, bird, region));
    }

    /** A figure of eight is fixed, a sliver keeps one place, a square that is none is told. */
    @Test
    void oddShapes() {
        Region eight = region(10, "POLYGON((-20 64, -16 66, -16 64, -20 66, -20 64))");
        Region sliver = region(10, "POLYGON((-20 64, 20 64.000001, 20 64, -20 64))");
        Region wrong = region(10, null, "ZZ99");
        assertEquals(List.of(eight, sliver), world.outlook().reach().regions());
        assertTrue(world.outlook().troubles().stream().anyMatch(trouble -> trouble.object() == wrong));
    }
}
