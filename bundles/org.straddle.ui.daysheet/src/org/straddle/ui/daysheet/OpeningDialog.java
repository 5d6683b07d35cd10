package org.straddle.ui.daysheet;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.straddle.daysheet.fits.Openings.Opening;
import org.straddle.model.Stop;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Offers what more can be worked during a stop. */
final class OpeningDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(OpeningDialog.class);

    private static final String[] COLUMNS = {TEXTS.text("openingDialog.bird"), TEXTS.text("openingDialog.from"), TEXTS.text("openingDialog.until"), TEXTS.text("openingDialog.minutes"),
            TEXTS.text("openingDialog.peak"), TEXTS.text("openingDialog.squaresDemand")};

    private final Outlook outlook;
    private final Stop stop;
    private final List<Opening> openings;
    private Table table;
    private int chosen;

    OpeningDialog(Shell parent, Outlook outlook, Stop stop, List<Opening> openings) {
        super(parent, TEXTS.text("openingDialog.addTurn"), TEXTS.text("openingDialog.passesCanWorked",
                "stop", Naming.name(stop)), TEXTS.text("openingDialog.add"), 1);
        this.outlook = outlook;
        this.stop = stop;
        this.openings = openings;
    }

    Optional<Opening> ask() {
        return open() == Window.OK ? Optional.of(openings.get(chosen)) : Optional.empty();
    }

    @Override
    protected void fields(Composite body) {
        table = new Table(body, SWT.SINGLE | SWT.BORDER | SWT.FULL_SELECTION);
        table.setHeaderVisible(true);
        OnceSized.show(table);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, table.getItemHeight() * 9).applyTo(table);
        for (String name : COLUMNS) {
            new TableColumn(table, SWT.NONE).setText(name);
        }
        openings.forEach(this::row);
        for (TableColumn column : table.getColumns()) {
            column.pack();
        }
        table.select(0);
        table.addListener(SWT.Selection, event -> {
            chosen = table.getSelectionIndex();
            answered();
        });
        table.addListener(SWT.DefaultSelection, event -> okPressed());
        table.setFocus();
    }

    @Override
    protected boolean complete() {
        return chosen >= 0;
    }

    private void row(Opening opening) {
        new TableItem(table, SWT.NONE).setText(new String[] {Naming.name(opening.pass().bird()),
                TimeText.utc().seconds(opening.window().start()) + TEXTS.text("openingDialog.zulu"),
                TimeText.utc().seconds(opening.window().end()) + TEXTS.text("openingDialog.zulu"), minutes(opening.window().duration()),
                Math.round(opening.pass().pass().peakElevationDeg()) + "°",
                outlook.squares(stop.getSite()).stream().map(square -> square + " "
                        + Math.round(100 * outlook.demand(square)) + " %").collect(Collectors.joining(", "))});
    }

    /** {@code 9:40}: minutes and seconds. */
    private static String minutes(Duration length) {
        return length.toMinutes() + (length.toSecondsPart() < 10 ? ":0" : ":") + length.toSecondsPart();
    }
}
