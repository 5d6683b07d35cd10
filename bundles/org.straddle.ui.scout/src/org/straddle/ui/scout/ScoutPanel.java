package org.straddle.ui.scout;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;
import org.straddle.exchange.maps.ScoutRegion;
import org.straddle.grid.ScoutReach;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.words.Catalogue;

/** What is asked for, in a line, and the places under it. */
final class ScoutPanel {

    private static final Catalogue TEXTS = Catalogue.of(ScoutPanel.class);

    private static final int COLUMNS = 9;

    private final Spinner span;
    private final Spinner corner;
    private final Text region;
    private final Button find;
    private final Label status;
    private EmptyOr<PlaceTable> places;
    private Label note;

    ScoutPanel(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(COLUMNS).extendedMargins(6, 8, 3, 2).spacing(8, 3).create());
        new Label(body, SWT.NONE).setText(TEXTS.text("scoutPanel.stationM"));
        span = spinner(body, 1, (int) ScoutReach.LONGEST_SPAN_M, 10);
        span.setToolTipText(TEXTS.text("scoutPanel.longestDistanceBetween"));
        new Label(body, SWT.NONE).setText(TEXTS.text("scoutPanel.cornersWithinM"));
        corner = spinner(body, 0, (int) ScoutReach.FARTHEST_CORNER_M, 500);
        corner.setToolTipText(TEXTS.text("scoutPanel.howFarFrom"));
        new Label(body, SWT.NONE).setText(TEXTS.text("scoutPanel.only"));
        region = new Text(body, SWT.BORDER);
        region.setMessage(TEXTS.text("scoutPanel.hpIp"));
        region.setToolTipText(TEXTS.text("scoutPanel.squaresFieldsParted"));
        GridDataFactory.fillDefaults().hint(110, SWT.DEFAULT).applyTo(region);
        find = new Button(body, SWT.PUSH);
        find.setText(TEXTS.text("scoutPanel.findPlaces"));
        status = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).span(2, 1).applyTo(status);
    }

    private static Spinner spinner(Composite body, int least, int most, int value) {
        Spinner spinner = new Spinner(body, SWT.BORDER);
        spinner.setValues(value, least, most, 0, 1, 10);
        return spinner;
    }

    void places(EmptyOr<PlaceTable> list) {
        places = list;
        GridDataFactory.fillDefaults().grab(true, true).span(COLUMNS, 1).applyTo(list.control());
        note = new Label(body(), SWT.WRAP);
        note.setForeground(note.getDisplay().getSystemColor(SWT.COLOR_WIDGET_DISABLED_FOREGROUND));
        GridDataFactory.fillDefaults().grab(true, false).hint(400, SWT.DEFAULT).span(COLUMNS, 1).exclude(true).applyTo(note);
    }

    Composite body() {
        return find.getParent();
    }

    EmptyOr<PlaceTable> places() {
        return places;
    }

    Button find() {
        return find;
    }

    Text region() {
        return region;
    }

    void span(double metres) {
        span.setSelection((int) Math.round(metres));
    }

    /** @throws IllegalArgumentException with a sentence for the user if the squares are none */
    ScoutRegion wantedRegion() {
        return ScoutRegion.parse(region.getText());
    }

    ScoutReach reach() {
        return new ScoutReach(span.getSelection(), corner.getSelection());
    }

    /** A line under the list; none for an empty one. */
    void note(String words) {
        note.setText(words);
        note.setToolTipText(words);
        ((GridData) note.getLayoutData()).exclude = words.isEmpty();
        note.setVisible(!words.isEmpty());
        body().layout();
    }

    void tell(String words) {
        status.setText(words);
        status.setToolTipText(words);
        status.requestLayout();
    }
}
