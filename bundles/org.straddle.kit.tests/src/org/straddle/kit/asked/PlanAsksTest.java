package org.straddle.kit.asked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.grid.Square;
import org.straddle.model.Event;
import org.straddle.model.Forecast;
import org.straddle.model.Fresh;
import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.SafetyUse;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;

/** Three people, one stop of an hour on a line by day, out from 08:00 to 18:00. */
class PlanAsksTest {

    private final Event event = Fresh.event("Midsummer", "UTC", LocalDate.parse("2031-06-21"), LocalDate.parse("2031-06-21"));
    private final Team team = Fresh.team();
    private final Kit kit = Fresh.kit();
    private final Site site = Fresh.site();
    private final Visit visit = Fresh.visit();

    @BeforeEach
    void plan() {
        site.setName("Plover Line");
        site.setLatitudeDeg(50.5);
        site.setLongitudeDeg(0);
        site.setMarkErrorM(2.5);
        site.getSquares().addAll(List.of("IO90", "JO00"));
        visit.setDate(LocalDate.parse("2031-06-01"));
        site.getVisits().add(visit);
        event.getSites().add(site);
        for (int i = 0; i < 3; i++) {
            team.getOperators().add(Fresh.operator());
        }
        event.getOperators().addAll(team.getOperators());
        team.getKits().add(kit);
        event.getKits().add(kit);
        event.getTeams().add(team);
        TeamDay day = Fresh.teamDay(Instant.parse("2031-06-21T08:00:00Z"), Instant.parse("2031-06-21T18:00:00Z"));
        team.getDays().add(day);
        Stop stop = Fresh.stop(team, site, Instant.parse("2031-06-21T12:00:00Z"), Instant.parse("2031-06-21T13:00:00Z"));
        event.getPlan().getStops().add(stop);
    }

    @ParameterizedTest
    @CsvSource({ "0, 3", "50, 2", "60, 2", "61, 3", "90, 3" })
    void vestsAreForEachHeadInTheClassThatTheBriefAsksFor(double speedKmh, int vestClass) {
        hazard(HazardKind.TRAFFIC, "keep off");
        visit.setRoadSpeedKmh(speedKmh);
        Asked vests = asked(SafetyUse.VEST).orElseThrow().asked();
        assertEquals(3, vests.amount());
        assertEquals(vestClass, vests.vestClass());
    }

    @Test
    void aCountryThatAsksForMoreIsHeardAndSaid() {
        visit.setRoadSpeedKmh(50);
        Jurisdiction country = Fresh.jurisdiction();
        country.getSquares().addAll(Outlook.of(event, null).squares(site).stream().map(Square::name).toList());
        country.setClothingClass(3);
        event.getJurisdictions().add(country);
        Asked vests = asked(SafetyUse.VEST).orElseThrow().asked();
        assertEquals(3, vests.vestClass());
        assertTrue(vests.because().get(0).endsWith("traffic at 50 km/h asks for class 3, as the country’s rules say"), vests.because()::toString);
    }

    @Test
    void oneVestIsNotThree() {
        visit.setRoadSpeedKmh(90);
        KitItem vests = item("vests", SafetyUse.NONE);
        assertEquals("3 vests of class 3 (ISO 20471): 0 packed for sure. The class of vests is too low or not written down.",
                asked(SafetyUse.VEST).orElseThrow().sentence());
        vests.setVestClass(3);
        assertEquals("3 vests of class 3 (ISO 20471): only 1 packed (vests).", asked(SafetyUse.VEST).orElseThrow().sentence());
        vests.setCount(3);
        assertTrue(asked(SafetyUse.VEST).orElseThrow().isMet());
        assertTrue(asks().lookout().orElseThrow().contains("Of 3 people at most 2 work the radio at a time."), asks().lookout()::toString);
    }

    @Test
    void withoutTrafficNobodyNeedsVestsOrALookout() {
        assertEquals(Optional.empty(), asked(SafetyUse.VEST));
        assertEquals(Optional.empty(), asks().lookout());
    }

