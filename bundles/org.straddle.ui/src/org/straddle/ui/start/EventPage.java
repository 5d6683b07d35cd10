package org.straddle.ui.start;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.function.UnaryOperator;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.straddle.ui.fields.Dates;
import org.straddle.ui.fields.Words;
import org.straddle.ui.fields.ZoneNames;
import org.straddle.ui.folder.EventDialogs;
import org.straddle.ui.parts.Completion;
import org.straddle.words.Catalogue;

/** The one step that an event cannot do without: its name and its folder; days and zone are offered. */
final class EventPage extends WizardPage {

    private static final Catalogue TEXTS = Catalogue.of(EventPage.class);

    private final NewEventDraft draft;
    private Text name;
    private Text club;
    private Text firstDay;
    private Text lastDay;
    private Text zone;
    private Label zoneTold;
    private Text folder;
    private String offered = "";
    private boolean touched;

    EventPage(NewEventDraft draft) {
        super("event", TEXTS.text("eventPage.title"), null);
        this.draft = draft;
        setDescription(TEXTS.text("eventPage.description"));
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(3).margins(12, 12).spacing(10, 8).create());
        name = field(body, TEXTS.text("eventPage.name"), draft.name, 2);
        club = field(body, TEXTS.text("eventPage.club"), draft.club, 2);
        firstDay = field(body, TEXTS.text("eventPage.firstDay"), draft.firstDay.toString(), 2);
        lastDay = field(body, TEXTS.text("eventPage.lastDay"), draft.lastDay.toString(), 2);
        zone = field(body, TEXTS.text("eventPage.zone"), draft.zone, 2);
        Completion.on(zone, ZoneNames::known);
        new Label(body, SWT.NONE);
        zoneTold = new Label(body, SWT.NONE);
        zoneTold.setForeground(body.getDisplay().getSystemColor(SWT.COLOR_DARK_GRAY));
        GridDataFactory.fillDefaults().span(2, 1).applyTo(zoneTold);
        folder = field(body, TEXTS.text("eventPage.folder"), "", 1);
        Button choose = new Button(body, SWT.PUSH);
        choose.setText(TEXTS.text("eventPage.choose"));
        choose.addListener(SWT.Selection, click -> choose());
        setControl(body);
        name.setFocus();
        read();
        setErrorMessage(null);
    }

    private Text field(Composite body, String label, String value, int columns) {
        new Label(body, SWT.NONE).setText(label);
        Text text = new Text(body, SWT.BORDER);
        text.setText(value);
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).hint(320, SWT.DEFAULT).applyTo(text);
        text.addModifyListener(change -> {
            if (folder != null && !folder.isDisposed()) {
                touched = true;
                offerFolder(text == name);
                read();
            }
        });
        return text;
    }

    /** The folder is named after the event until the user says otherwise. */
    private void offerFolder(boolean renamed) {
        if (renamed && folder.getText().equals(offered)) {
            offered = name.getText().isBlank() ? "" : EventDialogs.offered(name.getText()).toString();
            folder.setText(offered);
        }
    }

    private void choose() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setText(TEXTS.text("eventPage.choose.title"));
        String chosen = dialog.open();
        if (chosen != null) {
            folder.setText(chosen);
        }
    }

    private void read() {
        try {
            draft.club = club.getText();
            tellZone();
            draft.name = Words.required(TEXTS.text("eventPage.name.required")).parse(name.getText()).strip();
            draft.firstDay = day(firstDay, problem -> TEXTS.text("eventPage.firstDay.wrong", "problem", problem));
            draft.lastDay = day(lastDay, problem -> TEXTS.text("eventPage.lastDay.wrong", "problem", problem));
            if (draft.firstDay != null && draft.lastDay != null && draft.lastDay.isBefore(draft.firstDay)) {
                throw new IllegalArgumentException(TEXTS.text("eventPage.order"));
            }
            draft.zone = zones().parse(zone.getText());
            draft.folder = emptyFolder();
            setErrorMessage(null);
            setPageComplete(true);
        } catch (IllegalArgumentException wrong) {
            setErrorMessage(touched ? wrong.getMessage() : null);
            setPageComplete(false);
        }
    }

    private ZoneNames zones() {
        return new ZoneNames(() -> draft.firstDay, () -> draft.lastDay);
    }

    /** How far the zone is from UTC on the days of the event. */
    private void tellZone() {
        String told = "";
        try {
            String known = zones().parse(zone.getText());
            told = known == null ? "" : zones().told(known);
        } catch (IllegalArgumentException unknown) {
            // the head of the page says so
        }
        zoneTold.setText(told);
        zoneTold.requestLayout();
    }

    private static LocalDate day(Text field, UnaryOperator<String> complaint) {
        try {
            return new Dates().parse(field.getText());
        } catch (IllegalArgumentException refused) {
            throw new IllegalArgumentException(complaint.apply(refused.getMessage()), refused);
        }
    }

    private Path emptyFolder() {
        if (folder.getText().isBlank()) {
            throw new IllegalArgumentException(TEXTS.text("eventPage.folder.required"));
        }
        Path path;
        try {
            path = Path.of(folder.getText().strip());
        } catch (InvalidPathException wrong) {
            throw new IllegalArgumentException(TEXTS.text("eventPage.folder.noname", "name", folder.getText()), wrong);
        }
        if (!path.isAbsolute()) {
            throw new IllegalArgumentException(TEXTS.text("eventPage.folder.relative"));
        }
        if (!EventDialogs.empty(path)) {
            throw new IllegalArgumentException(TEXTS.text("eventPage.folder.notempty"));
        }
        return path;
    }
}
