package org.straddle.ui.fields;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;

import org.straddle.words.Catalogue;

/** A calendar day such as {@code 2026-06-20}; may be empty. */
public final class Dates implements Notation<LocalDate> {

    private static final Catalogue TEXTS = Catalogue.of(Dates.class);

    private static final DateTimeFormatter FORM =
            DateTimeFormatter.ofPattern("uuuu-M-d", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    @Override
    public String print(LocalDate value) {
        return value == null ? "" : value.toString();
    }

    @Override
    public LocalDate parse(String text) {
        try {
            return text.isBlank() ? null : LocalDate.parse(text.strip(), FORM);
        } catch (DateTimeException wrong) {
            throw new IllegalArgumentException(text.strip().matches("\\d{4}-\\d{1,2}-\\d{1,2}")
                    ? TEXTS.text("dates.noday", "text", text.strip()) : TEXTS.text("dates.example"), wrong);
        }
    }
}