    /** The station spans 10 m; the line may lie 2.5 m to each side of the mark. */
    @Test
    void aLineIsMarkedByTapeAndByConesAtTheErrorOfTheMark() {
        assertEquals(10, asked(SafetyUse.TAPE).orElseThrow().asked().amount());
        assertEquals(4, asked(SafetyUse.CONE).orElseThrow().asked().amount());
        assertTrue(asks().marking().get(0).startsWith("Plover Line: lay 10 m of tape along 0°E through the mark. Put cones 2.5 m to each"
                + " side: within these 5 m nobody knows which square it is. Set up straight across 0°E"), asks().marking()::toString);
        site.getSquares().remove("IO90");
        assertEquals(Optional.empty(), asked(SafetyUse.TAPE));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Life vests; nobody goes near the edge   | LIFE_VEST  | 3
            2 life vests for whoever holds the rope | LIFE_VEST  | 2
            A flag pole beside you                  | FLAG_POLE  | 1
            2 x flag poles                          | FLAG_POLE  | 2
            6 traffic cones behind the car          | CONE       | 6
            Mark the way with tape                  | TAPE       | 10
            """)
    void measuresNameThings(String measure, SafetyUse use, double amount) {
        hazard(HazardKind.WATER, measure);
        Asked asked = asked(use).orElseThrow().asked();
        assertEquals(amount, asked.amount());
        assertTrue(asked.because().contains("Plover Line, measure against water: “" + measure + "”"), asked.because()::toString);
    }

    /** A life vest is no vest for traffic, and waterproof boots are no water. */
    @Test
    void wordsAreNotTakenForOthers() {
        hazard(HazardKind.WATER, "Life vests and waterproof boots, no boarding");
        assertEquals(Optional.empty(), asked(SafetyUse.VEST));
        assertEquals(1, asked(SafetyUse.WATER).orElseThrow().asked().because().size());
        assertEquals(1, asked(SafetyUse.CONE).orElseThrow().asked().because().size());
    }

    /**
     * Ten hours for three: 0.3 l an hour each are 9 l; in heat, 1 l an hour each, 30 l. NIOSH 2017-126 asks for 8 oz each 15 to
     * 20 min, 0.71 to 0.95 l an hour, and never above 48 oz, 1.42 l.
     */
    @Test
    void waterByHoursAndHeat() {
        assertEquals(9, asked(SafetyUse.WATER).orElseThrow().asked().amount());
        Forecast forecast = StraddleFactory.eINSTANCE.createForecast();
        forecast.setDay(LocalDate.parse("2031-06-21"));
        forecast.setWarmestDegC(26.0);
        event.getForecasts().add(forecast);
        assertEquals(9, asked(SafetyUse.WATER).orElseThrow().asked().amount());
        // 27 °C at 90 % feels like 31 °C
        forecast.setHumidityPercent(90.0);
        forecast.setWarmestDegC(27.0);
        assertEquals(30, asked(SafetyUse.WATER).orElseThrow().asked().amount());
        assertTrue(Thirst.IN_HEAT_L_PER_HOUR >= 0.946 && Thirst.IN_HEAT_L_PER_HOUR <= 1.42);
        item("can", SafetyUse.WATER).setWaterLitres(15);
        kit.getItems().get(0).setCount(2);
        assertTrue(asked(SafetyUse.WATER).orElseThrow().isMet());
    }

    @Test
    void everyTeamOnTheRoadTakesFirstAid() {
        assertEquals("1 first aid kit: nothing is packed for it.", asked(SafetyUse.FIRST_AID).orElseThrow().sentence());
        item("First-aid pouch", SafetyUse.NONE);
        assertTrue(asked(SafetyUse.FIRST_AID).orElseThrow().isMet());
        event.getPlan().getStops().clear();
        assertEquals(List.of(), asks().things());
    }

    private Optional<Provided> asked(SafetyUse use) {
        return asks().things().stream().filter(thing -> thing.asked().use() == use).findFirst();
    }

    private PlanAsks asks() {
        return PlanAsks.of(team, Outlook.of(event, null), Itinerary.of(event));
    }

    private void hazard(HazardKind kind, String measure) {
        Hazard hazard = StraddleFactory.eINSTANCE.createHazard();
        hazard.setKind(kind);
        hazard.setMeasure(measure);
        visit.getHazards().add(hazard);
    }

    private KitItem item(String name, SafetyUse use) {
        KitItem item = Fresh.kitItem(name, Role.SAFETY);
        item.setSafetyUse(use);
        kit.getItems().add(item);
        return item;
    }
}
