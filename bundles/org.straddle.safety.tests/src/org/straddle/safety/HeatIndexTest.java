package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeatIndexTest {

    /** US National Weather Service, heat index chart: °F at relative humidity, °F. */
    @ParameterizedTest
    @CsvSource({"90,50,95", "90,70,106", "96,65,121", "100,40,109", "110,40,136", "84,90,98", "86,90,105", "80,40,80"})
    void theChart(double temperatureF, double humidity, double index) {
        assertEquals(index, HeatIndex.fahrenheit(temperatureF, humidity), 0.5);
    }

    /** Where the chart prints another degree than the published equation gives, the equation is followed. */
    @ParameterizedTest
    @CsvSource({"90,45,92.49", "82,95,93.97"})
    void theEquationWhereTheChartDiffers(double temperatureF, double humidity, double index) {
        assertEquals(index, HeatIndex.fahrenheit(temperatureF, humidity), 0.005);
    }

    /** The dry adjustment at 95 °F and 5 %: −(13−5)/4·√(17/17) = −2 on the regression (NOAA WPC). */
    @Test
    void dryAirTakesAwayTwoDegreesAtMost() {
        double damper = HeatIndex.fahrenheit(95, 13);
        double dry = HeatIndex.fahrenheit(95, 5);
        double regression = -42.379 + 2.04901523 * 95 + 10.14333127 * 5 - 0.22475541 * 95 * 5 - 0.00683783 * 95 * 95
                - 0.05481717 * 25 + 0.00122874 * 95 * 95 * 5 + 0.00085282 * 95 * 25 - 0.00000199 * 95 * 95 * 25;
        assertEquals(regression - 2, dry, 1e-9);
        assertTrue(dry < damper);
    }

    /** In mild air the simple formula answers: 0.5·(70 + 61 + 2·1.2 + 50·0.094) = 69.05, averaged with 70. */
    @Test
    void mildAirHasTheSimpleFormula() {
        assertEquals((69.05 + 70) / 2, HeatIndex.fahrenheit(70, 50), 1e-9);
    }

    @Test
    void celsiusIsTheSameScaled() {
        assertEquals((HeatIndex.fahrenheit(95, 50) - 32) / 1.8, HeatIndex.celsius(35, 50), 1e-9);
    }

    @Test
    void refusesWhatIsNoHumidity() {
        assertThrows(IllegalArgumentException.class, () -> HeatIndex.fahrenheit(90, 101));
        assertThrows(IllegalArgumentException.class, () -> HeatIndex.fahrenheit(90, -1));
        assertThrows(IllegalArgumentException.class, () -> HeatIndex.fahrenheit(Double.NaN, 50));
    }

    /** Bounds 80, 90, 103, 125 °F as the National Weather Service's chart is commonly printed. */
    @ParameterizedTest
    @CsvSource({"79.9,NONE", "80,CAUTION", "90,EXTREME_CAUTION", "102.9,EXTREME_CAUTION", "103,DANGER",
            "125,EXTREME_DANGER", "NaN,NONE"})
    void levels(double index, HeatLevel level) {
        assertEquals(level, HeatLevel.of(index));
    }
}
