package org.straddle.atlas.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.drawing.TeamMark;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.straddle.atlas.layer.LaidGrid;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.Projector;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.Squares;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Place;
import org.straddle.sky.prediction.Ephemeris;

class EventSceneTest {

    @Test
    void theDemoEventIsOnTheMap() {
        EventScene scene = DemoScene.contents().scene();
        assertEquals(20, scene.sites().size());
        assertEquals(5, scene.bases().size());
        assertEquals(19, scene.demand().size());
        SiteSpot corner = scene.sites().stream().filter(site -> site.name().equals("Four Winds Corner")).findFirst().orElseThrow();
        assertEquals(SiteSpot.Kind.CORNER, corner.kind());
        assertEquals(List.of(1), corner.teams().stream().map(TeamMark::number).toList());
        assertTrue(scene.drives().stream().anyMatch(drive -> drive.from().equals("Selfoss")));
    }

    @Test
    void kindsByHowTheSquaresLie() {
        assertEquals(SiteSpot.Kind.WEST_EAST, EventScene.kind(SiteKind.LINE, Squares.parse("HP94,IP04")));
        assertEquals(SiteSpot.Kind.SOUTH_NORTH, EventScene.kind(SiteKind.LINE, Squares.parse("HP93,HP94")));
        assertEquals(SiteSpot.Kind.CORNER, EventScene.kind(SiteKind.CORNER, List.of()));
        assertEquals(SiteSpot.Kind.INSIDE, EventScene.kind(null, List.of()));
    }

    @Test
    void theMiddleAcross180() {
        assertEquals(Optional.of(new GeoPosition(-17, -180)),
                EventCentre.middle(List.of(new GeoPosition(-17, 179), new GeoPosition(-17, -179))));
        assertEquals(Optional.empty(), EventCentre.middle(List.of()));
        assertEquals(Optional.empty(), EventCentre.middle(List.of(new GeoPosition(0, 0), new GeoPosition(0, 180))));
    }

    @Test
    void anEventWithoutPlacesIsEmptyAndOneNearThePoleIsNot() {
        Event event = Fresh.event("Bare");
        Outlook bare = Outlook.of(event, null);
        assertEquals(Optional.empty(), EventCentre.of(bare));
        Site site = Fresh.site();
        site.setLatitudeDeg(89.99);
        site.setLongitudeDeg(-140);
        event.getSites().add(site);
        Outlook outlook = Outlook.of(event, null);
        Projector projector = new Projector(Plane.about(EventCentre.of(outlook).orElseThrow()));
        EventScene scene = EventScene.of(outlook, projector, new LaidGrid(projector), Look.PLAIN, null);
        assertEquals("a site without a name", scene.sites().get(0).name());
        assertEquals(1117, Math.hypot(scene.sites().get(0).at().x(), scene.sites().get(0).at().y()), 1);
    }

    /** The edge of the reach has the bird at the least elevation, by the ephemeris itself. */
    @Test
    void theReachEndsWhereTheBirdSets() {
        SitePass pass = DemoScene.OUTLOOK.passes().get(5);
        Plane plane = DemoScene.PROJECTOR.plane();
        Ephemeris ephemeris = DemoScene.OUTLOOK.ephemeris(pass.pass());
        Instant at = pass.pass().tca();
        for (double leastDeg : new double[] {0, 10, 40}) {
            for (Coordinate edge : ReachShape.area(ephemeris, at, leastDeg, plane).getCoordinates()) {
                GeoPosition place = plane.position(edge.x, edge.y);
                assertEquals(leastDeg, ephemeris.lookAt(Place.of(place.latitudeDeg(), place.longitudeDeg()), at)
                        .elevationDeg(), 0.02);
            }
        }
        ReachShape reach = ReachShape.of(DemoScene.OUTLOOK, pass, plane, null);
        GeoPosition site = DemoScene.OUTLOOK.position(pass.site());
        assertTrue(surrounds(reach.ever(), plane, site));
        assertTrue(surrounds(reach.ever(), plane, Geodesic.destination(site, 90, 200_000)));
        assertTrue(!surrounds(reach.ever(), plane, Geodesic.destination(site, 180, 9_000_000)));
    }

    private static boolean surrounds(List<double[]> rings, Plane plane, GeoPosition place) {
        GeometryFactory shapes = new GeometryFactory();
        double[] ring = rings.get(0);
        Coordinate[] corners = new Coordinate[ring.length / 2];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Coordinate(ring[2 * i], ring[2 * i + 1]);
        }
        Geometry area = shapes.createPolygon(corners);
        return area.contains(shapes.createPoint(new Coordinate(plane.put(place).x(), plane.put(place).y())));
    }
}
