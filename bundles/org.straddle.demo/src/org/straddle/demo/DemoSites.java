package org.straddle.demo;

import static org.straddle.model.HazardKind.*;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.GridCorner;
import org.straddle.grid.GridLine;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.HorizonPoint;
import org.straddle.model.Mark;
import org.straddle.model.MarkMethod;
import org.straddle.model.OverheadLine;
import org.straddle.model.Review;
import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.Verdict;
import org.straddle.sky.Horizon;

/**
 * The sites of the demo. They lie on land along the ring road, by their coordinates only: labels, visits, hazards
 * and reviews are invented and say nothing about the real places there.
 */
final class DemoSites {

    /** Who signs the reviews of a part of the country. */
    private record Signed(String first, String second) {
    }

    /** In the order of the teams. */
    private static final List<Signed> SIGNED = List.of(new Signed("Q2MRL", "Q5GLM"), new Signed("Q5GLM", "Q3DUN"),
            new Signed("Q0AAR", "Ines Plover (invented)"));

    private final Event event;
    /** Of which team the sites are that are made now, counted from 0. */
    private int part;

    private DemoSites(Event event) {
        this.event = event;
    }

    static void addTo(Event event) {
        DemoSites sites = new DemoSites(event);
        sites.southWest();
        sites.part++;
        sites.north();
        sites.part++;
        sites.southEast();
    }

    private void southWest() {
        Site basalt = onLine("Basalt Mark", "20°W", 63.61, 40);
        horizon(basalt, "0:14 40:18 80:6 140:1 270:1 320:8");
        review(visit(basalt, "2027-05-08", 90, "Lay-by, open to all", "gravel", "good",
                hazard(TRAFFIC, "Coaches pull in without looking", 9, "Antennas and people behind the car, away from the road; one of us only watches the traffic"),
                hazard(WATER, "Spray from a fall when the wind is north", 150, "Cover the radio")),
                "2027-05-20", Verdict.GO_WITH_CARE, "");

        Site corner = onCorner("Four Winds Corner", "64°N 20°W", 180);
        corner.setMarkErrorM(2);
        horizon(corner, "0:3 60:7 100:11 140:5 220:2");
        Visit seen = visit(corner, "2027-05-09", 70, "Landowner (invented) allows it", "lava gravel", "weak",
                hazard(FOOTING, "Loose lava with holes under moss", 3, "Boots; mark the way from the car with tape"),
                hazard(POWER_LINE, "Wires along the track", 65, "Stay on the far side of the track"),
                hazard(REMOTENESS, "Nobody passes after noon", 0, "Call the coordinator each hour, by radio where the phone fails"));
        seen.setAccessUntil(LocalDate.parse("2027-06-30"));
        seen.setAllowedBy("The landowner (invented), by letter");
        seen.setMark(mark(corner, 2));
        OverheadLine wire = StraddleFactory.eINSTANCE.createOverheadLine();
        wire.setDistanceM(65);
        wire.setHeightM(8);
        wire.setNote("along the track; nobody asked the owner");
        seen.setMastLimitM(10);
        seen.getOverheadLines().add(wire);
        review(seen, "2027-05-21", Verdict.ON_CONDITIONS, "Only with two operators and a working phone or radio link");

        Site willow = inside("Willow Gravel", 63.90, -20.70, 60, "HP93");
        horizon(willow, "0:2 90:4 180:1");
        review(visit(willow, "2027-05-08", 50, "Municipal ground", "gravel", "good"),
                "2027-05-20", Verdict.GO_WITH_CARE, "");

        Site steam = onLine("Steam Fence", "64°N", -21.15, 90);
        horizon(steam, "0:9 45:12 90:3 180:0 300:7");
        Visit old = visit(steam, "2025-07-14", 50, "Lay-by of a greenhouse (invented), by letter", "asphalt", "good",
                hazard(OTHER, "Hot ground behind the fence", 30, "Nobody crosses the fence"));
        old.setAccessUntil(LocalDate.parse("2027-06-15"));
        review(old, "2027-05-20", Verdict.GO_WITH_CARE, "");

        Site moss = onLine("Moss Milestone", "22°W", 64.59, 30);
        horizon(moss, "0:4 30:10 60:4 180:0");
        review(visit(moss, "2026-09-20", 90, "Lay-by", "gravel", "good",
                hazard(TRAFFIC, "Narrow shoulder", 6, "Park beyond the marker posts")),
                "2027-05-02", Verdict.GO_WITH_CARE, "");
        visit(moss, "2027-05-10", 90, "Lay-by, half of it dug up", "gravel", "good",
                hazard(TRAFFIC, "Narrow shoulder", 3, "Park beyond the marker posts"),
                hazard(FOOTING, "Open trench", 5, "Stay behind the barrier, away from the road and from the trench"));

        Site heath = onLine("Heath Cairn", "65°N", -21.06, 380);
        horizon(heath, "0:1 90:2 180:2 270:3");
        visit(heath, "2027-05-10", 90, "Old road beside the pass", "gravel", "weak",
                hazard(COLD, "Wind and sleet in June", 0, "Work from the car below 5 °C"));

        Site thyme = inside("Thyme Bend", 64.75, -21.55, 70, "HP94");
        review(visit(thyme, "2027-05-10", 90, "Lay-by", "asphalt", "good"),
                "2027-05-21", Verdict.GO_WITH_CARE, "");
    }

