package org.straddle.kit.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.words.Catalogue;

/** Kits to begin with, as tables; what belongs to a station is common practice, no source. */
public enum KitTemplate {
    /** Portable station for single-channel and linear birds, with a spare of what is small. */
    STATION,
    /** One handheld that carries its battery, an antenna in the hand, and what belongs to them. */
    HANDHELD,
    /** For work beside a road, on lines and in the heat. */
    ROADSIDE,
    /** Log, position and time. */
    PROOF;

    private static final Catalogue TEXTS = Catalogue.of(KitTemplate.class);

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it is for, in a line. */
    public String label() {
        return TEXTS.text(this);
    }

    private String csv() {
        try (InputStream in = KitTemplate.class.getResourceAsStream(word() + ".csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public SourceTable table() {
        try {
            return KitFile.read(word() + ".csv", csv().getBytes(StandardCharsets.UTF_8));
        } catch (ReadException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
