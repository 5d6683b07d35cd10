package org.straddle.kit;

import java.time.Duration;
import java.util.Optional;

import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * What a kit's batteries give on one day against what the work of that day draws. It reckons with full batteries in the
 * morning, with the part of what they store that the event counts on, and with the cold.
 *
 * <p>What kind a battery is, is not written down, so cold takes what it takes from a lead-acid one, which suffers most
 * of those in use: 10 % at 10 °C and 16 % at 0 °C (manufacturer's FAQ, slow discharge), nothing at 20 °C (from
 * memory). Between these it is interpolated; below 0 °C it goes on at the same rate, for which there is no source.
 *
 * @param energy       what the kit stores and draws
 * @param usable       part of what is stored that may be counted on, above 0, at most 1
 * @param coldestDegC  lowest temperature on the way
 */
public record EnergyBudget(Energy energy, double usable, double coldestDegC) {

    private static final Catalogue TEXTS = Catalogue.of(EnergyBudget.class);

    /** Part of a battery's capacity that the cold leaves, 0 to 1. */
    public static double leftAt(double temperatureDegC) {
        double lostPercent = temperatureDegC >= 20 ? 0
                : temperatureDegC >= 10 ? 20 - temperatureDegC
                        : 16 - 0.6 * temperatureDegC;
        return Math.max(0, 1 - lostPercent / 100);
    }

    /** Whether the kit says both what it stores and what it draws; without that nothing can be told. */
    public boolean isKnown() {
        return energy.storedWh() > 0 && energy.drawW() > 0;
    }

    /** Energy that can be counted on, Wh. */
    public double givesWh() {
        return energy.storedWh() * usable * leftAt(coldestDegC);
    }

    /** Energy that a stretch of work draws, Wh. */
    public double drawsWh(Duration working) {
        return energy.drawW() * working.toSeconds() / 3600.0;
    }

    /** Whether the work draws more than can be counted on; false when nothing is known. */
    public boolean isShortFor(Duration working) {
        return isKnown() && drawsWh(working) > givesWh();
    }

    /** How long work can go on; empty when nothing is known. */
    public Optional<Duration> lasts() {
        return energy.lasts(usable * leftAt(coldestDegC));
    }

    /** {@code 76.8 Wh: 96 Wh stored, 80 % of it counted on}, with what the cold takes. */
    public String sentence() {
        return TEXTS.text("energyBudget.whWhStored", "givesWh", FigureText.inCurrent().atMost(1, givesWh()),
                "storedWh", FigureText.inCurrent().atMost(1, energy.storedWh()), "usable", FigureText.inCurrent().atMost(1, usable * 100),
                "leftAt", leftAt(coldestDegC) < 1 ? TEXTS.text("energyBudget.cold",
                "leftAt", FigureText.inCurrent().atMost(1, 100 * (1 - leftAt(coldestDegC))), "coldestDegC", FigureText.inCurrent().atMost(1, coldestDegC)) : "");
    }
}
