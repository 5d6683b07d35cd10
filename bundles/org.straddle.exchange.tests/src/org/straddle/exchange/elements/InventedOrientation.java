package org.straddle.exchange.elements;

import java.time.LocalDate;
import java.util.Locale;

/** Invented values in the columns that the IERS describes in readme.finals2000A and in the heads of its C04 files. */
public final class InventedOrientation {

    private InventedOrientation() {
    }

    private static String rows(String format, boolean twoDigits) {
        StringBuilder rows = new StringBuilder();
        for (int day = 0; day < 40; day++) {
            LocalDate date = LocalDate.of(2031, 6, 1).plusDays(day);
            // Modified Julian day 40587 is 1970-01-01.
            rows.append(String.format(Locale.ROOT, format, twoDigits ? date.getYear() % 100 : date.getYear(),
                    date.getMonthValue(), date.getDayOfMonth(), 40_587 + date.toEpochDay()));
        }
        return rows.toString();
    }

    /** In the columns of finals2000A. */
    public static String finals() {
        return rows("%2d%2d%2d %5d.00 I  0.100000 0.000031  0.300000 0.000025  I 0.0200000 0.0000042"
                + "  1.3154 0.0035  I    -0.094    0.119    -0.077    0.029\n", true);
    }

    /** In those of eopc04 up to 2019. */
    public static String c04() {
        return "      Date      MJD      x          y        UT1-UTC       LOD         dX        dY  and errors\n\n"
                + rows("%4d%4d%4d%7d   0.100000   0.300000   0.0200000   0.0013154   0.000010   0.000020   0.000031"
                        + "   0.000025  0.0000042  0.0000035    0.000119    0.000029\n", false);
    }

    /** With the hour, as in the series of 2020. */
    public static String newerC04() {
        return "# EOP (IERS) 20 C04 TIME SERIES  consistent with ITRF 2020 - sampled at 0h UTC\n"
                + "# YR  MM  DD  HH       MJD        x(\")        y(\")  UT1-UTC(s)       dX(\")      dY(\")       xrt(\")"
                + "      yrt(\")      LOD(s)        x Er        y Er  UT1-UTC Er      dX Er       dY Er       xrt Er"
                + "      yrt Er      LOD Er\n"
                + rows("%4d%4d%4d   0%7d.00    0.100000    0.300000   0.0200000    0.000010    0.000020    0.000000"
                        + "    0.000000   0.0013154    0.000031    0.000025   0.0000042    0.000119    0.000029"
                        + "    0.000000    0.000000   0.0000035\n", false);
    }
}
