package org.straddle.exchange.formats;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What somebody brings a file in for. */
public enum Purpose {

    /** Read by {@link org.straddle.exchange.elements.ElementSetReader}. */
    ELEMENTS,
    /** Read by {@link org.straddle.exchange.elements.OrientationFile}. */
    ORIENTATION,
    /** Read by {@link org.straddle.exchange.sites.SourceTable}. */
    SITES,
    /** Read by {@link org.straddle.exchange.maps.MapReader}. */
    LAYER,
    /** Read by {@link org.straddle.exchange.fixes.FixReader}. */
    FIXES;

    /** In the order in which they are tried. */
    public List<FileFormat> formats() {
        return Stream.of(FileFormat.values()).filter(format -> format.purposes().contains(this)).toList();
    }

    /** {@code CSV, GPX, GeoJSON}: what the formats are called, each name once. */
    public String names() {
        return formats().stream().map(FileFormat::label).distinct().collect(Collectors.joining(", "));
    }

    /** {@code *.gpx;*.GPX}: how such files are usually named, as dialogs for files want it. */
    public String patterns() {
        return formats().stream().flatMap(format -> format.endings().stream()).distinct()
                .flatMap(ending -> Stream.of("*." + ending, "*." + ending.toUpperCase(Locale.ROOT)))
                .collect(Collectors.joining(";"));
    }
}
