package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.straddle.model.Base;
import org.straddle.model.Event;
import org.straddle.model.ExposureLimits;
import org.straddle.model.Forecast;
import org.straddle.model.ForecastHour;
import org.straddle.model.Fresh;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.DrivingLaw;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Wheel;
import org.straddle.sky.Window;

/**
 * No figure becomes less careful when something becomes worse: nearer, faster, darker, of higher voltage, less well known,
 * hotter, more humid, colder, windier. Every case walks over the whole range of one input for random values of the others.
 */
class CarefulFiguresTest {

    private static final int OTHERS = 200;
    private static final Instant MIDNIGHT = Instant.parse("2031-06-20T00:00:00Z");

    private final Random random = new Random(7);

    private double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    /** Walks from the mild end to the worse one; the figure may only rise. */
    private static void neverFalls(double mild, double worse, DoubleUnaryOperator figure, String what) {
        double before = Double.NEGATIVE_INFINITY;
        for (int step = 0; step <= 400; step++) {
            double at = mild + (worse - mild) * step / 400;
            double now = figure.applyAsDouble(at);
            if (!(now >= before - 1e-9)) {
                fail(what + ": " + now + " after " + before + " at " + at);
            }
            before = now;
        }
    }

    private static void neverRises(double mild, double worse, DoubleUnaryOperator figure, String what) {
        neverFalls(mild, worse, at -> -figure.applyAsDouble(at), what);
    }

    @Test
    void mastsNearWires() {
        for (int i = 0; i < OTHERS; i++) {
            double distance = between(0, 120);
            double error = between(0, 20);
            double span = between(0, 30);
            double kilovolts = between(0.1, 1200);
            for (DoubleFunction<WireVoltage> known : List.<DoubleFunction<WireVoltage>>of(WireVoltage::fromOwner,
                    WireVoltage::guessed, any -> WireVoltage.unknown())) {
                neverRises(120, 0, d -> highest(d, error, span, known.apply(kilovolts)), "nearer wires");
                neverRises(0, 40, e -> highest(distance, e, span, known.apply(kilovolts)), "a worse mark");
                neverRises(0, 60, s -> highest(distance, error, s, known.apply(kilovolts)), "a longer station");
                neverRises(0.1, 1500, kv -> highest(distance, error, span, known.apply(kv)), "a higher voltage");
                neverFalls(0, 40, h -> OverheadWires.leastDistanceM(h, known.apply(kilovolts)).orElse(1e9), "a higher mast");
            }
        }
    }

    private static double highest(double distanceM, double errorM, double spanM, WireVoltage voltage) {
        return OverheadWires.highestM(OverheadWires.countedDistanceM(distanceM, errorM, spanM), voltage);
    }

    @Test
    void whatNobodyKnowsOfWiresIsNeverBetterThanWhatSomebodyKnows() {
        for (double kilovolts = 0.5; kilovolts <= 1000; kilovolts += 0.5) {
            double told = WireVoltage.fromOwner(kilovolts).approachFt().orElseThrow();
            double guessed = WireVoltage.guessed(kilovolts).approachFt().orElseThrow();
            assertTrue(told <= guessed && guessed <= WireVoltage.unknown().approachFt().orElseThrow(), kilovolts + " kV");
        }
    }

    @ParameterizedTest
    @EnumSource(Light.class)
    void fasterTraffic(Light light) {
        neverFalls(0, 200, kmh -> HighVisibility.at(kmh, light).number(), "clothing");
        neverFalls(0, 200, StoppingSight::metres, "stopping distance");
        neverFalls(0, 130, StoppingSight::feet, "stopping distance");
        neverFalls(0.3, -0.3, grade -> StoppingSight.feetOnGrade(60, grade), "a steeper way down");
    }

    /** What a country asks for is added to what speed and light ask for; nothing that it says makes that less. */
    @Test
    void stricterCountries() {
        for (Light light : Light.values()) {
            for (double kmh : new double[] {0, 30, 60, 61, 130, Double.NaN}) {
                neverFalls(0, 3, asked -> HighVisibility.at(kmh, light, (int) asked).number(), "a country that asks for more");
                assertTrue(HighVisibility.at(kmh, light, 1).compareTo(HighVisibility.at(kmh, light)) >= 0);
            }
        }
    }

