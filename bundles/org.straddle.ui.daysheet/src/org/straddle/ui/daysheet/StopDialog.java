package org.straddle.ui.daysheet;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.straddle.daysheet.edit.AddStop;
import org.straddle.daysheet.fits.FreeTime;
import org.straddle.daysheet.fits.StopOpenings;
import org.straddle.daysheet.fits.StopOpenings.StopOpening;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;
import org.straddle.words.TimeText;

/** Offers the sites where a team could stop in its free time. */
final class StopDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(StopDialog.class);

    private static final String[] COLUMNS = {TEXTS.text("stopDialog.site"), TEXTS.text("openingDialog.squaresDemand"), TEXTS.text("stopDialog.from"), TEXTS.text("stopDialog.until"),
            TEXTS.text("stopDialog.passes"), TEXTS.text("stopDialog.adds"), TEXTS.text("stopDialog.whyNot")};

    private final Outlook outlook;
    private final List<Team> teams;
    private final Optional<Instant> at;
    private Combo team;
    private Combo time;
    private Table table;
    private Button withTurns;
    private List<FreeTime> free = List.of();
    private List<StopOpening> openings = List.of();
    private int chosenTeam;
    private Optional<AddStop> answer = Optional.empty();

    /**
     * @param teams at least one
     * @param first the one to begin with
     * @param at    a time for the stop, to begin with
     */
    StopDialog(Shell parent, Outlook outlook, List<Team> teams, Team first, Optional<Instant> at) {
        super(parent, TEXTS.text("stopDialog.addStop"), TEXTS.text("stopDialog.sitesWhereTeam"),
                TEXTS.text("stopDialog.add"), 2);
        this.outlook = outlook;
        this.teams = teams;
        this.at = at;
        chosenTeam = Math.max(0, teams.indexOf(first));
    }

    Optional<AddStop> ask() {
        return open() == Window.OK ? answer : Optional.empty();
    }

    @Override
    protected void fields(Composite body) {
        team = combo(body, TEXTS.text("stopDialog.team"));
        teams.forEach(known -> team.add(Naming.name(known)));
        team.select(chosenTeam);
        team.addListener(SWT.Selection, event -> showTimes());
        time = combo(body, TEXTS.text("stopDialog.freeTimeUtc"));
        time.addListener(SWT.Selection, event -> showSites());
        table = new Table(body, SWT.SINGLE | SWT.BORDER | SWT.FULL_SELECTION);
        table.setHeaderVisible(true);
        OnceSized.show(table);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(SWT.DEFAULT, table.getItemHeight() * 11)
                .applyTo(table);
        for (String name : COLUMNS) {
            new TableColumn(table, SWT.NONE).setText(name);
        }
        table.addListener(SWT.Selection, event -> answered());
        table.addListener(SWT.DefaultSelection, event -> {
            if (complete()) {
                okPressed();
            }
        });
        withTurns = new Button(body, SWT.CHECK);
        withTurns.setText(TEXTS.text("stopDialog.addPassesCan"));
        withTurns.setSelection(true);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(withTurns);
        showTimes();
        table.setFocus();
    }

    private static Combo combo(Composite body, String text) {
        new Label(body, SWT.NONE).setText(text);
        Combo combo = new Combo(body, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        return combo;
    }

    private void showTimes() {
        free = FreeTime.of(outlook, teams.get(team.getSelectionIndex()));
        time.setItems(free.stream().map(StopDialog::words).toArray(String[]::new));
        time.setEnabled(!free.isEmpty());
        time.select(first());
        showSites();
    }

    /** The free time that the wanted one lies in, or the next one after it. */
    private int first() {
        return IntStream.range(0, free.size()).filter(i -> at.filter(free.get(i).window().end()::isAfter).isPresent())
                .findFirst().orElse(0);
    }

    private void showSites() {
        openings = free.isEmpty() ? List.of() : StopOpenings.of(outlook, free.get(time.getSelectionIndex()));
        table.removeAll();
        openings.forEach(this::row);
        for (TableColumn column : table.getColumns()) {
            column.pack();
        }
        if (!openings.isEmpty()) {
            table.select(0);
        }
        setErrorMessage(free.isEmpty() ? TEXTS.text("stopDialog.teamHasFree")
                : openings.isEmpty() ? TEXTS.text("stopDialog.eventHasSites")
                : openings.get(0).fits() ? null
                : TEXTS.text("stopDialog.thereSiteTime"));
        answered();
    }

    private void row(StopOpening opening) {
        TableItem item = new TableItem(table, SWT.NONE);
        item.setText(new String[] {Naming.name(opening.site()), squares(opening.site()),
                opening.window().map(window -> TimeText.zulu(window.start())).orElse(""),
                opening.window().map(window -> TimeText.zulu(window.end())).orElse(""),
                opening.fits() ? String.valueOf(opening.passes()) : "",
                opening.fits() ? FigureText.inCurrent().fixed(1, opening.adds()) : "",
                opening.obstacle().map(obstacle -> obstacle.sentence()).orElse("")});
        if (!opening.fits()) {
            item.setForeground(table.getDisplay().getSystemColor(SWT.COLOR_WIDGET_DISABLED_FOREGROUND));
        }
    }

    private String squares(Site site) {
        return outlook.squares(site).stream().map(square -> square + " " + Math.round(100 * outlook.demand(square)) + " %")
                .collect(Collectors.joining(", "));
    }

    private static String words(FreeTime free) {
        return TEXTS.text("stopDialog.min", "day", TimeText.utc().weekday(free.window().start()),
                "times", TimeText.zulu(free.window().start(), free.window().end()),
                "minutes", free.window().duration().toMinutes(),
                "from", free.from().map(Naming::name).orElse(TEXTS.text("stopDialog.base")),
                "to", free.to().map(Naming::name).orElse(TEXTS.text("stopDialog.base")));
    }

    @Override
    protected boolean complete() {
        int row = table.getSelectionIndex();
        return row >= 0 && openings.get(row).fits();
    }

    @Override
    protected void okPressed() {
        StopOpening opening = openings.get(table.getSelectionIndex());
        FreeTime then = free.get(time.getSelectionIndex());
        answer = Optional.of(AddStop.of(then.team().getId(), opening.site().getId(), opening.window().orElseThrow(),
                withTurns.getSelection() ? StopOpenings.turns(outlook, then, opening).stream().map(turn ->
                        new AddStop.Work(turn.pass().bird().getId(), turn.window())).toList() : List.of()));
        super.okPressed();
    }
}
