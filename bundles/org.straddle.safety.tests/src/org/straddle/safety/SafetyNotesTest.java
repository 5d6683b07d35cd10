package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.safety.SiteNotation.day;
import static org.straddle.safety.SiteNotation.hazard;
import static org.straddle.safety.SiteNotation.policies;
import static org.straddle.safety.SiteNotation.site;
import static org.straddle.safety.SiteNotation.wires;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.OverheadLine;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.Visit;

class SafetyNotesTest {

    private static SafetyNotes notes(Site site) {
        return SafetyNotes.of(site, day("06-20"), policies());
    }

    private static Site visited(double roadSpeedKmh, Hazard... hazards) {
        Site site = site("visit 06-01");
        site.getVisits().get(0).setRoadSpeedKmh(roadSpeedKmh);
        site.getVisits().get(0).getHazards().addAll(List.of(hazards));
        return site;
    }

    @Test
    void showsTheNewestVisitOfTheDay() {
        Site site = site("visit 06-10; visit 06-01; visit 06-21");
        Visit newest = site.getVisits().get(0);
        newest.getHazards().add(hazard(HazardKind.FOOTING, "loose stones", 0, "Walk, do not run."));
        SafetyNotes notes = notes(site);
        assertEquals(Optional.of(newest), notes.visit());
        assertEquals("footing: loose stones", notes.hazards().get(0).title());
        assertEquals("Walk, do not run.", notes.hazards().get(0).measureText());
    }

    @Test
    void figuresThatCannotBeMeasuredAreNotKnown() {
        Site site = visited(Double.POSITIVE_INFINITY, hazard(HazardKind.TRAFFIC, null, 0, null),
                hazard(HazardKind.POWER_LINE, null, Double.POSITIVE_INFINITY, null));
        String text = notes(site).hazards().stream().flatMap(note -> note.cautions().stream()).toList().toString();
        assertTrue(text.contains("The visit does not say how fast traffic is") && !text.contains("Infinity") && !text.contains("∞"), text);
    }

    @Test
    void aHazardWithoutAMeasureSaysSo() {
        HazardNote note = notes(visited(0, hazard(HazardKind.WATER, null, 30, " "))).hazards().get(0);
        assertEquals("water, 30 m away", note.title());
        assertTrue(note.measureText().startsWith("The visit names no measure"));
    }

    /**
     * 30 m less 5 m of mark error and 5 m of station: 20 m. 15 ft up to 200 kV is 4.572 m (29 CFR 1926.1408 table A), which
     * leaves 15.4 m; one and a half heights (US CPSC) leave 13.3 m, and that is less.
     */
    @Test
    void measuredWiresAreAHazardWithOneFigure() {
        Site site = visited(0);
        OverheadLine wires = wires(30, 132, true);
        wires.setHeightM(9);
        site.getVisits().get(0).getOverheadLines().add(wires);
        HazardNote note = notes(site).hazards().get(0);
        assertEquals("overhead wires, 30 m away: lowest wire about 9 m up, 132 kV, says the owner", note.title());
        String cautions = String.join(" ", note.cautions());
        assertTrue(cautions.contains("higher than 13.3 m") && cautions.contains("1926.1408 table A"), cautions);
        assertTrue(notes(site).remarks().isEmpty(), notes(site).remarks().toString());
        wires.setVoltageKv(0);
        wires.setHeightM(0);
        assertTrue(notes(site).hazards().get(0).title().endsWith("height not known, voltage not known"));
    }

    /** 90 km/h: 160 m by AASHTO's metric table (from memory), class 3 by ISO 20471. */
    @Test
    void trafficGetsTheFiguresOfItsSpeed() {
        String cautions = String.join(" ", notes(visited(90, hazard(HazardKind.TRAFFIC, "bend", 4, "Cones."))).hazards()
                .get(0).cautions());
        assertTrue(cautions.contains("about 160 m"), cautions);
        assertTrue(cautions.contains("class 3"), cautions);
    }

    @Test
    void trafficOfUnknownSpeedGetsTheHighestClass() {
        String cautions = String.join(" ", Cautions.of(HazardKind.TRAFFIC));
        assertTrue(cautions.contains("class 3"), cautions);
    }

    /** A slip of the keys takes no caution away. */
    @Test
    void aSpeedThatCannotBeStillIsARoad() {
        SafetyNotes notes = notes(visited(-50, hazard(HazardKind.FOOTING, "moss", 3, "Boots.")));
        assertTrue(notes.hasTraffic());
        assertTrue(notes.remarks().stream().anyMatch(remark -> remark.contains("at -50 km/h, which cannot be: correct it.")
                && remark.contains("class 3")), notes.remarks()::toString);
    }