    @Test
    void darkerRoads() {
        for (double kmh = 0; kmh <= 150; kmh += 0.5) {
            int day = HighVisibility.at(kmh, Light.DAY).number();
            assertTrue(day <= HighVisibility.at(kmh, Light.POOR).number());
            assertTrue(HighVisibility.at(kmh, Light.UNKNOWN) == HighVisibility.at(kmh, Light.POOR));
        }
    }

    @ParameterizedTest
    @EnumSource(RadioExposure.class)
    void strongerFields(RadioExposure limit) {
        for (int i = 0; i < OTHERS; i++) {
            double watts = between(0, 1500);
            double gain = between(-3, 25);
            double mhz = between(30, 3000);
            neverFalls(0, 1500, w -> limit.distanceM(w, gain, mhz), "more power");
            neverFalls(-3, 25, dbi -> limit.distanceM(watts, dbi, mhz), "more gain");
        }
    }

    @ParameterizedTest
    @EnumSource(RadioExposure.class)
    void whereNobodySaysWhoseLimitsTheStrictestCount(RadioExposure people) {
        for (double mhz = 30; mhz <= 10_000; mhz += 7) {
            double strictest = people.limitWm2(ExposureLimits.STRICTEST, mhz);
            assertTrue(strictest <= people.limitWm2(ExposureLimits.FCC, mhz) && strictest <= people.limitWm2(ExposureLimits.ICNIRP, mhz));
        }
    }

    @Test
    void passersByStayFartherAwayThanOperators() {
        for (ExposureLimits whose : ExposureLimits.VALUES) {
            neverFalls(30, 3000, mhz -> Math.signum(RadioExposure.UNCONTROLLED.distanceM(whose, 50, 10, mhz)
                    - RadioExposure.CONTROLLED.distanceM(whose, 50, 10, mhz)) < 0 ? -1 : 1, "passers-by");
            neverFalls(0, 1500, w -> RadioExposure.UNCONTROLLED.distanceM(whose, w, 10, 145.9), "more power");
        }
    }

    /** At the wheel: a longer drive, an earlier break or a stricter limit never asks for less. */
    @Test
    void longerDrives() {
        for (int i = 0; i < OTHERS; i++) {
            Policies policies = StraddleFactory.eINSTANCE.createPolicies();
            policies.setBreakAfterMinutes(between(1, 400));
            policies.setDrivingLimitMinutes(between(1, 900));
            Event event = StraddleFactory.eINSTANCE.createEvent();
            event.setPolicies(policies);
            Outlook outlook = Outlook.of(event, null);
            DrivingLaw law = outlook.drivingLaw(List.of());
            neverFalls(0, 1440, minutes -> law.breaks(seconds(minutes)), "a longer drive");
            neverFalls(0, 1440, minutes -> Wheel.isOverLimit(seconds(minutes), law) ? 1 : 0, "a longer day at the wheel");
            double driven = between(0, 1440);
            neverFalls(600, 1, after -> new DrivingLaw(law.limit(), Optional.empty(), seconds(after), Optional.empty()).breaks(seconds(driven)),
                    "an earlier break");
            neverFalls(1440, 1, most -> Wheel.isOverLimit(seconds(driven), new DrivingLaw(seconds(most), Optional.empty(), law.breakAfter(),
                    Optional.empty())) ? 1 : 0, "a stricter limit");
        }
    }