    private void north() {
        Site fields = onLine("Two Fields North", "20°W", 65.57, 110);
        horizon(fields, "0:6 60:15 120:12 180:4 240:11 300:9");
        review(visit(fields, "2027-05-12", 90, "Farm track, permission by telephone", "gravel", "good",
                hazard(TRAFFIC, "Bend hides oncoming cars", 12, "Set up where cars are seen on both sides of the bend; one of us only watches"),
                hazard(ANIMALS, "Sheep and a ram that guards them", 20, "Keep the gate shut")),
                "2027-05-22", Verdict.GO_WITH_CARE, "");

        Site fjord = onLine("Fjord Shoulder", "18°W", 65.70, 240);
        horizon(fjord, "0:2 80:9 180:6 270:1");
        review(visit(fjord, "2027-05-12", 70, "Lay-by", "gravel", "good",
                hazard(TRAFFIC, "Steep descent, hot brakes", 8, "Park uphill of the lay-by's entrance, people behind the rocks")),
                "2027-05-22", Verdict.GO_WITH_CARE, "");

        Site sedge = inside("Sedge Ford", 65.60, -17.00, 290, "IP15");
        horizon(sedge, "0:2 120:5 240:3");
        review(visit(sedge, "2027-05-13", 50, "Common land", "grass", "good",
                hazard(WATER, "The ford rises after noon", 25, "Arrive and leave before the melt")),
                "2027-05-22", Verdict.GO_WITH_CARE, "");

        Site desert = onLine("Desert Post", "16°W", 65.64, 400);
        horizon(desert, "0:1 90:1 180:3 270:1");
        review(visit(desert, "2027-05-13", 90, "Lay-by", "sand", "none",
                hazard(REMOTENESS, "No phone for 30 km", 0, "Tell the coordinator when you leave coverage and by when you will call again"),
                hazard(LIGHTNING, "No higher ground around", 0, "Look at the forecast; stay away when it says thunder. Any thunder: into the car, masts stay as they are")),
                "2027-05-22", Verdict.GO_WITH_CARE, "").setExpires(LocalDate.parse("2027-06-18"));

        Site kelp = inside("Kelp Slip", 66.04, -18.63, 8, "IP06");
        horizon(kelp, "0:1 60:3 120:19 180:22 240:20 300:8");
        review(visit(kelp, "2027-05-14", 30, "Harbour master (invented) allows it", "concrete", "good",
                hazard(WATER, "Slippery slip into deep water", 7, "Stay off the slip; life vest within 10 m of the edge")),
                "2027-05-22", Verdict.GO_WITH_CARE, "");

        Site rope = inside("Rope Yard", 66.03, -17.36, 30, "IP16");
        horizon(rope, "0:3 90:8 180:4 270:1");
        review(visit(rope, "2027-05-14", 30, "Car park", "asphalt", "good"),
                "2027-05-22", Verdict.GO_WITH_CARE, "");
    }

