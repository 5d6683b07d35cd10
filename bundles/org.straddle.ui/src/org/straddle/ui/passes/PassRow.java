package org.straddle.ui.passes;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.eclipse.core.runtime.IAdaptable;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.SitePass;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;
import org.straddle.words.TimeText;

/** One pass over one site, and which team works it. Views that follow the selection adapt it to the pass. */
record PassRow(SitePass found, ZoneId zone, String workedBy) implements IAdaptable {

    private static final Catalogue TEXTS = Catalogue.of(PassRow.class);

    private static final TimeText UTC = TimeText.utc();

    @Override
    public <A> A getAdapter(Class<A> wanted) {
        return wanted == SitePass.class ? wanted.cast(found) : null;
    }

    /** How a pass is told in one column, and by what it is sorted there. */
    record Column(String title, int width, boolean number, Function<PassRow, String> text,
            Function<PassRow, Comparable<?>> order) {
    }

    static final List<Column> COLUMNS = List.of(
            text(TEXTS.text("passRow.site"), 170, row -> Naming.name(row.found.site())),
            text(TEXTS.text("passRow.bird"), 150, row -> Naming.name(row.found.bird())),
            new Column(TEXTS.text("passRow.day"), 95, false, row -> UTC.weekday(row.found.pass().aos()),
                    row -> row.found.pass().aos()),
            new Column(TEXTS.text("passRow.aos"), 90, true, row -> mark(row.found.pass().startsBefore(), "<")
                    + UTC.seconds(row.found.pass().aos()), row -> row.found.pass().aos()),
            new Column(TEXTS.text("passRow.tca"), 90, true, row -> mark(row.peaksBefore(), "<")
                    + UTC.seconds(row.found.pass().tca()) + mark(row.peaksAfter(), ">"), row -> row.found.pass().tca()),
            new Column(TEXTS.text("passRow.los"), 90, true, row -> UTC.seconds(row.found.pass().los())
                    + mark(row.found.pass().endsAfter(), ">"), row -> row.found.pass().los()),
            new Column(TEXTS.text("passRow.aosLocal"), 130, true, row -> local(row.found.pass().aos(), row.zone),
                    row -> row.found.pass().aos()),
            new Column(TEXTS.text("passRow.losLocal"), 130, true, row -> local(row.found.pass().los(), row.zone),
                    row -> row.found.pass().los()),
            new Column(TEXTS.text("passRow.minutes"), 75, true, row -> minutes(row.duration()), PassRow::duration),
            new Column(TEXTS.text("passRow.peak"), 60, true, row -> mark(row.peaksBefore() || row.peaksAfter(), "≥")
                    + FigureText.inCurrent().degrees(row.found.pass().peakElevationDeg()),
                    row -> row.found.pass().peakElevationDeg()),
            degrees(TEXTS.text("passRow.aosAzimuth"), row -> row.found.pass().aosAzimuthDeg()),
            degrees(TEXTS.text("passRow.tcaAzimuth"), row -> row.found.pass().tcaAzimuthDeg()),
            degrees(TEXTS.text("passRow.losAzimuth"), row -> row.found.pass().losAzimuthDeg()),
            text(TEXTS.text("passRow.workedBy"), 130, PassRow::workedBy));

    /** The same for the same pass after every recomputation. */
    String id() {
        return found.site().getId() + found.bird().getId() + found.pass().tca().getEpochSecond() / 60;
    }

    Duration duration() {
        return found.pass().duration();
    }

    /** Whether the span of the event cuts off the highest point. */
    private boolean peaksBefore() {
        return found.pass().startsBefore() && found.pass().tca().equals(found.pass().aos());
    }

    private boolean peaksAfter() {
        return found.pass().endsAfter() && found.pass().tca().equals(found.pass().los());
    }

    private static Column text(String title, int width, Function<PassRow, String> text) {
        return new Column(title, width, false, text, row -> text.apply(row).toLowerCase(Locale.ROOT));
    }

    private static Column degrees(String title, Function<PassRow, Double> degrees) {
        return new Column(title, title.length() > 5 ? 95 : 60, true,
                row -> FigureText.inCurrent().degrees(degrees.apply(row)), degrees::apply);
    }

    private static String local(Instant instant, ZoneId zone) {
        TimeText times = TimeText.of(zone);
        return TEXTS.text("passRow.local", "day", times.weekday(instant), "time", times.clock(instant));
    }

    private static String minutes(Duration length) {
        return TEXTS.text("passRow.length", "minutes", length.toMinutes(), "seconds", length.toSecondsPart());
    }

    private static String mark(boolean cut, String mark) {
        return cut ? mark : "";
    }
}
