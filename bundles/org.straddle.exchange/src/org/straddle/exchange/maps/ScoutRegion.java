package org.straddle.exchange.maps;

import java.util.ArrayList;
import java.util.List;

import org.straddle.grid.Candidate;
import org.straddle.grid.Locator;
import org.straddle.words.Catalogue;

/**
 * Where places are of interest: where one of the squares that meet lies in one of these.
 *
 * @param areas fields and squares (locators of 2 or 4 characters); none means everywhere
 */
public record ScoutRegion(List<Locator> areas) {

    private static final Catalogue TEXTS = Catalogue.of(ScoutRegion.class);

    public static final ScoutRegion EVERYWHERE = new ScoutRegion(List.of());

    public ScoutRegion {
        areas = List.copyOf(areas);
    }

    /**
     * Reads fields and squares parted by blanks or commas; an empty text means everywhere.
     *
     * @throws IllegalArgumentException with a sentence for the user naming the part that is neither
     */
    public static ScoutRegion parse(String text) {
        List<Locator> areas = new ArrayList<>();
        for (String word : text.strip().split("[\\s,;/]+")) {
            if (word.isEmpty()) {
                continue;
            }
            Locator area = Locator.parse(word);
            if (area.text().length() > 4) {
                throw new IllegalArgumentException(TEXTS.text("scoutRegion.small", "text", word));
            }
            areas.add(area);
        }
        return new ScoutRegion(areas);
    }

    public boolean holds(Candidate candidate) {
        return areas.isEmpty() || candidate.squares().stream().anyMatch(square -> areas.stream().anyMatch(area -> square.name().startsWith(area.text())));
    }
}
