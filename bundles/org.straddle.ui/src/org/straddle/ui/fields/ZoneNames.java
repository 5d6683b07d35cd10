package org.straddle.ui.fields;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A time zone by its IANA name. */
public final class ZoneNames implements Notation<String> {

    @Override
    public String print(String value) {
        return value == null ? "" : value;
    }

    @Override
    public String parse(String text) {
        try {
            return text.isBlank() ? null : ZoneId.of(text.strip()).getId();
        } catch (DateTimeException unknown) {
            throw new IllegalArgumentException(
                    "This zone is unknown: enter an IANA name such as Atlantic/Reykjavik or Europe/Oslo.", unknown);
        }
    }

    @Override
    public String told(String value) {
        try {
            ZoneOffset today = ZoneId.of(value).getRules().getOffset(Instant.now());
            return "today " + (today.equals(ZoneOffset.UTC) ? "the same as UTC" : "UTC" + today);
        } catch (DateTimeException ofAFile) {
            return "this zone is unknown";
        }
    }

    @Override
    public boolean tells() {
        return true;
    }
}
