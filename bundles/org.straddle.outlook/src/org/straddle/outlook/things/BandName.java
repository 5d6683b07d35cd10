package org.straddle.outlook.things;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** An amateur band by its wavelength, as it is noted: {@code 70cm}. */
public final class BandName {

    private static final Pattern WAVELENGTH = Pattern.compile("\\d{1,4}(\\.\\d{1,2})?(m|cm|mm)");

    private BandName() {
    }

    /** However it is spaced, in small letters or large; empty for what is no wavelength. */
    public static Optional<String> of(String text) {
        String band = text.replaceAll("\\s", "").toLowerCase(Locale.ROOT);
        return WAVELENGTH.matcher(band).matches() ? Optional.of(band) : Optional.empty();
    }
}
