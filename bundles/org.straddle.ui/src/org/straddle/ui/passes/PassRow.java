package org.straddle.ui.passes;

import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.eclipse.core.runtime.IAdaptable;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.things.ThingText;
import org.straddle.outlook.things.Times;

/** One pass over one site, and which team works it. Views that follow the selection adapt it to the pass. */
record PassRow(SitePass found, ZoneId zone, String workedBy) implements IAdaptable {

    @Override
    public <A> A getAdapter(Class<A> wanted) {
        return wanted == SitePass.class ? wanted.cast(found) : null;
    }

    /** How a pass is told in one column, and by what it is sorted there. */
    record Column(String title, int width, boolean number, Function<PassRow, String> text,
            Function<PassRow, Comparable<?>> order) {
    }

    static final List<Column> COLUMNS = List.of(
            text("Site", 170, row -> ThingText.of(row.found.site())),
            text("Bird", 150, row -> ThingText.of(row.found.bird())),
            new Column("Day (UTC)", 95, false, row -> Times.utcDay(row.found.pass().aos()),
                    row -> row.found.pass().aos()),
            new Column("AOS (UTC)", 90, true, row -> mark(row.found.pass().startsBefore(), "<")
                    + Times.utcSeconds(row.found.pass().aos()), row -> row.found.pass().aos()),
            new Column("TCA (UTC)", 90, true, row -> mark(row.peaksBefore(), "<") + Times.utcSeconds(row.found.pass().tca())
                    + mark(row.peaksAfter(), ">"), row -> row.found.pass().tca()),
            new Column("LOS (UTC)", 90, true, row -> Times.utcSeconds(row.found.pass().los())
                    + mark(row.found.pass().endsAfter(), ">"), row -> row.found.pass().los()),
            new Column("AOS local", 130, true, row -> Times.local(row.found.pass().aos(), row.zone),
                    row -> row.found.pass().aos()),
            new Column("LOS local", 130, true, row -> Times.local(row.found.pass().los(), row.zone),
                    row -> row.found.pass().los()),
            new Column("Minutes", 75, true, row -> Times.minutes(row.duration()), PassRow::duration),
            new Column("Peak", 60, true, row -> mark(row.peaksBefore() || row.peaksAfter(), "≥")
                    + String.format(Locale.ROOT, "%.0f°", row.found.pass().peakElevationDeg()),
                    row -> row.found.pass().peakElevationDeg()),
            degrees("AOS azimuth", row -> row.found.pass().aosAzimuthDeg()),
            degrees("TCA azimuth", row -> row.found.pass().tcaAzimuthDeg()),
            degrees("LOS azimuth", row -> row.found.pass().losAzimuthDeg()),
            text("Worked by", 130, PassRow::workedBy));

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
                row -> String.format(Locale.ROOT, "%.0f°", degrees.apply(row)), degrees::apply);
    }

    private static String mark(boolean cut, String mark) {
        return cut ? mark : "";
    }
}
