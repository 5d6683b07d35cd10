package org.straddle.kit.energy;

import java.util.List;

/**
 * What a day asks.
 *
 * @param charged are all batteries full in the morning? The first day begins with full ones anyhow
 */
public record Day(String name, List<Spell> spells, boolean charged) {

    public Day {
        spells = List.copyOf(spells);
    }
}
