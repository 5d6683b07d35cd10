package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.straddle.model.ExposureLimits;

/**
 * No figure becomes less careful when something becomes worse: nearer, faster, darker, of higher voltage, less well known,
 * hotter, more humid, colder, windier. Every case walks over the whole range of one input for random values of the others.
 */
class CarefulFiguresTest {

    private static final int OTHERS = 200;

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
            assertTrue(now >= before - 1e-9, what + ": " + now + " after " + before + " at " + at);
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
}