    private void southEast() {
        Site causeway = onLine("Pebble Causeway", "16°W", 64.12, 20);
        horizon(causeway, "0:5 60:3 120:0 240:0 300:8 340:10");
        review(visit(causeway, "2027-05-16", 90, "Lay-by", "gravel", "good",
                hazard(TRAFFIC, "Hire cars stop on the road for the view", 10, "Stand behind the lay-by's wall; one of us only watches the traffic"),
                hazard(ANIMALS, "Nesting gulls attack heads", 150, "Stay at the far end of the lay-by, a flag pole upright beside you; leave when they rise")),
                "2027-05-23", Verdict.GO_WITH_CARE, "");

        Site glacier = onLine("Glacier Gate", "64°N", -16.92, 110);
        horizon(glacier, "0:24 40:26 80:12 130:1 240:1 300:14");
        review(visit(glacier, "2027-03-20", 90, "Lay-by", "gravel", "good",
                hazard(WATER, "Melt water may cut the lay-by", 20, "Ask for the river before you drive; leave before it reaches the track")),
                "2027-04-01", Verdict.GO_WITH_CARE, "");

        Site lichen = inside("Lichen Wall", 64.32, -15.20, 15, "IP24");
        horizon(lichen, "0:9 60:6 150:0 270:7");
        Review alone = review(visit(lichen, "2027-05-16", 50, "School yard (invented), out of term", "asphalt", "good",
                hazard(POWER_LINE, "Wires to the school", 38, "Station on the other side of the yard")),
                "2027-05-23", Verdict.GO_WITH_CARE, "");
        // Waits for a second signature, so that one can be tried.
        alone.setSecond(null);
        alone.setSecondAt(null);

        Site birch = inside("Birch Hollow", 65.20, -14.55, 60, "IP25");
        horizon(birch, "0:8 90:12 180:9 270:11");
        review(visit(birch, "2027-05-17", 50, "Camp ground", "grass", "good"),
                "2027-05-23", Verdict.GO_WITH_CARE, "");

        Site cod = onLine("Cod Quay", "14°W", 65.09, 15);
        cod.setMarkErrorM(7);
        horizon(cod, "0:17 60:11 120:8 180:19 270:15");
        visit(cod, "2024-08-02", 30, "Quay, ask the watch", "concrete", "good",
                hazard(WATER, "Unfenced edge of the quay", 4, "Life vests; nobody within 3 m of the edge"),
                hazard(RADIO_FIELD, "Ship radars", 40, "Leave the quay when a ship berths"));

        inside("Driftwood Stage", 63.80, -17.70, 45, "IP13");

        Site cloister = onLine("Cloister Line", "18°W", 63.79, 40);
        horizon(cloister, "0:7 90:2 180:0 270:4");
        review(visit(cloister, "2027-05-18", 90, "Farm track", "gravel", "good",
                hazard(TRAFFIC, "Farm machines turn here", 8, "Leave the gate free; one of us only watches")),
                "2027-05-24", Verdict.DO_NOT_USE, "The track washed out after the visit");
    }

    /** On a line: the mark lies exactly on it, at the other coordinate. */
    private Site onLine(String name, String line, double otherDeg, double altitudeM) {
        GridLine on = GridLine.parse(line);
        GeoPosition mark = on.isMeridian() ? new GeoPosition(otherDeg, on.degree())
                : new GeoPosition(on.degree(), otherDeg);
        Site site = site(name, SiteKind.LINE, mark, altitudeM);
        on.squaresAt(mark).forEach(square -> site.getSquares().add(square.name()));
        site.setMarkErrorM(4);
        return site;
    }

    private Site onCorner(String name, String corner, double altitudeM) {
        GridCorner on = GridCorner.parse(corner);
        Site site = site(name, SiteKind.CORNER, on.position(), altitudeM);
        on.squares().forEach(square -> site.getSquares().add(square.name()));
        return site;
    }

    private Site inside(String name, double latitudeDeg, double longitudeDeg, double altitudeM, String square) {
        Site site = site(name, SiteKind.INSIDE, new GeoPosition(latitudeDeg, longitudeDeg), altitudeM);
        site.getSquares().add(square);
        return site;
    }

