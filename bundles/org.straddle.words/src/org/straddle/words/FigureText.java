package org.straddle.words;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;

/** Figures with their units, for people. */
public final class FigureText {

    private static final FigureText CURRENT = new FigureText(Language.current());

    private final Language language;
    private final Catalogue texts;

    private FigureText(Language language) {
        this.language = language;
        this.texts = Catalogue.of(FigureText.class).in(language);
    }

    /** In the language chosen at the start. */
    public static FigureText inCurrent() {
        return CURRENT;
    }

    public static FigureText in(Language language) {
        return new FigureText(language);
    }

    /** With at most so many decimals, without zeros at the end, without grouping. */
    public String atMost(int decimals, double value) {
        return format("0" + (decimals > 0 ? "." + "#".repeat(decimals) : ""), value);
    }

    /** With so many decimals, without grouping. */
    public String fixed(int decimals, double value) {
        return format("0" + (decimals > 0 ? "." + "0".repeat(decimals) : ""), value);
    }

    private String format(String form, double value) {
        DecimalFormat format = new DecimalFormat(form, DecimalFormatSymbols.getInstance(language.locale()));
        format.setRoundingMode(RoundingMode.HALF_UP);
        String text = format.format(value);
        // No reader asks which side of nothing it is.
        return text.matches("-0(\\D0*)?") ? text.substring(1) : text;
    }

    /** {@code 12.4 m} below a kilometre, {@code 1.25 km} below ten, else {@code 12.5 km}. */
    public String distance(double metres) {
        return metres < 1000 ? texts.text("figure.metres", "metres", fixed(1, metres))
                : texts.text("figure.kilometres", "kilometres", fixed(metres < 10_000 ? 2 : 1, metres / 1000));
    }

    /** {@code 145.9 MHz}: to the hertz at most, without zeros at the end. */
    public String megahertz(double mhz) {
        return texts.text("figure.megahertz", "megahertz", atMost(6, mhz));
    }

    /** {@code 3.5 kg}. */
    public String kilograms(double kg) {
        return texts.text("figure.kilograms", "kilograms", atMost(1, kg));
    }

    /** {@code 12°}. */
    public String degrees(double degrees) {
        return texts.text("figure.degrees", "degrees", atMost(0, degrees));
    }

    /** {@code 018°}: an azimuth, in three digits as on a compass. */
    public String azimuth(double degrees) {
        return texts.text("figure.degrees", "degrees", format("000", Math.round(degrees) % 360));
    }

    /** {@code 40 %} of a share from 0 to 1. */
    public String percent(double share) {
        return texts.text("figure.percent", "percent", atMost(0, 100 * share));
    }
}
