package org.straddle.kit;

import java.util.List;
import java.util.OptionalDouble;

import org.straddle.model.Vehicle;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * What the kit weighs against what the vehicle may carry besides people.
 *
 * @param kitKg weight of all rows that somebody weighed, kg
 * @param notWeighed number of rows without a weight
 * @param allowedKg kg; empty when the vehicle's load is not known
 */
public record Load(double kitKg, int notWeighed, OptionalDouble allowedKg) {

    private static final Catalogue TEXTS = Catalogue.of(Load.class);

    static Load of(List<PackingRow> rows, Vehicle vehicle) {
        double kitKg = rows.stream().mapToDouble(PackingRow::weightKg).sum();
        int notWeighed = (int) rows.stream().filter(row -> row.weightKg() == 0 && row.count() > 0).count();
        double allowedKg = vehicle == null ? 0 : Amount.of(vehicle.getLoadKg());
        return new Load(kitKg, notWeighed, allowedKg > 0 ? OptionalDouble.of(allowedKg) : OptionalDouble.empty());
    }

    /** Is the kit heavier than the vehicle may carry? What nobody weighed counts as nothing. */
    public boolean exceeded() {
        return allowedKg.isPresent() && kitKg > allowedKg.getAsDouble();
    }

    /** One plain sentence. */
    public String sentence() {
        String weighed = TEXTS.text("load.weighed", "kg", FigureText.inCurrent().kilograms(kitKg), "notWeighed", notWeighed);
        if (allowedKg.isEmpty()) {
            return TEXTS.text("load.unknown", "weighed", weighed);
        }
        String allowed = FigureText.inCurrent().kilograms(allowedKg.getAsDouble());
        return exceeded() ? TEXTS.text("load.moreThanVehicle", "weighed", weighed, "allowed", allowed)
                : TEXTS.text("load.vehicleMayCarry", "weighed", weighed, "allowed", allowed);
    }
}
