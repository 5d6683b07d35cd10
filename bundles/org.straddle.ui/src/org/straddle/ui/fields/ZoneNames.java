package org.straddle.ui.fields;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Supplier;

import org.straddle.words.Catalogue;

/** A time zone by its IANA name, explained by how far it is from UTC when it matters. */
public final class ZoneNames implements Notation<String> {

    private static final Catalogue TEXTS = Catalogue.of(ZoneNames.class);

    private final Supplier<LocalDate> first;
    private final Supplier<LocalDate> last;

    /** @param first the days that matter; either may give null, and without both it is today */
    public ZoneNames(Supplier<LocalDate> first, Supplier<LocalDate> last) {
        this.first = first;
        this.last = last;
    }

    /** Names of places, in the alphabet; what only some systems know, such as SystemV, is left out. */
    public static List<String> known() {
        return ZoneId.getAvailableZoneIds().stream().filter(id -> id.contains("/") && !id.startsWith("SystemV/"))
                .sorted().toList();
    }

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
                    TEXTS.text("zoneNames.example"), unknown);
        }
    }

    @Override
    public String told(String value) {
        try {
            ZoneId zone = ZoneId.of(value);
            LocalDate from = first.get() != null ? first.get() : last.get() != null ? last.get() : LocalDate.now(zone);
            LocalDate until = last.get() != null ? last.get() : from;
            String before = offset(zone, from);
            String after = offset(zone, until);
            return before.equals(after) ? TEXTS.text("zoneNames.one", "offset", before, "day", from)
                    : TEXTS.text("zoneNames.two", "before", before, "first", from, "after", after, "last", until);
        } catch (DateTimeException ofAFile) {
            return TEXTS.text("zoneNames.unknown");
        }
    }

    private static String offset(ZoneId zone, LocalDate day) {
        ZoneOffset offset = day.atTime(LocalTime.NOON).atZone(zone).getOffset();
        return offset.equals(ZoneOffset.UTC) ? TEXTS.text("zoneNames.utc") : "UTC" + offset;
    }

    @Override
    public boolean tells() {
        return true;
    }
}
