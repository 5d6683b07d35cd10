package org.straddle.safety;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * What is known of the voltage of overhead wires, and how near anything may come to them by it. Only a voltage that
 * the owner named opens the smaller figures of the table.
 *
 * @param kilovolts voltage, above 0; of no account when it is not known
 */
public record WireVoltage(Source source, double kilovolts) {

    private static final Catalogue TEXTS = Catalogue.of(WireVoltage.class);

    /** Where the voltage comes from. */
    public enum Source {
        /** The owner of the wires named it. */
        OWNER,
        /** Somebody guessed it by the look of poles and insulators. */
        GUESS,
        /** Nobody knows. */
        NOBODY
    }

    /** Metres in an international foot. */
    static final double M_PER_FT = 0.3048;

    /** Highest voltage in kV to least approach in ft (29 CFR 1926.1408, table A). */
    private static final TreeMap<Double, Double> TABLE_FT = new TreeMap<>(
            Map.of(50.0, 10.0, 200.0, 15.0, 350.0, 20.0, 500.0, 25.0, 750.0, 35.0, 1000.0, 45.0));

    /** Up to this voltage in kV, wires whose voltage the owner did not name keep 20 ft (29 CFR 1926.1408(a)(2)(ii)). */
    private static final double LOWER_KV = 350;
    private static final double LOWER_FT = 20;

    /** Above that, and up to this voltage in kV, they keep 50 ft (29 CFR 1926.1409(a)). */
    private static final double UPPER_KV = 1000;
    private static final double UPPER_FT = 50;

    public WireVoltage {
        if (source != Source.NOBODY && !(kilovolts > 0 && Double.isFinite(kilovolts))) {
            throw new IllegalArgumentException("A voltage is above 0 kV, not " + kilovolts + ".");
        }
    }

    public static WireVoltage fromOwner(double kilovolts) {
        return new WireVoltage(Source.OWNER, kilovolts);
    }

    public static WireVoltage guessed(double kilovolts) {
        return new WireVoltage(Source.GUESS, kilovolts);
    }

    public static WireVoltage unknown() {
        return new WireVoltage(Source.NOBODY, 0);
    }

    /** As a visit wrote it down; what is no voltage is not known. */
    static WireVoltage of(org.straddle.model.OverheadLine wires) {
        double kilovolts = wires.getVoltageKv();
        if (!(kilovolts > 0 && Double.isFinite(kilovolts))) {
            return unknown();
        }
        return wires.isVoltageFromOwner() ? fromOwner(kilovolts) : guessed(kilovolts);
    }

    /**
     * How near anything may come.
     *
     * @return feet; empty above 1000 kV, where only the owner says it
     */
    public OptionalDouble approachFt() {
        return switch (source) {
            case OWNER -> {
                Map.Entry<Double, Double> row = TABLE_FT.ceilingEntry(kilovolts);
                yield row == null ? OptionalDouble.empty() : OptionalDouble.of(row.getValue());
            }
            case GUESS -> kilovolts > UPPER_KV ? OptionalDouble.empty()
                    : OptionalDouble.of(kilovolts > LOWER_KV ? UPPER_FT : LOWER_FT);
            // They may be of any voltage, so the largest figure counts.
            case NOBODY -> OptionalDouble.of(UPPER_FT);
        };
    }

    /** The same in metres. */
    public OptionalDouble approachM() {
        OptionalDouble feet = approachFt();
        return feet.isEmpty() ? feet : OptionalDouble.of(feet.getAsDouble() * M_PER_FT);
    }

    /** The paragraph behind the figure. */
    String rule() {
        return switch (source) {
            case OWNER -> TEXTS.text("wireVoltage.cfrTable");
            case GUESS -> kilovolts > LOWER_KV ? TEXTS.text("wireVoltage.cfr") : TEXTS.text("wireVoltage.cfrVoltageNot");
            case NOBODY -> TEXTS.text("wireVoltage.cfrUnknown");
        };
    }

    /** Such as "132 kV, says the owner". */
    String words() {
        return switch (source) {
            case OWNER -> TEXTS.text("wireVoltage.kvSaysOwner", "kilovolts", FigureText.inCurrent().atMost(1, kilovolts));
            case GUESS -> TEXTS.text("wireVoltage.perhapsKvGuess", "kilovolts", FigureText.inCurrent().atMost(1, kilovolts));
            case NOBODY -> TEXTS.text("hazardNote.voltageNotKnown");
        };
    }
}
