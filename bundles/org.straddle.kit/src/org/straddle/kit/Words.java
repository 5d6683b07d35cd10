package org.straddle.kit;

import java.util.Locale;

import org.straddle.model.InertText;
import org.straddle.model.KitItem;
import org.straddle.model.WorkMode;
import org.straddle.words.Catalogue;

/** How this bundle words names and figures that may be missing or odd in a file. */
final class Words {

    private static final Catalogue TEXTS = Catalogue.of(Words.class);

    private Words() {
    }

    static String orElse(String text, String otherwise) {
        return text == null || text.isBlank() ? otherwise : InertText.line(text.strip());
    }

    static String name(KitItem item) {
        return orElse(item.getName(), TEXTS.text("words.unnamedItem"));
    }

    /** The mode within a sentence: FM is an abbreviation, the others are words. */
    static String mode(WorkMode mode) {
        return mode == WorkMode.FM ? "FM" : mode.getLiteral();
    }

    static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Weights, energies and draws are never negative; what a file says otherwise is taken as unknown. */
    static double amount(double value) {
        return Double.isFinite(value) && value > 0 ? value : 0;
    }

    static String kg(double kg) {
        return TEXTS.text("words.kg", "kg", number(kg));
    }

    /** One decimal at most, with a point. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    static String counted(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
