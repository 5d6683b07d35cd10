package org.straddle.ui.fields;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;

/** A calendar day such as {@code 2026-06-20}; may be empty. */
public final class Dates implements Notation<LocalDate> {

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
                    ? "There is no day " + text.strip() + "." : "Enter a day such as 2026-06-20.", wrong);
        }
    }
}
