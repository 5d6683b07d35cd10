package org.straddle.ui.importing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.straddle.exchange.chasers.ChaserImport;
import org.straddle.exchange.chasers.ChaserList;
import org.straddle.exchange.sites.SiteChange;
import org.straddle.exchange.weather.ForecastImport;
import org.straddle.model.Forecast;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * One row of the preview: one thing that a line of the file changes.
 *
 * @param line  empty in all rows of a line but the first, and where several lines are taken together
 * @param grade how the row is marked
 */
record PreviewLine(String line, Grade grade, String change, String thing, String field, String was, String now) {

    private static final Catalogue TEXTS = Catalogue.of(PreviewLine.class);

    /** What a row is to the user. */
    enum Grade { NEW, CHANGED, UNCHANGED, REFUSED }

    static List<PreviewLine> of(SiteChange change) {
        String line = String.valueOf(change.line());
        if (change instanceof SiteChange.New added) {
            return details(line, Grade.NEW, TEXTS.text("previewLine.new"), added.name(), added.details());
        }
        if (change instanceof SiteChange.Changed changed) {
            return details(line, Grade.CHANGED, TEXTS.text("previewLine.changed"), changed.name(), changed.details());
        }
        return List.of(change instanceof SiteChange.Refused refused
                ? new PreviewLine(line, Grade.REFUSED, TEXTS.text("previewLine.refused"), refused.name(), "", "", refused.reason())
                : new PreviewLine(line, Grade.UNCHANGED, TEXTS.text("previewLine.unchanged"), change.name(), "", "", ""));
    }

    static List<PreviewLine> of(ChaserImport found, ChaserList list) {
        List<PreviewLine> lines = new ArrayList<>();
        list.refused().forEach(refused -> lines.add(new PreviewLine(String.valueOf(refused.line()), Grade.REFUSED,
                TEXTS.text("previewLine.refused"), "", "", "", refused.why())));
        found.added().forEach(chaser -> lines.add(new PreviewLine("", Grade.NEW, TEXTS.text("previewLine.new"), chaser.getCallSign(),
                TEXTS.text("previewLine.needs"), "", needs(chaser.getLocator(), chaser.getSquares()))));
        found.changed().forEach((chaser, request) -> lines.add(new PreviewLine("", Grade.CHANGED, TEXTS.text("previewLine.changed"),
                chaser.getCallSign(), TEXTS.text("previewLine.needs"), needs(chaser.getLocator(), chaser.getSquares()),
                needs(request.locator(), ChaserImport.squares(chaser, request)))));
        found.known().forEach(request -> lines.add(new PreviewLine("", Grade.UNCHANGED, TEXTS.text("previewLine.unchanged"),
                request.callSign(), "", "", "")));
        return lines;
    }

    static List<PreviewLine> of(ForecastImport found) {
        return found.days().stream().map(day -> {
            Optional<Forecast> old = found.replaced().stream().filter(before -> before.getDay().equals(day.getDay())).findFirst();
            return new PreviewLine("", old.isPresent() ? Grade.CHANGED : Grade.NEW, TEXTS.text(old.isPresent() ? "previewLine.changed" : "previewLine.new"),
                    TEXTS.text("previewLine.day", "day", day.getDay()), TEXTS.text("previewLine.weather"), old.map(PreviewLine::weather).orElse(""),
                    weather(day));
        }).toList();
    }

    private static String weather(Forecast day) {
        return TEXTS.text("previewLine.weather.of", "coldest", figure(day.getColdestDegC()), "warmest", figure(day.getWarmestDegC()),
                "humidity", figure(day.getHumidityPercent()), "wind", figure(day.getWindKmh()), "thunder", day.isThunder() ? "yes" : "no",
                "hours", day.getHours().size());
    }

    private static String figure(Double known) {
        return known == null ? "?" : FigureText.inCurrent().atMost(1, known);
    }

    private static String needs(String locator, Collection<String> squares) {
        return TEXTS.text("previewLine.needs.of", "locator", locator == null ? "" : locator, "squares", String.join(" ", squares));
    }

    private static List<PreviewLine> details(String line, Grade grade, String word, String thing, List<SiteChange.Detail> details) {
        List<PreviewLine> lines = new ArrayList<>();
        for (SiteChange.Detail detail : details) {
            boolean first = lines.isEmpty();
            lines.add(new PreviewLine(first ? line : "", grade, first ? word : "", first ? thing : "", detail.field().word(), detail.was(),
                    detail.now()));
        }
        return lines;
    }
}