    private Site site(String name, SiteKind kind, GeoPosition mark, double altitudeM) {
        Site site = DemoIdentity.named(Fresh.site(), "site/" + name);
        site.setName(name);
        site.setKind(kind);
        site.setLatitudeDeg(mark.latitudeDeg());
        site.setLongitudeDeg(mark.longitudeDeg());
        site.setAltitudeM(altitudeM);
        event.getSites().add(site);
        return site;
    }

    private static void horizon(Site site, String notation) {
        for (Horizon.Point point : Horizon.parse(notation).points()) {
            HorizonPoint corner = StraddleFactory.eINSTANCE.createHorizonPoint();
            corner.setAzimuthDeg(point.azimuthDeg());
            corner.setElevationDeg(point.elevationDeg());
            site.getHorizon().add(corner);
        }
    }

    private static Visit visit(Site site, String date, double roadSpeedKmh, String access, String surface,
            String phone, Hazard... hazards) {
        Visit visit = DemoIdentity.named(Fresh.visit(), "visit/" + site.getName() + "/" + date);
        visit.setVisitor("Q3DUN");
        visit.setDate(LocalDate.parse(date));
        visit.setRoadSpeedKmh(roadSpeedKmh);
        visit.setAccess(access);
        visit.setParking("room for one car");
        visit.setSurface(surface);
        visit.setPhoneCoverage(phone);
        visit.setNote("Invented for the demo; says nothing about the real place.");
        visit.getHazards().addAll(Arrays.asList(hazards));
        site.getVisits().add(visit);
        return visit;
    }

    /** The mark of the site as a visit typed it. */
    private static Mark mark(Site site, double errorM) {
        Mark mark = StraddleFactory.eINSTANCE.createMark();
        mark.setLatitudeDeg(site.getLatitudeDeg());
        mark.setLongitudeDeg(site.getLongitudeDeg());
        mark.setAltitudeM(site.getAltitudeM());
        mark.setErrorM(errorM);
        mark.setMethod(MarkMethod.TYPED);
        return mark;
    }

    private static Hazard hazard(HazardKind kind, String description, double distanceM, String measure) {
        Hazard hazard = StraddleFactory.eINSTANCE.createHazard();
        hazard.setKind(kind);
        hazard.setDescription(description);
        hazard.setDistanceM(distanceM);
        hazard.setMeasure(measure);
        hazard.setOwner("team lead");
        rate(hazard);
        return hazard;
    }

    /** Rated by kind, as a reviewer might; the quay is left at more than the event takes. */
    private static void rate(Hazard hazard) {
        boolean deadly = List.of(TRAFFIC, POWER_LINE, LIGHTNING, REMOTENESS).contains(hazard.getKind());
        boolean slight = List.of(FOOTING, ANIMALS, COLD, RADIO_FIELD).contains(hazard.getKind());
        hazard.setSeverity(deadly ? RiskSeverity.CATASTROPHIC : slight ? RiskSeverity.MARGINAL : RiskSeverity.CRITICAL);
        hazard.setProbability(deadly ? RiskProbability.REMOTE : RiskProbability.OCCASIONAL);
        hazard.setSeverityLeft(hazard.getDescription().startsWith("Unfenced") ? RiskSeverity.CATASTROPHIC : hazard.getSeverity());
        hazard.setProbabilityLeft(deadly ? RiskProbability.IMPROBABLE : RiskProbability.REMOTE);
    }

    /** Signed for the team that plans to stop there, and by somebody else too. */
    private Review review(Visit visit, String date, Verdict verdict, String conditions) {
        Site site = (Site) visit.eContainer();
        Signed signed = SIGNED.get(part);
        Review review = DemoIdentity.named(Fresh.review(), "review/" + site.getName() + "/" + date);
        review.setReviewer(signed.first());
        review.setTeam(event.getTeams().get(part));
        review.setDate(LocalDate.parse(date));
        review.setSignedAt(Instant.parse(date + "T18:00:00Z"));
        review.setSecond(signed.second());
        review.setSecondAt(Instant.parse(date + "T19:30:00Z"));
        review.setVerdict(verdict);
        review.setConditions(conditions);
        review.setVisit(visit);
        site.getReviews().add(review);
        return review;
    }
}
