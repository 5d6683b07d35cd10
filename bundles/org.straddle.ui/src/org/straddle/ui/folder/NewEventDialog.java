package org.straddle.ui.folder;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.UnaryOperator;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.ui.fields.Dates;
import org.straddle.ui.fields.Words;
import org.straddle.ui.fields.ZoneNames;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;

/** Asks for what an event cannot do without: a name, its days, its zone, and a folder. */
final class NewEventDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(NewEventDialog.class);

    /** A complete answer. */
    record Answer(Event event, Path folder) {
    }

    private Text name;
    private Text firstDay;
    private Text lastDay;
    private Text zone;
    private Text folder;
    private Answer answer;

    NewEventDialog(Shell parent) {
        super(parent, TEXTS.text("newEventDialog.heading"), TEXTS.text("newEventDialog.explanation"),
                TEXTS.text("newEventDialog.make"), 3);
    }

    Answer answer() {
        return answer;
    }

    @Override
    protected void fields(Composite body) {
        name = field(body, TEXTS.text("newEventDialog.name"), "", 2);
        firstDay = field(body, TEXTS.text("newEventDialog.firstDay"), LocalDate.now().plusMonths(1).toString(), 2);
        lastDay = field(body, TEXTS.text("newEventDialog.lastDay"), LocalDate.now().plusMonths(1).plusDays(2).toString(), 2);
        zone = field(body, TEXTS.text("newEventDialog.zone"), ZoneId.systemDefault().getId(), 2);
        folder = field(body, TEXTS.text("newEventDialog.folder"), "", 1);
        Button choose = new Button(body, SWT.PUSH);
        choose.setText(TEXTS.text("newEventDialog.choose"));
        choose.addListener(SWT.Selection, click -> choose());
        name.setFocus();
    }

    private Text field(Composite body, String label, String value, int columns) {
        new Label(body, SWT.NONE).setText(label);
        Text text = new Text(body, SWT.BORDER);
        text.setText(value);
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).hint(320, SWT.DEFAULT).applyTo(text);
        text.addModifyListener(change -> answered());
        return text;
    }

    private void choose() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setText(TEXTS.text("newEventDialog.choose.title"));
        String chosen = dialog.open();
        if (chosen != null) {
            folder.setText(chosen);
        }
    }

    @Override
    protected boolean complete() {
        try {
            answer = read();
            setErrorMessage(null);
        } catch (IllegalArgumentException wrong) {
            answer = null;
            setErrorMessage(wrong.getMessage());
        }
        return answer != null;
    }

    private Answer read() {
        Event event = Fresh.event(Words.required(TEXTS.text("newEventDialog.name.required")).parse(name.getText()));
        event.setFirstDay(day(firstDay, problem -> TEXTS.text("newEventDialog.firstDay.wrong", "problem", problem)));
        event.setLastDay(day(lastDay, problem -> TEXTS.text("newEventDialog.lastDay.wrong", "problem", problem)));
        if (event.getFirstDay() != null && event.getLastDay() != null
                && event.getLastDay().isBefore(event.getFirstDay())) {
            throw new IllegalArgumentException(TEXTS.text("newEventDialog.order"));
        }
        event.setZone(new ZoneNames(event::getFirstDay, event::getLastDay).parse(zone.getText()));
        return new Answer(event, emptyFolder());
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
            throw new IllegalArgumentException(TEXTS.text("newEventDialog.folder.required"));
        }
        Path path;
        try {
            path = Path.of(folder.getText().strip());
        } catch (InvalidPathException wrong) {
            throw new IllegalArgumentException(TEXTS.text("newEventDialog.folder.noname", "name", folder.getText()), wrong);
        }
        if (!path.isAbsolute()) {
            throw new IllegalArgumentException(TEXTS.text("newEventDialog.folder.relative"));
        }
        if (!EventDialogs.empty(path)) {
            throw new IllegalArgumentException(TEXTS.text("newEventDialog.folder.notempty"));
        }
        return path;
    }
}
