package org.straddle.exchange.maps;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.straddle.grid.MapRole;
import org.straddle.words.Catalogue;

/**
 * What the user says a whole layer is, stored as {@code Layer.role}: roads to scout, other roads, any other
 * {@link MapRole}, a plain map to look at, or nothing, so that each thing on it counts as what it says itself.
 *
 * @param word as it is stored
 */
public record LayerRole(String word) {

    private static final Catalogue TEXTS = Catalogue.of(LayerRole.class);

    /** Each thing counts as what it says itself, or else as what the name of the file says. */
    public static final LayerRole BY_THEMSELVES = new LayerRole("");
    /** Only to be looked at. */
    public static final LayerRole PLAIN = new LayerRole("plain");
    /** Roads that are not scouted; near ones are a way out and a place to park. */
    public static final LayerRole OTHER_ROADS = new LayerRole("other-road");
    /** Roads to scout. */
    public static final LayerRole ROADS = new LayerRole("road");

    /** What a user is offered; any word of one's own will do as well. */
    public static final List<LayerRole> USUAL = List.of(ROADS, OTHER_ROADS, new LayerRole("power-line"), new LayerRole("building"),
            new LayerRole("railway"), new LayerRole("quarry"), PLAIN, BY_THEMSELVES);

    /** @throws IllegalArgumentException with a sentence for the user if the word is no role */
    public LayerRole {
        String plain = word == null ? "" : word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
        word = plain.isEmpty() ? "" : plain.equals("other-roads") ? "other-road" : new MapRole(plain).name();
    }

    /** Of a layer that may hold anything; what is no role counts as none. */
    public static LayerRole stored(String word) {
        try {
            return new LayerRole(word);
        } catch (IllegalArgumentException e) {
            return BY_THEMSELVES;
        }
    }

    /** What everything on the layer is near a place; empty when that is left to each thing, or when it is nothing. */
    public Optional<MapRole> role() {
        return equals(BY_THEMSELVES) || equals(PLAIN) ? Optional.empty()
                : Optional.of(equals(OTHER_ROADS) ? MapRole.ROAD : new MapRole(word));
    }

    /** In words for a list: "roads to scout". */
    public String label() {
        return switch (word) {
            case "" -> TEXTS.text("layerRole.whatEachThing");
            case "plain" -> TEXTS.text("layerRole.plainMap");
            case "road" -> TEXTS.text("layerRole.roadsScout");
            case "other-road" -> TEXTS.text("layerRole.roads");
            case "power-line" -> TEXTS.text("layerRole.powerLines");
            case "building" -> "buildings";
            case "railway" -> "railways";
            case "quarry" -> "quarries";
            default -> word.replace('-', ' ');
        };
    }

    @Override
    public String toString() {
        return word;
    }
}