    /** 50 m less 5 m and 5 m, and less 50 ft for a voltage not known (29 CFR 1926.1409): 40 − 15.24 = 24.76, down. */
    @Test
    void wiresLimitEverythingUpright() {
        assertTrue(firstCaution(50).contains("higher than 24.7 m"), firstCaution(50));
        assertTrue(firstCaution(12).contains("Raise nothing here"), firstCaution(12));
        assertTrue(firstCaution(0).contains("nobody has measured"), firstCaution(0));
    }

    private static String firstCaution(double distanceM) {
        return notes(visited(0, hazard(HazardKind.POWER_LINE, "wire", distanceM, "Stay west."))).hazards().get(0).cautions()
                .get(0);
    }

    /** ISO 20471 (secondary): class 2 up to 60 km/h by day; common practice: class 3 in poor light. */
    @Test
    void clothingFollowsFromTheHour() {
        Site site = visited(50, hazard(HazardKind.TRAFFIC, "bend", 4, "Cones."));
        assertTrue(clothing(site, Light.DAY).contains("class 2 (ISO 20471)"), clothing(site, Light.DAY));
        assertTrue(clothing(site, Light.POOR).contains("class 3 (ISO 20471; poor light)"), clothing(site, Light.POOR));
        assertTrue(clothing(site, Light.UNKNOWN).contains("class 3"), clothing(site, Light.UNKNOWN));
    }

    private static String clothing(Site site, Light light) {
        return String.join(" ", SafetyNotes.of(site, day("06-20"), policies(), light).hazards().get(0).cautions());
    }

    @Test
    void whereverThereIsTrafficSomebodyOnlyWatches() {
        for (double kmh : new double[] {0, 30, 90}) {
            String cautions = String.join(" ", Cautions.traffic(kmh, Light.DAY, 0));
            assertTrue(cautions.contains("One person without headphones does nothing but watch the traffic"), cautions);
        }
    }

    /** US CDC, as reprinted: hot, red, dry or damp skin; cooling at once; nothing to drink. */
    @Test
    void heatStrokeIsNotJudgedByDrySkin() {
        String heat = String.join(" ", Cautions.of(HazardKind.HEAT));
        assertTrue(heat.contains("hot skin, dry or damp") && heat.contains("nothing to drink"), heat);
        assertFalse(heat.contains("sweat"), heat);
    }

    @Test
    void aTeamReadsFewLinesForEachHazard() {
        for (HazardKind kind : HazardKind.values()) {
            assertTrue(Cautions.of(kind).size() <= 3, kind.getLiteral());
        }
    }

    @Test
    void remarksOnWhatThePapersLack() {
        assertEquals("Nobody visited this site by 20 Jun 2031: its hazards are not known. Visit it first.",
                notes(site("")).remarks().get(0));
        assertTrue(notes(site("visit ?")).remarks().get(0).startsWith("The visit has no date"));
        assertTrue(notes(site("visit 06-01")).remarks().get(0).startsWith("The visit names no hazard"));
        String road = notes(visited(90, hazard(HazardKind.COLD, "wind", 0, "Hats."))).remarks().get(0);
        assertTrue(road.startsWith("Traffic passes at 90 km/h, yet the visit names no traffic hazard."), road);
    }

    @Test
    void remarksOnWhatHasLapsed() {
        Site site = visited(0, hazard(HazardKind.COLD, "wind", 0, "Hats."));
        assertEquals(List.of(), notes(site).remarks());
        site.getVisits().get(0).setAccessUntil(day("06-19"));
        assertEquals(List.of("The permission to be there expired on 19 Jun 2031. Ask for a new one."),
                notes(site).remarks());
        site.getVisits().get(0).setAccessUntil(day("06-20"));
        Policies strict = policies();
        strict.setVisitAgeLimitDays(19);
        assertEquals(List.of(), SafetyNotes.of(site, day("06-20"), strict).remarks());
        assertEquals("The visit of 1 Jun 2031 is more than 19 days old. Visit the site again.",
                SafetyNotes.of(site, day("06-21"), strict).remarks().get(0));
    }

    @Test
    void takesThePoliciesOfItsEvent() {
        Site site = site("review 06-01 by A");
        Event event = (Event) site.eContainer();
        event.getPolicies().setReviewValidityDays(10);
        assertEquals("expired", SafetyNotes.of(site, day("06-20")).state().word());
        event.setPolicies(null);
        assertEquals("valid", SafetyNotes.of(site, day("06-20")).state().word());
    }
}
