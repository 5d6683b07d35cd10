package org.straddle.atlas.picture;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Which parts of a map are shown.
 *
 * @param hidden parts that are not
 * @param hiddenLayers names of the user's layers that are not
 * @param day whose drives are shown; empty for all days
 */
public record Shown(Set<Part> hidden, Set<String> hiddenLayers, Optional<LocalDate> day) {

    public static final Shown EVERYTHING = new Shown(Set.of(), Set.of(), Optional.empty());

    public Shown {
        hidden = Set.copyOf(hidden);
        hiddenLayers = Set.copyOf(hiddenLayers);
    }

    public boolean shows(Part part) {
        return !hidden.contains(part);
    }

    public boolean showsLayer(String name) {
        return !hiddenLayers.contains(name);
    }

    public Shown with(Part part, boolean shown) {
        Set<Part> others = hidden.isEmpty() ? EnumSet.noneOf(Part.class) : EnumSet.copyOf(hidden);
        if (shown) {
            others.remove(part);
        } else {
            others.add(part);
        }
        return new Shown(others, hiddenLayers, day);
    }

    public Shown withLayer(String name, boolean shown) {
        Set<String> others = new HashSet<>(hiddenLayers);
        if (shown) {
            others.remove(name);
        } else {
            others.add(name);
        }
        return new Shown(hidden, others, day);
    }

    public Shown on(Optional<LocalDate> onlyDay) {
        return new Shown(hidden, hiddenLayers, onlyDay);
    }
}
