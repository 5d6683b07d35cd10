package org.straddle.kit.asked;

import java.util.List;

import org.straddle.model.SafetyUse;
import org.straddle.words.Catalogue;

/**
 * Something that the plan asks a team to take along.
 *
 * @param amount    pieces; metres of tape; litres of water
 * @param vestClass least class of vests by ISO 20471; 0 for all other things
 * @param because   one sentence for each reason, at least one
 * @param facts     what the reasons rest on, whatever things are called
 */
public record Asked(SafetyUse use, double amount, int vestClass, List<String> because, List<Object> facts) {

    private static final Catalogue TEXTS = Catalogue.of(Asked.class);

    public Asked {
        because = List.copyOf(because);
        facts = List.copyOf(facts);
    }

    /** {@code 3 vests of class 3}. */
    public String title() {
        return TEXTS.text("asked.title", "use", use.name(), "amount", amount, "class", vestClass);
    }
}
