package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.safety.SiteNotation.hazard;
import static org.straddle.safety.SiteNotation.site;
import static org.straddle.safety.SiteNotation.wires;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.model.HazardKind;
import org.straddle.model.Mark;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;

class MastLimitTest {

    private static final double SPAN_M = 10;

    private final Site site = site("visit 06-01");
    private final Visit visit = site.getVisits().get(0);

    private double limit() {
        return MastLimit.of(site, visit, SPAN_M).orElseThrow().heightM();
    }

    @Test
    void noWiresAndNoWordNoLimit() {
        assertEquals(Optional.empty(), MastLimit.of(site, visit, SPAN_M));
    }

    /** 60 m less 5 m of mark error and 5 m of station: 50 / 1.5 (US CPSC); 50 less 15 ft is more (29 CFR 1926.1408 table A). */
    @Test
    void followsFromTheDistanceThatCounts() {
        site.setMarkErrorM(5);
        visit.getOverheadLines().add(wires(60, 132, true));
        assertEquals(33.3, limit());
    }

    /** The same with 50 ft, 15.24 m, for a voltage that nobody knows (29 CFR 1926.1409): 50 − 15.24, still more; at 40 m less. */
    @Test
    void anUnknownVoltageLowersIt() {
        site.setMarkErrorM(5);
        visit.getOverheadLines().add(wires(40, 0, false));
        assertEquals(14.7, limit(), "30 − 15.24 = 14.76, down");
    }

    @Test
    void aComputedLimitLowersTheVisitorsAndNeverRaisesIt() {
        site.setMarkErrorM(0);
        visit.setMastLimitM(10);
        visit.getOverheadLines().add(wires(65, 0, false));
        assertEquals(10, limit());
        assertEquals("the limit that the visit names", MastLimit.of(site, visit, SPAN_M).orElseThrow().because());
        visit.getOverheadLines().add(wires(25, 0, false));
        assertEquals(4.7, limit());
    }

    @Test
    void theWorseErrorOfSiteAndVisitCounts() {
        site.setMarkErrorM(1);
        visit.getOverheadLines().add(wires(40, 11, true));
        double before = limit();
        Mark mark = StraddleFactory.eINSTANCE.createMark();
        mark.setErrorM(8);
        visit.setMark(mark);
        assertTrue(limit() < before);
    }

    @Test
    void wiresThatNobodyMeasuredLetNothingBeRaised() {
        visit.getOverheadLines().add(wires(0, 11, true));
        assertEquals(0, limit());
        assertTrue(MastLimit.of(site, visit, SPAN_M).orElseThrow().sentence().startsWith("Raise nothing here"));
    }

    @Test
    void whatMakesNoSenseLetsNothingBeRaised() {
        visit.getOverheadLines().add(wires(40, 11, true));
        site.setMarkErrorM(Double.NaN);
        assertEquals(0, limit());
        site.setMarkErrorM(5);
        visit.getOverheadLines().get(0).setDistanceM(Double.POSITIVE_INFINITY);
        assertEquals(0, limit());
    }

    @Test
    void aHazardOfWiresCountsLikeWiresInTheTable() {
        site.setMarkErrorM(5);
        visit.getHazards().add(hazard(HazardKind.POWER_LINE, "wire", 40, null));
        assertEquals(14.7, limit());
        visit.getOverheadLines().add(wires(40, 11, true));
        assertEquals(20, limit(), "the same wires, with a voltage in the table: 30 / 1.5");
        visit.getHazards().add(hazard(HazardKind.POWER_LINE, "another", 39, null));
        assertEquals(13.7, limit());
    }

    /** One note and one figure, whatever is entered twice. */
    @Test
    void oneFigureOnTheSheet() {
        site.setMarkErrorM(2);
        visit.setMastLimitM(10);
        visit.getHazards().add(hazard(HazardKind.POWER_LINE, "wires along the track", 65, "No mast over 12 m"));
        visit.getOverheadLines().add(wires(65, 0, false));
        List<HazardNote> notes = SafetyNotes.of(site, SiteNotation.day("06-20"), SiteNotation.policies()).hazards();
        assertEquals(1, notes.size());
        String cautions = String.join(" ", notes.get(0).cautions());
        assertTrue(cautions.contains("higher than 10 m") && cautions.contains("vehicle mast"), cautions);
        assertEquals(1, cautions.split("higher than", -1).length - 1, cautions);
        assertTrue(cautions.contains("name another figure, the more careful one counts"), cautions);
    }
}