    /** A day: whoever leaves earlier or is back later is never out for less; a longer or a shorter-rested day is never milder. */
    @Test
    void longerDuties() {
        for (int i = 0; i < OTHERS; i++) {
            Policies policies = StraddleFactory.eINSTANCE.createPolicies();
            policies.setLongestDutyMinutes(between(60, 1200));
            policies.setLeastRestMinutes(between(60, 1200));
            HoldFigures hold = HoldFigures.of(policies);
            double end = between(700, 1400);
            neverFalls(end - 1, 0, start -> duty(start, end).isTooLong(hold) ? 1 : 0, "an earlier start");
            neverFalls(0, 1440, until -> duty(-1, until).isTooLong(hold) ? 1 : 0, "a later return");
            neverFalls(1200, 60, longest -> duty(0, end).isTooLong(hold(longest, 60)) ? 1 : 0, "a shorter day allowed");
            neverFalls(3000, end, next -> Duty.lackingRest(duty(0, end), duty(next, 3600), hold).toSeconds(), "a shorter rest");
            neverFalls(60, end, late -> Duty.lackingRest(duty(0, late), duty(end + 1, 3600), hold).toSeconds(), "a later return before it");
            neverFalls(0, 1200, rest -> Duty.lackingRest(duty(0, end), duty(end + 300, 3600), hold(600, rest)).toSeconds(), "more rest asked for");
        }
    }

    private static HoldFigures hold(double longestMinutes, double restMinutes) {
        Policies policies = StraddleFactory.eINSTANCE.createPolicies();
        policies.setLongestDutyMinutes(longestMinutes);
        policies.setLeastRestMinutes(restMinutes);
        return HoldFigures.of(policies);
    }

    /** @param from minutes after some midnight */
    private static Duty duty(double from, double until) {
        return new Duty(StraddleFactory.eINSTANCE.createTeam(), StraddleFactory.eINSTANCE.createTeamDay(),
                new Window(MIDNIGHT.plus(seconds(from)), MIDNIGHT.plus(seconds(until))), List.of(), List.of());
    }

    /** With all of a plan: a base farther away, a slower road and an earlier stop never shorten a day or its time at the wheel. */
    @Test
    void wholeDays() {
        for (int i = 0; i < OTHERS / 10; i++) {
            double lengthDeg = between(0.1, 1);
            double kmh = between(30, 90);
            double arrival = between(500, 700);
            assertTrue(wheel(out(lengthDeg, kmh, arrival)) > wheel(out(lengthDeg / 2, kmh, arrival)), "these days have drives");
            neverFalls(0.01, lengthDeg, far -> out(far, kmh, arrival).window().duration().toSeconds(), "a base farther away");
            neverFalls(90, 30, slow -> out(lengthDeg, slow, arrival).window().duration().toSeconds(), "a slower road");
            neverFalls(700, 500, early -> out(lengthDeg, kmh, early).window().duration().toSeconds(), "an earlier stop");
            neverFalls(90, 30, slow -> wheel(out(lengthDeg, slow, arrival)), "at the wheel on a slower road");
            neverFalls(0.01, lengthDeg, far -> wheel(out(far, kmh, arrival)), "at the wheel from farther away");
        }
    }

    private static double wheel(Duty duty) {
        return Wheel.driving(duty.drives(), duty.day()).toSeconds();
    }

    /** One stop until 12:00, there from a base on the equator and back. */
    private static Duty out(double eastDeg, double kmh, double arrivalMinutes) {
        Event event = Fresh.event("Out");
        event.setZone("UTC");
        event.getPolicies().setRoadSpeedKmh(kmh);
        Base base = Fresh.base();
        base.setLatitudeDeg(0.1);
        event.getBases().add(base);
        Site site = Fresh.site();
        site.setLatitudeDeg(0.1);
        site.setLongitudeDeg(eastDeg);
        event.getSites().add(site);
        Instant midnight = Instant.parse("2031-06-20T00:00:00Z");
        TeamDay day = Fresh.teamDay(midnight, midnight.plusSeconds(86_000), base, base);
        Team team = Fresh.team();
        team.getDays().add(day);
        event.getTeams().add(team);
        Stop stop = Fresh.stop(team, site, midnight.plus(seconds(arrivalMinutes)), midnight.plusSeconds(12 * 3600));
        event.getPlan().getStops().add(stop);
        Outlook outlook = Outlook.of(event, null);
        return Duty.of(team, outlook, Itinerary.of(event).of(team), HoldFigures.of(event.getPolicies())).get(0);
    }

