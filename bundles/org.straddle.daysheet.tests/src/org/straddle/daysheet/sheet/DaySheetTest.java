package org.straddle.daysheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.check.Severity;
import org.straddle.daysheet.Rove;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.MeanPosition;
import org.straddle.model.SiteKind;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;

class DaySheetTest {

    @Test
    void withoutTeamDaysAndStopsThereIsNothingToShow() {
        Rove rove = new Rove("UTC").team(1);
        assertEquals(Optional.empty(), DaySheet.of(Outlook.of(rove.event(), null), List.of(), new LightMemory()));
    }

    @Test
    void daysAreThoseOfTheZone() {
        // Two hours east of UTC, 20 June begins at 22:00 UTC on the 19th.
        DaySheet sheet = new Rove("Etc/GMT-2").team(1, "09-21:30", "+1 09-23").sheet();
        assertEquals(Rove.at("00").minus(Duration.ofHours(2)), sheet.range().start());
        assertEquals(3, sheet.days().size(), "23:00 UTC on the 21st is 01:00 on the 22nd there");
        assertEquals(Rove.at("09"), sheet.busy().start());
        assertEquals(Rove.at("21:30"), sheet.days().get(0).busy().end());
    }

    @Test
    void stopsThatOverlapGoToRowsOfTheirOwnAndOthersShareOne() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        rove.stop(1, "A", 64, -21, "09-12");
        rove.stop(1, "B", 64, -21, "11-13");
        rove.stop(1, "C", 64, -21, "14-15");
        assertEquals(List.of(0, 1, 0), rove.sheet().lanes().get(0).stops().stream().map(PlacedStop::row).toList());
    }

    @Test
    void aTurnThatSticksOutKeepsItsRoomInTheRow() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        rove.turn(rove.stop(1, "A", 64, -21, "09-12"), "Tern-1 (demo)", "12:30-12:40");
        rove.stop(1, "B", 64, -21, "12:35-14");
        assertEquals(List.of(0, 1), rove.sheet().lanes().get(0).stops().stream().map(PlacedStop::row).toList());
    }

    @Test
    void theFirstDriveEndsAtArrivalAndTheNextBeginAtDeparture() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        // Half a degree of latitude north of the base: 55.7 km (111.4 km a degree at 64° N, WGS-84) at 60 km/h.
        rove.stop(1, "A", 64.5, -21, "10-12");
        List<PlacedDrive> drives = rove.sheet().lanes().get(0).drives();
        assertEquals(2, drives.size());
        assertEquals(Rove.at("10"), drives.get(0).window().end());
        assertEquals(55.7, drives.get(0).window().duration().toSeconds() / 60.0, 0.2);
        assertEquals(Rove.at("12"), drives.get(1).window().start());
        assertEquals(Duration.ofHours(8), drives.get(1).room());
        assertTrue(drives.get(1).fits());
    }

    @Test
    void aDriveThatDoesNotFitFillsTheTimeThereIs() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        rove.stop(1, "A", 64, -21, "09-10");
        rove.stop(1, "B", 64.5, -21, "10:15-11");
        PlacedDrive drive = rove.sheet().lanes().get(0).drives().get(0);
        assertEquals("A", drive.from());
        assertFalse(drive.fits());
        assertEquals(Duration.ofMinutes(15), drive.window().duration());
    }

    @Test
    void stopsWithoutTeamHaveALaneAndThoseWithoutTimesAreCounted() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        rove.stop(0, "A", 64, -21, "09-10");
        rove.stop(1, "A", 64, -21, "12-11");
        Turn turn = rove.turn(rove.stop(1, "A", 64, -21, "15-16"), "Tern-1 (demo)", "15:10-15:20");
        turn.setEnd(null);
        DaySheet sheet = rove.sheet();
        assertEquals(List.of("Team 1", "No team"), sheet.lanes().stream().map(Lane::name).toList());
        assertEquals(2, sheet.untimed());
    }

    @Test
    void aSlipInAYearHidesThatStopAndNoOther() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        rove.stop(1, "A", 64, -21, "09-10");
        Stop slip = rove.stop(1, "B", 64, -21, "11-12");
        slip.setArrival(Instant.parse("1031-06-20T11:00:00Z"));
        slip.setDeparture(Instant.parse("1031-06-20T12:00:00Z"));
        DaySheet sheet = rove.sheet();
        assertEquals(1, sheet.days().size());
        assertEquals(1, sheet.items().size());
        assertEquals(1, sheet.untimed());
    }

    @Test
    void aStopOverCenturiesStretchesTheSheetNoFurtherThanTheEvent() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        rove.stop(1, "A", 64, -21, "09-10");
        rove.stop(1, "B", 64, -21, "11-12").setArrival(Instant.parse("1031-06-20T11:00:00Z"));
        DaySheet sheet = rove.sheet();
        assertEquals(1, sheet.days().size());
        assertEquals(2, sheet.items().size());
    }

    @Test
    void findingsMarkWhatTheyNameGravestFirst() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        Stop stop = rove.stop(1, "A", 64, -21, "09-10");
        Turn turn = rove.turn(stop, "Tern-1 (demo)", "09:10-09:20");
        Lane lane = rove.sheet(Rove.finding(Severity.ADVICE, stop), Rove.finding(Severity.BLOCKER, turn, stop),
                Rove.finding(Severity.WARNING, stop.getTeam())).lanes().get(0);
        assertEquals(Optional.of(new Marking(Severity.BLOCKER, 1)), Marking.of(lane.stops().get(0).findings()), "the advice is not counted");
        assertEquals(Optional.of(new Marking(Severity.BLOCKER, 1)),
                Marking.of(lane.stops().get(0).turns().get(0).findings()));
        assertEquals(Optional.of(new Marking(Severity.WARNING, 1)), Marking.of(lane.findings()));
        assertEquals(3, lane.open().size());
    }

    @Test
    void midsummerAt64NorthHasTwilightButNoDarkness() {
        // Civil twilight lasts all night north of about 60.6° N at midsummer: 90° - 23.4° - 6°.
        DaySheet sheet = new Rove("Atlantic/Reykjavik").team(1, "08-20").sheet();
        assertTrue(sheet.has(Light.State.DAY));
        assertTrue(sheet.has(Light.State.TWILIGHT));
        assertFalse(sheet.has(Light.State.DARK));
    }

    @Test
    void lightFillsEachDayOnce() {
        Rove rove = new Rove("Atlantic/Reykjavik").team(1, "08-20");
        DaySheet sheet = rove.sheet();
        Duration lit = sheet.lanes().get(0).light().stream().map(light -> light.window().duration())
                .reduce(Duration.ZERO, Duration::plus);
        assertEquals(sheet.range().duration(), lit);
    }

    @Test
    void theMiddleOfTwoPlacesAcrossTheDateLineIsBetweenThem() {
        GeoPosition middle = MeanPosition.of(List.of(new GeoPosition(-17, 179), new GeoPosition(-17, -177)))
                .orElseThrow();
        assertEquals(-179, middle.longitudeDeg(), 1e-9);
        assertEquals(Optional.empty(), MeanPosition.of(List.of()));
    }

    @Test
    void noTwoBirdsShareTheirLetters() {
        Rove rove = new Rove("UTC");
        for (String name : List.of("Tern-1 (demo)", "Teal-1 (demo)", "Tern-2 (demo)", "", "(demo)", "77")) {
            rove.bird(name);
        }
        List<String> letters = BirdMark.all(rove.event().getBirds()).values().stream().map(BirdMark::letters)
                .toList();
        assertEquals("T1", letters.get(0));
        assertEquals(letters.size(), new HashSet<>(letters).size(), letters.toString());
    }

    @Test
    void teamsOfTheSameColourDifferInHatch() {
        assertEquals(LaneMark.of(1).rgb(), LaneMark.of(8).rgb());
        assertNotEquals(LaneMark.of(1).hatch(), LaneMark.of(8).hatch());
        Set<Object> looks = new HashSet<>();
        IntStream.rangeClosed(1, 28).mapToObj(LaneMark::of)
                .forEach(mark -> looks.add(List.of(mark.rgb(), mark.hatch())));
        assertEquals(28, looks.size());
    }

    /** 20°W parts HP94 from IP04, and 64°N parts HP93 from HP94. */
    @Test
    void lineSitesAreToldApartByHowTheirSquaresLie() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        claim(rove.stop(1, "A", 64.5, -20, "09-10"), SiteKind.LINE, "HP94", "IP04");
        claim(rove.stop(1, "B", 64, -21, "11-12"), SiteKind.LINE, "HP93", "HP94");
        claim(rove.stop(1, "C", 64, -20, "13-14"), SiteKind.CORNER, "HP93", "HP94", "IP03", "IP04");
        claim(rove.stop(1, "D", 64.5, -21, "15-16"), SiteKind.INSIDE, "HP94");
        assertEquals(List.of(SiteSpot.Kind.WEST_EAST, SiteSpot.Kind.SOUTH_NORTH, SiteSpot.Kind.CORNER, SiteSpot.Kind.INSIDE),
                rove.sheet().lanes().get(0).stops().stream().map(stop -> stop.shape().orElseThrow()).toList());
    }

    private static void claim(Stop stop, SiteKind kind, String... squares) {
        stop.getSite().setKind(kind);
        stop.getSite().getSquares().clear();
        stop.getSite().getSquares().addAll(List.of(squares));
    }
}
