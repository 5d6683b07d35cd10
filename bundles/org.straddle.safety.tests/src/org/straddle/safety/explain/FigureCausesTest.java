package org.straddle.safety.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.DrivingSide;
import org.straddle.model.Event;
import org.straddle.model.ExposureLimits;
import org.straddle.model.Forecast;
import org.straddle.model.Fresh;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Link;
import org.straddle.model.OverheadLine;
import org.straddle.model.Role;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.model.Visit;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;

/** Every figure that is printed follows from the site, the hour, the kit or the country: what turns it on, and what off. */
class FigureCausesTest {

    private static final LocalDate DAY = LocalDate.parse("2031-06-20");

    /** From where a figure comes. */
    private enum Cause {
        SITE, HOUR, KIT, COUNTRY, PLAN
    }

    /** One team at one site on the equator about noon, with a turn, a visit without hazards, a bare kit and a silent country. */
    private static final class Scene {

        final Event event = Fresh.event("Midsummer");
        final Site site = Fresh.site();
        final Visit visit = Fresh.visit();
        final Kit kit = Fresh.kit();
        final Jurisdiction country = Fresh.jurisdiction();
        final Forecast forecast = StraddleFactory.eINSTANCE.createForecast();
        final Stop stop = Fresh.stop();
        final Turn turn = Fresh.turn();

        Scene() {
            event.setZone("UTC");
            site.setLatitudeDeg(0.1);
            site.setLongitudeDeg(0.1);
            visit.setDate(LocalDate.parse("2031-06-01"));
            site.getVisits().add(visit);
            event.getSites().add(site);
            country.setName("Skerrymark");
            country.getSquares().add("JJ00");
            event.getJurisdictions().add(country);
            event.getKits().add(kit);
            Base base = Fresh.base();
            base.setLatitudeDeg(0.1);
            base.setLongitudeDeg(0.4);
            event.getBases().add(base);
            Team team = Fresh.team();
            team.setNumber(1);
            team.getKits().add(kit);
            TeamDay day = Fresh.teamDay(Instant.parse("2031-06-20T00:00:00Z"), Instant.parse("2031-06-20T23:00:00Z"), base, base);
            team.getDays().add(day);
            event.getTeams().add(team);
            Bird bird = Fresh.bird();
            Link up = Fresh.link(145.9, 145.9);
            bird.setUplink(up);
            event.getBirds().add(bird);
            turn.setBird(bird);
            stop.setTeam(team);
            stop.setSite(site);
            stop.getTurns().add(turn);
            event.getPlan().getStops().add(stop);
            at("11:00", "13:00");
        }

        void at(String from, String until) {
            stop.setArrival(Instant.parse("2031-06-20T" + from + ":00Z"));
            stop.setDeparture(Instant.parse("2031-06-20T" + until + ":00Z"));
            turn.setStart(stop.getArrival().plusSeconds(1800));
            turn.setEnd(stop.getArrival().plusSeconds(2400));
        }

        KitItem item(Role role) {
            KitItem item = Fresh.kitItem("Piece", role);
            kit.getItems().add(item);
            return item;
        }

        void transmits(double watts) {
            item(Role.RADIO).setTransmitsW(watts);
            item(Role.ANTENNA).setGainDbi(10);
        }

        void wires(double distanceM) {
            OverheadLine wires = StraddleFactory.eINSTANCE.createOverheadLine();
            wires.setDistanceM(distanceM);
            visit.getOverheadLines().add(wires);
        }

        Forecast forecast() {
            forecast.setDay(DAY);
            if (forecast.eContainer() == null) {
                event.getForecasts().add(forecast);
            }
            return forecast;
        }

        List<Figure> figures() {
            return SiteFigures.of(Outlook.of(event, null), site, Itinerary.of(event).at(site), DAY).stream().filter(Figure::known).toList();
        }
    }

    /**
     * @param says words of the figure; empty where any figure under the heading will do
     * @param on with the cause
     * @param off a near scene without it
     */
    private record Row(Cause cause, String key, String says, Consumer<Scene> on, Consumer<Scene> off) {

        boolean isSaid(Consumer<Scene> scene) {
            Scene made = new Scene();
            scene.accept(made);
            return made.figures().stream().anyMatch(figure -> figure.what().equals(TEXTS.getProperty("what." + key)) && figure.sentence().contains(says));
        }
    }

    private static final Properties TEXTS = texts();

