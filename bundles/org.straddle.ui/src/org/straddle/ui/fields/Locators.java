package org.straddle.ui.fields;

import org.straddle.grid.Locator;

/** A Maidenhead locator such as {@code HP94ab}, or nothing. */
public final class Locators implements Notation<String> {

    @Override
    public String print(String value) {
        return value == null ? "" : value;
    }

    @Override
    public String parse(String text) {
        return text.isBlank() ? null : Locator.parse(text.strip()).toString();
    }
}
