package org.straddle.kit;

import java.util.List;
import java.util.OptionalDouble;

import org.straddle.model.Vehicle;

/**
 * What the kit weighs against what the vehicle may carry besides people.
 *
 * @param kitKg weight of all rows that somebody weighed, kg
 * @param notWeighed number of rows without a weight
 * @param allowedKg kg; empty when the vehicle's load is not known
 */
public record Load(double kitKg, int notWeighed, OptionalDouble allowedKg) {

    static Load of(List<PackingRow> rows, Vehicle vehicle) {
        double kitKg = rows.stream().mapToDouble(PackingRow::weightKg).sum();
        int notWeighed = (int) rows.stream().filter(row -> row.weightKg() == 0 && row.count() > 0).count();
        double allowedKg = vehicle == null ? 0 : Words.amount(vehicle.getLoadKg());
        return new Load(kitKg, notWeighed, allowedKg > 0 ? OptionalDouble.of(allowedKg) : OptionalDouble.empty());
    }

    /** Is the kit heavier than the vehicle may carry? What nobody weighed counts as nothing. */
    public boolean exceeded() {
        return allowedKg.isPresent() && kitKg > allowedKg.getAsDouble();
    }

    /** One plain sentence. */
    public String sentence() {
        String weighed = Words.kg(kitKg)
                + (notWeighed > 0 ? " without " + Words.counted(notWeighed, "item") + " of unknown weight" : "");
        if (allowedKg.isEmpty()) {
            return weighed + "; the vehicle's load is not known.";
        }
        String allowed = Words.kg(allowedKg.getAsDouble());
        return exceeded() ? weighed + ", more than the " + allowed + " that the vehicle may carry: leave something behind."
                : weighed + " of the " + allowed + " that the vehicle may carry.";
    }
}
