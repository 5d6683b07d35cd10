package org.straddle.ui.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.straddle.grid.Square;
import org.straddle.model.Stop;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;
import org.straddle.words.TimeText;
import org.straddle.worth.split.PlanB;
import org.straddle.worth.split.SplitTable;

/** Who holds which square when, how often each is worked in all, and where a team goes if it cannot use the site. */
final class SplitBoard {

    private static final Catalogue TEXTS = Catalogue.of(SplitBoard.class);

    /** A square at one stop; without a stop for a square that somebody needs and nobody works. */
    private record Line(SplitTable.OfSquare all, Optional<SplitTable.Row> at) {

        String at(Function<SplitTable.Row, String> text) {
            return at.map(text).orElse("");
        }
    }

    private final Composite frame;
    private final Label summary;
    private final Rows<Line> rows;

    SplitBoard(Composite parent) {
        frame = new Composite(parent, SWT.NONE);
        frame.setLayout(GridLayoutFactory.fillDefaults().spacing(0, 2).create());
        summary = new Label(frame, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).hint(300, SWT.DEFAULT).applyTo(summary);
        Supplier<TimeText> times = () -> TimeText.of(Outlook.zoneOf(EventSession.current().event()));
        rows = new Rows<Line>(frame, SWT.NONE)
                .column(TEXTS.text("splitBoard.square"), 6, 60, line -> line.all.square().name())
                .column(TEXTS.text("splitBoard.day"), 9, 95, line -> line.at(row -> day(row.day())))
                .column(TEXTS.text("splitBoard.team"), 4, 45, line -> line.at(row -> String.valueOf(row.team().getNumber())))
                .column(TEXTS.text("splitBoard.site"), 14, 130, line -> line.at.map(row -> Naming.name(row.site()))
                        .orElse(TEXTS.text("splitBoard.nobody")))
                .column(TEXTS.text("splitBoard.arrival"), 8, 90, line -> line.at(row -> times.get().clock(row.stay().window().start())))
                .column(TEXTS.text("splitBoard.passes"), 5, 55, line -> line.at(row -> String.valueOf(row.passes())))
                .column(TEXTS.text("splitBoard.all"), 11, 120, line -> TEXTS.text("splitBoard.all.of", "passes", line.all.passes(),
                        "often", line.all.isWorkedTooOften()))
                .column(TEXTS.text("splitBoard.served"), 9, 95, line -> TEXTS.text("splitBoard.served.of",
                        "served", FigureText.inCurrent().fixed(1, line.all.served()),
                        "wanted", FigureText.inCurrent().fixed(0, line.all.wanted())))
                .column(TEXTS.text("splitBoard.planB"), 34, 420, line -> line.at(row -> planB(row.planB())));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(rows.frame());
        rows.viewer().addOpenListener(opening -> ((Line) rows.viewer().getStructuredSelection().getFirstElement()).at
                .map(row -> row.stay().stop()).ifPresent(SplitBoard::open));
    }

    private static void open(Stop stop) {
        EventSession.current().live(stop.getId()).ifPresent(EventSession.current()::reveal);
    }

    private static String day(LocalDate day) {
        return TEXTS.text("splitBoard.day.of", "day", day);
    }

    private static String planB(Optional<PlanB> other) {
        return other.map(found -> TEXTS.text("splitBoard.planB.of", "site", Naming.name(found.site()),
                "minutes", found.drive().toMinutes(), "turns", found.turns().size(),
                "served", FigureText.inCurrent().fixed(1, found.served()))).orElse(TEXTS.text("splitBoard.planB.none"));
    }

    Composite control() {
        return frame;
    }

    void show(SplitTable split) {
        List<Line> lines = new ArrayList<>();
        split.rows().forEach(row -> lines.add(new Line(split.of(row.square()), Optional.of(row))));
        List<SplitTable.OfSquare> open = split.squares().stream().filter(all -> all.passes() == 0).toList();
        open.forEach(all -> lines.add(new Line(all, Optional.empty())));
        rows.viewer().setInput(lines);
        summary.setText(TEXTS.text("splitBoard.summary", "worked", split.squares().size() - open.size(),
                "often", split.squares().stream().filter(SplitTable.OfSquare::isWorkedTooOften).map(SplitTable.OfSquare::square).map(Square::name).toList(),
                "oftenCount", split.squares().stream().filter(SplitTable.OfSquare::isWorkedTooOften).count(),
                "open", open.size(), "names", open.stream().map(SplitTable.OfSquare::square).map(Square::name).toList()));
        frame.layout(true);
    }

    void setFocus() {
        rows.viewer().getTable().setFocus();
    }
}
