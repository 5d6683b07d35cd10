package org.straddle.model;

import java.time.Duration;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.straddle.model.StraddlePackage.Literals;

/**
 * The figures of an event's policies as they are to be used: what was entered, or the usual value where that is out of the
 * range that the model declares, which only a file can bring.
 */
public final class Figures {

    private static final Map<EAttribute, FigureRange> RANGES = Literals.POLICIES.getEAllAttributes().stream()
            .filter(attribute -> FigureRange.of(attribute).isPresent())
            .collect(Collectors.toMap(Function.identity(), attribute -> FigureRange.of(attribute).orElseThrow()));

    private final Policies entered;

    private Figures(Policies entered) {
        this.entered = entered;
    }

    /** @param entered null for the usual ones */
    public static Figures of(Policies entered) {
        return new Figures(entered);
    }

    /** In the unit that the figure's name ends in. */
    public double value(EAttribute figure) {
        double value = entered == null ? Double.NaN : ((Number) entered.eGet(figure)).doubleValue();
        return RANGES.get(figure).holds(value) ? value : ((Number) figure.getDefaultValue()).doubleValue();
    }

    /** Of a figure in per cent: 0 to 1. */
    public double share(EAttribute figure) {
        return value(figure) / 100;
    }

    /** Of a figure in minutes, to the second. */
    public Duration minutes(EAttribute figure) {
        return Duration.ofSeconds(Math.round(60 * value(figure)));
    }

    /** Of a figure in days, to the second. */
    public Duration days(EAttribute figure) {
        return Duration.ofSeconds(Math.round(86_400 * value(figure)));
    }
}
