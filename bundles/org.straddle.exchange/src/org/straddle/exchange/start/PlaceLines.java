package org.straddle.exchange.start;

import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Locator;
import org.straddle.grid.PositionText;
import org.straddle.model.Base;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.PresenceArgument;
import org.straddle.outlook.things.Claim;
import org.straddle.words.Catalogue;

/** Bases and sites: {@code NAME, POSITION}, the position in any form that people write. */
final class PlaceLines {

    private static final Catalogue TEXTS = Catalogue.of(PlaceLines.class);

    /** A name has no comma, and what follows it may have some. */
    private static final Pattern NAME_FIRST = Pattern.compile("([^,;\\t]{1,200})[,;\\t]\\s*(.+)");
    /** Characters of a locator that are shown: a square and its part. */
    private static final int LOCATOR = 6;

    private PlaceLines() {
    }

    static ReadLines<Base> bases(String text) {
        return ReadLines.of(text, line -> place(line, (name, at) -> {
            Base base = Fresh.base();
            base.setName(name);
            base.setLatitudeDeg(at.latitudeDeg());
            base.setLongitudeDeg(at.longitudeDeg());
            return new ReadLines.Understood<>(base, TEXTS.text("placeLines.base", "name", name, "position", words(at)));
        }));
    }

    /** @param stationSpanM length of a station across a line, metres */
    static ReadLines<Site> sites(String text, double stationSpanM) {
        return ReadLines.of(text, line -> place(line, (name, at) -> {
            Site site = Fresh.site();
            site.setName(name);
            site.setLatitudeDeg(at.latitudeDeg());
            site.setLongitudeDeg(at.longitudeDeg());
            Claim claim = Claim.of(at, site.getMarkErrorM(), stationSpanM);
            site.setKind(claim.kind());
            site.getSquares().addAll(claim.squares());
            return new ReadLines.Understood<>(site, TEXTS.text("placeLines.site", "name", name, "position", words(at),
                    "kind", Naming.of(claim.kind()), "squares", String.join(" + ", claim.squares())));
        }));
    }

    /** The same lines; one whose squares the event would not believe says so, and what would do. */
    static ReadLines<Site> argued(ReadLines<Site> sites, Outlook outlook) {
        return new ReadLines<>(sites.lines().stream().map(line -> line.thing().flatMap(outlook::argument)
                .filter(argument -> !argument.suffices())
                .map(argument -> new ReadLines.Line<>(line.number(), line.text(), line.thing(), TEXTS.text("placeLines.notArgued",
                        "name", line.thing().get().getName(), "kind", Naming.of(line.thing().get().getKind()),
                        "squares", String.join(" + ", line.thing().get().getSquares()), "percent", PresenceArgument.percent(argument.presence().least()),
                        "wanted", PresenceArgument.percent(argument.level()), "possible", argument.spanNeededM().isPresent(),
                        "metres", Math.ceil(10 * argument.spanNeededM().orElse(0)) / 10), true))
                .orElse(line)).toList());
    }

    private static <T> T place(String line, BiFunction<String, GeoPosition, T> made) {
        Matcher parts = NAME_FIRST.matcher(line);
        if (!parts.matches()) {
            throw new IllegalArgumentException(TEXTS.text("placeLines.form"));
        }
        return made.apply(parts.group(1).strip(), PositionText.read(parts.group(2)).position());
    }

    private static String words(GeoPosition at) {
        return TEXTS.text("placeLines.position", "position", PositionText.write(at, PositionText.Form.DEGREES),
                "locator", Locator.of(at, LOCATOR));
    }
}
