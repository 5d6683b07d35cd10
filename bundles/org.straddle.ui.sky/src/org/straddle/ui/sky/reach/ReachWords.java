package org.straddle.ui.sky.reach;

import java.util.List;
import java.util.Optional;

import org.straddle.model.naming.Naming;
import org.straddle.sky.prediction.CommonView;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;
import org.straddle.words.TimeText;

/** What the reach of a pass says in words and figures. */
public final class ReachWords {

    private static final Catalogue TEXTS = Catalogue.of(ReachWords.class);

    public static final List<String> COLUMNS = List.of(TEXTS.text("reachWords.place"), TEXTS.text("reachWords.chasers"), TEXTS.text("reachWords.from"), TEXTS.text("reachWords.until"),
            TEXTS.text("reachWords.lasts"), TEXTS.text("reachWords.best"), TEXTS.text("reachWords.here"),
            TEXTS.text("reachWords.there"), TEXTS.text("reachWords.upMean"), TEXTS.text("reachWords.upEver"));

    private static final String NOTHING = "–";

    private final ReachSheet sheet;

    public ReachWords(ReachSheet sheet) {
        this.sheet = sheet;
    }

    public String title() {
        return TEXTS.text("reachWords.reachFromUtc", "bird", Naming.name(sheet.found().bird()),
                "site", Naming.name(sheet.found().site()),
                "day", DateText.inCurrent().weekday(TimeText.utc().date(sheet.grain().rounded(sheet.found().pass().aos()))),
                "year", TimeText.utc().date(sheet.grain().rounded(sheet.found().pass().aos())).getYear(),
                "utc", sheet.grain().utc(sheet.found().pass().aos()),
                "utc2", sheet.grain().utc(sheet.found().pass().los()));
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
                row.views().isEmpty() ? NOTHING : TEXTS.text("reachWords.lasting", "length", sheet.grain().words(row.lasts()),
                        "parts", row.views().size()),
                best.map(view -> sheet.grain().utc(view.best())).orElse(NOTHING),
                best.map(view -> degrees(view.hereDeg())).orElse(NOTHING),
                best.map(view -> degrees(view.thereDeg())).orElse(NOTHING), percent(row.mean()), percent(row.ever()));
    }

    /** In one sentence. */
    public String summary() {
        ReachRow all = sheet.rows().get(0);
        return TEXTS.text("reachWords.allChasersHave", "mean", percent(all.mean()), "ever", percent(all.ever()),
                "counted", sheet.squares() > 0, "reached", sheet.squaresReached(),
                "squares", sheet.squares(),
                "degrees", degrees(sheet.leastDeg()));
    }

    /** How to read the picture. */
    public static List<String> key() {
        return List.of(TEXTS.text("reachWords.numberHatchPer"), TEXTS.text("reachWords.barWhenBoth"));
    }

    static String percent(double part) {
        return Double.isNaN(part) ? "" : part > 0 && part < 0.005 ? "<1 %" : Math.round(100 * part) + " %";
    }

    private static String degrees(double degrees) {
        return Math.round(degrees) + "°";
    }
}
