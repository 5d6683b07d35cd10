package org.straddle.ui.sky.reach;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.straddle.outlook.things.ThingText;
import org.straddle.sky.CommonView;

/** What the reach of a pass says in words and figures. */
public final class ReachWords {

    public static final List<String> COLUMNS = List.of("Place", "Chasers", "From", "Until", "Lasts", "Best at", "Here",
            "There", "Up, mean", "Up, ever");

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.UK);
    private static final String NOTHING = "–";

    private final ReachSheet sheet;

    public ReachWords(ReachSheet sheet) {
        this.sheet = sheet;
    }

    public String title() {
        return "Reach of " + ThingText.of(sheet.found().bird()) + " from " + ThingText.of(sheet.found().site()) + ", "
                + DAY.format(sheet.grain().rounded(sheet.found().pass().aos()).atOffset(ZoneOffset.UTC)) + " "
                + sheet.grain().utc(sheet.found().pass().aos()) + "–" + sheet.grain().utc(sheet.found().pass().los())
                + " UTC";
    }

    /** One line for each of the {@link #COLUMNS}. */
    public List<List<String>> rows() {
        return sheet.rows().stream().map(this::cells).toList();
    }

    private List<String> cells(ReachRow row) {
        Optional<CommonView> best = row.best();
        return List.of(row.kind() == ReachRow.Kind.SQUARE ? "   " + row.name() : row.name(),
                percent(row.sharePercent() / 100), row.span().map(span -> sheet.grain().utc(span.start())).orElse(NOTHING),
                row.span().map(span -> sheet.grain().utc(span.end())).orElse(NOTHING),
                row.views().isEmpty() ? NOTHING : sheet.grain().words(row.lasts())
                        + (row.views().size() > 1 ? " in " + row.views().size() + " parts" : ""),
                best.map(view -> sheet.grain().utc(view.best())).orElse(NOTHING),
                best.map(view -> degrees(view.hereDeg())).orElse(NOTHING),
                best.map(view -> degrees(view.thereDeg())).orElse(NOTHING), percent(row.mean()), percent(row.ever()));
    }

    /** In one sentence. */
    public String summary() {
        ReachRow all = sheet.rows().get(0);
        return percent(all.mean()) + " of all chasers have the bird up on average over this pass, "
                + percent(all.ever()) + " at some time of it"
                + (sheet.squares() > 0 ? "; " + sheet.squaresReached() + " of " + sheet.squares()
                        + " squares are reached" : "")
                + ". Counted while it stands above the mask here and above " + degrees(sheet.leastDeg())
                + " there; power, noise and hills there are left out.";
    }

    /** How to read the picture. */
    public static List<String> key() {
        return List.of("Number and hatch: per cent of the chasers who have the bird up; for the site and for squares,"
                + " its elevation.", "Bar: when both ends have it. Times are UTC.");
    }

    static String percent(double part) {
        return Double.isNaN(part) ? "" : part > 0 && part < 0.005 ? "<1 %" : Math.round(100 * part) + " %";
    }

    private static String degrees(double degrees) {
        return Math.round(degrees) + "°";
    }
}
