package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindChillTest {

    /** US National Weather Service, wind chill chart: °F at mph, °F. */
    @ParameterizedTest
    @CsvSource({"40,5,36", "30,10,21", "0,15,-19", "-20,30,-53", "-45,60,-98"})
    void theChart(double temperatureF, double windMph, double chill) {
        assertEquals(chill, WindChill.fahrenheit(temperatureF, windMph).orElseThrow(), 0.5);
    }

    /** The two published forms agree but for the rounding of their constants. */
    @ParameterizedTest
    @CsvSource({"5,10", "-10,30", "-40,80"})
    void theMetricFormAgrees(double temperatureC, double windKmh) {
        double fahrenheit = WindChill.fahrenheit(temperatureC * 1.8 + 32, windKmh / 1.609344).orElseThrow();
        assertEquals((fahrenheit - 32) / 1.8, WindChill.celsius(temperatureC, windKmh).orElseThrow(), 0.1);
    }

    @Test
    void hasNoAnswerInWarmOrStillAir() {
        assertTrue(WindChill.fahrenheit(50.1, 20).isEmpty());
        assertTrue(WindChill.fahrenheit(20, 3).isEmpty());
        assertTrue(WindChill.celsius(10.1, 20).isEmpty());
        assertTrue(WindChill.celsius(0, 4.8).isEmpty());
        assertTrue(WindChill.celsius(Double.NaN, 20).isEmpty());
    }
}
