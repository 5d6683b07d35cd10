package org.straddle.kit;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

import org.straddle.model.KitItem;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * How long the kit's own energy lasts: an estimate, not a promise. What is stored is set against
 * the average draw of one piece of everything that is in use; a spare beside what it replaces neither counts
 * nor draws.
 *
 * <p>The chemistry of a battery is not written down, so there are two answers. Of a lead-acid battery half of what it
 * stores is usable, of a lithium iron phosphate one four fifths (from memory). Cold takes more: a lead-acid battery
 * gives 16 % less at 0 °C (manufacturer's FAQ, slow discharge).
 *
 * @param storedWh energy of all full pieces, Wh
 * @param drawW average draw while working, W
 */
public record Energy(double storedWh, double drawW) {

    private static final Catalogue TEXTS = Catalogue.of(Energy.class);

    /** Share of the stored energy that a lead-acid battery gives; from memory. */
    public static final double LEAD_ACID_USABLE = 0.5;

    /** Share of the stored energy that a lithium iron phosphate battery gives, the low end of 0.8 to 0.9; from memory. */
    public static final double LITHIUM_IRON_PHOSPHATE_USABLE = 0.8;

    /** Share of its capacity that is left to a lead-acid battery at 0 °C (manufacturer's FAQ, slow discharge). */
    public static final double LEAD_ACID_LEFT_AT_FREEZING = 0.84;

    static Energy of(List<KitItem> items) {
        List<KitItem> present = items.stream().filter(item -> item.getCount() > 0).toList();
        return new Energy(
                present.stream().filter(item -> !standsBy(item, present))
                        .mapToDouble(item -> item.getCount() * Amount.of(item.getStoresWh())).sum(),
                present.stream().filter(item -> !standsBy(item, present))
                        .mapToDouble(item -> Amount.of(item.getDrawsW())).sum());
    }

    /** A spare rests while what it replaces is there too; in a ring of spares nothing says so, and all count. */
    private static boolean standsBy(KitItem item, List<KitItem> present) {
        return present.contains(item.getSpareFor())
                && SpareLoop.in(List.of(item)).stream().noneMatch(loop -> loop.items().contains(item));
    }

    /**
     * How long the work can last.
     *
     * @param usable share of the stored energy that can be drawn, 0 to 1
     * @return empty when nothing is stored or nothing draws, so that no duration can be given
     */
    public Optional<Duration> lasts(double usable) {
        if (!(storedWh > 0) || !(drawW > 0)) {
            return Optional.empty();
        }
        return Optional.of(Duration.ofSeconds(Math.round(storedWh * usable / drawW * 3600)));
    }

    /** One plain sentence that names its assumptions. */
    public String sentence() {
        if (!(storedWh > 0)) {
            return TEXTS.text("energy.energyNothingKit");
        }
        if (!(drawW > 0)) {
            return TEXTS.text("energy.energyWhStored", "storedWh", FigureText.inCurrent().atMost(1, storedWh));
        }
        return TEXTS.text("energy.energyEstimateWh", "storedWh", FigureText.inCurrent().atMost(1, storedWh), "drawW", FigureText.inCurrent().atMost(1, drawW),
                "hours", hours(LEAD_ACID_USABLE), "hours2", hours(LITHIUM_IRON_PHOSPHATE_USABLE));
    }

    private String hours(double usable) {
        return FigureText.inCurrent().atMost(1, lasts(usable).orElseThrow().toSeconds() / 3600.0);
    }
}
