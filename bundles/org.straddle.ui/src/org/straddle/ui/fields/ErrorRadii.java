package org.straddle.ui.fields;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.grid.ErrorRadius;
import org.straddle.words.Catalogue;

/**
 * The error of a position as a radius that holds 95 % of fixes. A bare number is not taken: phones and receivers mean other
 * radii, and read as this one they look better than they are.
 */
public final class ErrorRadii implements Notation<Double> {

    private static final Catalogue TEXTS = Catalogue.of(ErrorRadii.class);

    private static final String ASK = TEXTS.text("errorRadii.kind");

    /** A number, perhaps with its unit, and a word for the kind. */
    private static final Pattern FORM = Pattern.compile("([+-]?[\\d.,]+)\\s*(?:m\\b)?\\s*(.*)");

    private final Numbers metres = Numbers.between(0, 100_000);

    @Override
    public String print(Double value) {
        return value == null ? "" : Numbers.plain(value) + " 95%";
    }

    @Override
    public Double parse(String text) {
        Matcher parts = FORM.matcher(text.strip());
        if (!parts.matches()) {
            throw new IllegalArgumentException(ASK);
        }
        double radius = metres.parse(parts.group(1));
        // A hundredth of a metre up, so that what is shown is never better than what was computed.
        return Math.ceil(kind(parts.group(2)).orElseThrow(() -> new IllegalArgumentException(ASK)).toR95M(radius) * 100 - 1e-6) / 100;
    }

    private static Optional<ErrorRadius> kind(String word) {
        return Optional.ofNullable(switch (word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s()]", "")) {
            case "95%", "r95", "95" -> ErrorRadius.R95;
            case "phone", "68%", "r68", "68" -> ErrorRadius.R68;
            case "cep", "50%", "50" -> ErrorRadius.CEP;
            case "drms", "63%", "63" -> ErrorRadius.DRMS;
            case "2drms", "98%", "98" -> ErrorRadius.TWO_DRMS;
            case "?" -> ErrorRadius.NOT_SAID;
            default -> null;
        });
    }

    @Override
    public String told(Double value) {
        return value == null ? "" : TEXTS.text("errorRadii.told", "radius", Numbers.plain(value));
    }

    @Override
    public boolean tells() {
        return true;
    }
}
