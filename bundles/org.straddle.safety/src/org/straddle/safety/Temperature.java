package org.straddle.safety;

/** Between the two scales that the published formulas use. */
final class Temperature {

    private Temperature() {
    }

    static double fahrenheit(double celsius) {
        return celsius * 1.8 + 32;
    }

    static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }
}