    static List<Row> rows() {
        return List.of(
                new Row(Cause.SITE, "stopping", "", scene -> scene.visit.setRoadSpeedKmh(90), scene -> scene.visit.setRoadSpeedKmh(0)),
                new Row(Cause.SITE, "crossing", "", scene -> scene.visit.setRoadSpeedKmh(90), scene -> scene.visit.setRoadSpeedKmh(0)),
                new Row(Cause.SITE, "clothing", "class 3", scene -> scene.visit.setRoadSpeedKmh(90), scene -> scene.visit.setRoadSpeedKmh(50)),
                new Row(Cause.HOUR, "clothing", "light is poor", scene -> dusk(scene, 50), scene -> scene.visit.setRoadSpeedKmh(50)),
                new Row(Cause.COUNTRY, "clothing", "rules of the country", scene -> country(scene, 3), scene -> country(scene, 2)),
                new Row(Cause.SITE, "wires", "", scene -> scene.wires(40), scene -> { }),
                new Row(Cause.KIT, "wires", "leave it down", scene -> mast(scene, 30), scene -> mast(scene, 2)),
                new Row(Cause.KIT, "radio", "", scene -> scene.transmits(50), scene -> scene.item(Role.RADIO)),
                new Row(Cause.COUNTRY, "radio", "strictest", scene -> limits(scene, ExposureLimits.STRICTEST), scene -> limits(scene, ExposureLimits.FCC)),
                new Row(Cause.COUNTRY, "country", "left", scene -> scene.country.setDrivingSide(DrivingSide.LEFT), scene -> { }),
                new Row(Cause.COUNTRY, "driving", "Skerrymark", scene -> scene.country.setDrivingLimitMinutes(30), scene -> scene.country.setDrivingLimitMinutes(0)),
                new Row(Cause.PLAN, "driving", "", scene -> { }, scene -> scene.event.getPlan().getStops().clear()),
                new Row(Cause.PLAN, "duty", "plan less", scene -> scene.at("02:00", "22:00"), scene -> { }),
                new Row(Cause.HOUR, "heat", "", scene -> heat(scene, 36), scene -> heat(scene, 20)),
                new Row(Cause.HOUR, "chill", "", scene -> cold(scene, -5), scene -> cold(scene, 15)),
                new Row(Cause.HOUR, "wind", "", scene -> scene.forecast().setWindKmh(70.0), scene -> scene.forecast().setWindKmh(10.0)),
                new Row(Cause.HOUR, "thunder", "", scene -> scene.forecast().setThunder(true), scene -> scene.forecast().setThunder(false)),
                new Row(Cause.HOUR, "sun", "", scene -> scene.at("06:00", "08:00"), scene -> { }));
    }

    private static void dusk(Scene scene, double kmh) {
        scene.visit.setRoadSpeedKmh(kmh);
        scene.at("17:30", "19:00");
    }

    private static void country(Scene scene, int asked) {
        scene.visit.setRoadSpeedKmh(50);
        scene.country.setClothingClass(asked);
    }

    private static void mast(Scene scene, double metres) {
        scene.wires(40);
        scene.item(Role.ANTENNA).setRaisedM(metres);
    }

    private static void limits(Scene scene, ExposureLimits whose) {
        scene.transmits(50);
        scene.country.setExposureLimits(whose);
    }

    private static void heat(Scene scene, double warmest) {
        scene.forecast().setWarmestDegC(warmest);
        scene.forecast().setHumidityPercent(60.0);
    }

    private static void cold(Scene scene, double coldest) {
        scene.forecast().setColdestDegC(coldest);
        scene.forecast().setWindKmh(20.0);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isPrintedWithItsCauseOnly(Row row) {
        assertTrue(row.isSaid(row.on()), row.key() + " from " + row.cause());
        assertFalse(row.isSaid(row.off()), row.key() + " without " + row.cause());
    }

    @Test
    void everyFigureHasACauseAndEveryKindOfCauseHasAFigure() {
        Set<String> known = TEXTS.stringPropertyNames().stream().filter(key -> key.startsWith("what.")).map(key -> key.substring(5))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(known, rows().stream().map(Row::key).collect(Collectors.toCollection(TreeSet::new)));
        assertEquals(Set.of(Cause.values()), rows().stream().map(Row::cause).collect(Collectors.toSet()));
    }

    private static Properties texts() {
        Properties texts = new Properties();
        try (InputStreamReader in = new InputStreamReader(SiteFigures.class.getResourceAsStream("messages.properties"), StandardCharsets.UTF_8)) {
            texts.load(in);
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
        return texts;
    }
}
