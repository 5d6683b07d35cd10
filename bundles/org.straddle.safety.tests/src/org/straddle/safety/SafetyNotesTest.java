package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.safety.SiteNotation.day;
import static org.straddle.safety.SiteNotation.hazard;
import static org.straddle.safety.SiteNotation.policies;
import static org.straddle.safety.SiteNotation.site;

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
import org.straddle.model.StraddleFactory;
import org.straddle.model.Survey;

class SafetyNotesTest {

    private static SafetyNotes notes(Site site) {
        return SafetyNotes.of(site, day("06-20"), policies());
    }

    private static Site surveyed(double roadSpeedKmh, Hazard... hazards) {
        Site site = site("survey 06-01");
        site.getSurveys().get(0).setRoadSpeedKmh(roadSpeedKmh);
        site.getSurveys().get(0).getHazards().addAll(List.of(hazards));
        return site;
    }

    @Test
    void showsTheNewestSurveyOfTheDay() {
        Site site = site("survey 06-10; survey 06-01; survey 06-21");
        Survey newest = site.getSurveys().get(0);
        newest.getHazards().add(hazard(HazardKind.FOOTING, "loose stones", 0, "Walk, do not run."));
        SafetyNotes notes = notes(site);
        assertEquals(Optional.of(newest), notes.survey());
        assertEquals("footing: loose stones", notes.hazards().get(0).title());
        assertEquals("Walk, do not run.", notes.hazards().get(0).measureText());
    }

    @Test
    void figuresThatCannotBeMeasuredAreNotKnown() {
        Site site = surveyed(Double.POSITIVE_INFINITY, hazard(HazardKind.TRAFFIC, null, 0, null),
                hazard(HazardKind.POWER_LINE, null, Double.POSITIVE_INFINITY, null));
        String text = notes(site).hazards().stream().flatMap(note -> note.cautions().stream()).toList().toString();
        assertTrue(text.contains("does not say how fast traffic is") && !text.contains("Infinity") && !text.contains("∞"), text);
    }

    @Test
    void aHazardWithoutAMeasureSaysSo() {
        HazardNote note = notes(surveyed(0, hazard(HazardKind.WATER, null, 30, " "))).hazards().get(0);
        assertEquals("water, 30 m away", note.title());
        assertTrue(note.measureText().startsWith("The survey names no measure"));
    }

    /**
     * 15 ft up to 200 kV is 4.6 m (29 CFR 1926.1408 table A); 30 m away allows 30 / 1.5 = 20 m of mast and antenna (US
     * CPSC).
     */
    @Test
    void aMeasuredLineOverheadIsAHazardWithFigures() {
        Site site = surveyed(0);
        OverheadLine line = StraddleFactory.eINSTANCE.createOverheadLine();
        line.setDistanceM(30);
        line.setHeightM(9);
        line.setVoltageKv(132);
        site.getSurveys().get(0).getOverheadLines().add(line);
        HazardNote note = notes(site).hazards().get(0);
        assertEquals("power line, 30 m away: lowest wire about 9 m up, 132 kV", note.title());
        String cautions = String.join(" ", note.cautions());
        assertTrue(cautions.contains("no higher than 20 m") && cautions.contains("within 4.6 m (15 ft"), cautions);
        assertTrue(notes(site).remarks().isEmpty(), notes(site).remarks().toString());
        line.setVoltageKv(0);
        line.setHeightM(0);
        assertTrue(notes(site).hazards().get(0).title().endsWith("height not known, voltage not known"));
    }

    /** 90 km/h: 160 m by AASHTO's metric table (from memory), class 3 by ISO 20471. */
    @Test
    void trafficGetsTheFiguresOfItsSpeed() {
        String cautions = String.join(" ", notes(surveyed(90, hazard(HazardKind.TRAFFIC, "bend", 4, "Cones."))).hazards()
                .get(0).cautions());
        assertTrue(cautions.contains("about 160 m"), cautions);
        assertTrue(cautions.contains("class 3"), cautions);
    }

    @Test
    void trafficOfUnknownSpeedGetsTheHighestClass() {
        String cautions = String.join(" ", Cautions.of(HazardKind.TRAFFIC));
        assertTrue(cautions.contains("class 3"), cautions);
    }

    /** 12 m from the line: 12 / 1.5 = 8 m of mast and antenna by the CPSC's advice; within 10 ft none at all. */
    @Test
    void aPowerLineLimitsTheMast() {
        assertTrue(lastCaution(12).contains("no higher than 8 m"), lastCaution(12));
        assertTrue(lastCaution(3).contains("raise nothing at all"), lastCaution(3));
        assertTrue(lastCaution(0).contains("Look up"), "a distance that nobody entered limits nothing");
    }

    private static String lastCaution(double distanceM) {
        List<String> cautions = notes(surveyed(0, hazard(HazardKind.POWER_LINE, "wire", distanceM, "Stay west.")))
                .hazards().get(0).cautions();
        return cautions.get(cautions.size() - 1);
    }

    @Test
    void remarksOnWhatThePapersLack() {
        assertEquals("Nobody surveyed this site by 2031-06-20: its hazards are not known. Survey it first.",
                notes(site("")).remarks().get(0));
        assertTrue(notes(site("survey ?")).remarks().get(0).startsWith("The survey has no date"));
        assertTrue(notes(site("survey 06-01")).remarks().get(0).startsWith("The survey names no hazard"));
        String road = notes(surveyed(90, hazard(HazardKind.COLD, "wind", 0, "Hats."))).remarks().get(0);
        assertTrue(road.startsWith("Traffic passes at 90 km/h, yet the survey names no traffic hazard."), road);
    }

    @Test
    void remarksOnWhatHasLapsed() {
        Site site = surveyed(0, hazard(HazardKind.COLD, "wind", 0, "Hats."));
        assertEquals(List.of(), notes(site).remarks());
        site.getSurveys().get(0).setAccessUntil(day("06-19"));
        assertEquals(List.of("The permission to be there held until 2031-06-19. Ask for a new one."),
                notes(site).remarks());
        site.getSurveys().get(0).setAccessUntil(day("06-20"));
        Policies strict = policies();
        strict.setSurveyAgeLimitDays(19);
        assertEquals(List.of(), SafetyNotes.of(site, day("06-20"), strict).remarks());
        assertEquals("The survey of 2031-06-01 is older than 19 days. Visit the site again.",
                SafetyNotes.of(site, day("06-21"), strict).remarks().get(0));
    }

    @Test
    void takesThePoliciesOfItsEvent() {
        Event event = Fresh.event("Midsummer");
        Site site = site("review 06-01 by A");
        event.getSites().add(site);
        event.getPolicies().setReviewValidityDays(10);
        assertEquals("expired", SafetyNotes.of(site, day("06-20")).state().word());
        event.setPolicies(null);
        assertEquals("valid", SafetyNotes.of(site, day("06-20")).state().word());
    }
}