    private static Duration seconds(double minutes) {
        return Duration.ofSeconds(Math.round(minutes * 60));
    }

    @Test
    void hotterAndDamperDays() {
        for (double other = 0; other <= 100; other += 1) {
            double humidity = other;
            neverFalls(40, 115, f -> HeatIndex.fahrenheit(f, humidity), "hotter at " + humidity + " %");
            double fahrenheit = 60 + other / 2;
            neverFalls(0, 100, r -> HeatIndex.fahrenheit(fahrenheit, r), "damper at " + fahrenheit + " °F");
            neverFalls(40, 140, f -> HeatLevel.of(f).ordinal(), "a worse level");
        }
    }

    @Test
    void colderAndWindierDays() {
        for (double other = 4; other <= 60; other += 1) {
            double mph = other;
            neverRises(50, -45, f -> WindChill.fahrenheit(f, mph).orElseThrow(), "colder");
            neverRises(3.1, 60, v -> WindChill.fahrenheit(50 - 95 * (mph - 4) / 56, v).orElseThrow(), "windier");
        }
    }

    @Test
    void worseForecasts() {
        for (int i = 0; i < OTHERS; i++) {
            double wind = between(0, 120);
            double gust = between(0, 150);
            double cold = between(-45, 15);
            double warm = between(15, 45);
            double humid = between(0, 100);
            neverFalls(0, 150, w -> WindLevel.of(w, gust).ordinal(), "more wind");
            neverFalls(0, 200, g -> WindLevel.of(wind, g).ordinal(), "stronger gusts");
            neverFalls(15, -45, t -> ColdLevel.of(t, wind).ordinal(), "colder");
            neverFalls(0, 120, w -> ColdLevel.of(cold, w).ordinal(), "more wind in the cold");
            neverFalls(10, 60, t -> hour(t, humid).heat().ordinal(), "hotter, also beyond the chart");
            neverFalls(0, 100, h -> hour(warm, h).heat().ordinal(), "damper");
            neverFalls(0, 100, p -> new WeatherHour(Optional.empty(), warm, humid, 0, 0, p).speaksOfThunder() ? 1 : 0, "likelier thunder");
            assertTrue(WindLevel.of(Double.NaN, gust).compareTo(WindLevel.of(0, gust)) >= 0, "wind that nobody knows is no calm");
        }
    }

    private static WeatherHour hour(double celsius, double humidity) {
        return new WeatherHour(Optional.empty(), celsius, humidity, 0, 0, 0);
    }

    @Test
    void oneMoreBadHourNeverCalmsADay() {
        for (int i = 0; i < OTHERS; i++) {
            Event event = StraddleFactory.eINSTANCE.createEvent();
            Site site = StraddleFactory.eINSTANCE.createSite();
            Forecast forecast = StraddleFactory.eINSTANCE.createForecast();
            forecast.setDay(LocalDate.parse("2031-06-20"));
            event.getForecasts().add(forecast);
            ForecastWarnings before = ForecastWarnings.of(event, site, forecast.getDay(), Optional.empty());
            for (int hour = 0; hour < 6; hour++) {
                ForecastHour next = StraddleFactory.eINSTANCE.createForecastHour();
                next.setAt(Instant.parse("2031-06-20T06:00:00Z").plusSeconds(3600L * hour));
                next.setTemperatureDegC(between(-40, 50));
                next.setHumidityPercent(between(0, 100));
                next.setWindKmh(between(0, 100));
                next.setGustKmh(between(0, 140));
                next.setThunderPercent(between(0, 30));
                forecast.getHours().add(next);
                ForecastWarnings now = ForecastWarnings.of(event, site, forecast.getDay(), Optional.empty());
                assertTrue(now.heat().compareTo(before.heat()) >= 0 && now.cold().compareTo(before.cold()) >= 0
                        && now.wind().compareTo(before.wind()) >= 0 && (now.thunder() || !before.thunder()), before + " became " + now);
                before = now;
            }
        }
    }
}
