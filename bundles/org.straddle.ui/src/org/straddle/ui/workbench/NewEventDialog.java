package org.straddle.ui.workbench;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;

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

/** Asks for what an event cannot do without: a name, its days, its zone, and a folder. */
final class NewEventDialog extends QuestionDialog {

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
        super(parent, "New event", "Days are local dates in the event's time zone. All of this can be changed later.",
                "Make event", 3);
    }

    Answer answer() {
        return answer;
    }

    @Override
    protected void fields(Composite body) {
        name = field(body, "&Name:", "", 2);
        firstDay = field(body, "&First day:", LocalDate.now().plusMonths(1).toString(), 2);
        lastDay = field(body, "&Last day:", LocalDate.now().plusMonths(1).plusDays(2).toString(), 2);
        zone = field(body, "Time &zone:", ZoneId.systemDefault().getId(), 2);
        folder = field(body, "Fol&der:", "", 1);
        Button choose = new Button(body, SWT.PUSH);
        choose.setText("&Choose…");
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
        dialog.setText("Folder of the new event");
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
        Event event = Fresh.event(Words.required("Enter the event's name.").parse(name.getText()));
        event.setFirstDay(day("First day", firstDay));
        event.setLastDay(day("Last day", lastDay));
        if (event.getFirstDay() != null && event.getLastDay() != null
                && event.getLastDay().isBefore(event.getFirstDay())) {
            throw new IllegalArgumentException("The last day is before the first.");
        }
        event.setZone(new ZoneNames(event::getFirstDay, event::getLastDay).parse(zone.getText()));
        return new Answer(event, emptyFolder());
    }

    private static LocalDate day(String name, Text field) {
        try {
            return new Dates().parse(field.getText());
        } catch (IllegalArgumentException refused) {
            throw new IllegalArgumentException(name + ": " + refused.getMessage(), refused);
        }
    }

    private Path emptyFolder() {
        if (folder.getText().isBlank()) {
            throw new IllegalArgumentException("Choose or type an empty folder for the event.");
        }
        Path path;
        try {
            path = Path.of(folder.getText().strip());
        } catch (InvalidPathException wrong) {
            throw new IllegalArgumentException("This is no name of a folder.", wrong);
        }
        if (!path.isAbsolute()) {
            throw new IllegalArgumentException("Enter the whole path of the folder.");
        }
        if (!EventDialogs.empty(path)) {
            throw new IllegalArgumentException("This folder is not empty: choose an empty one, or type a new name"
                    + " behind it.");
        }
        return path;
    }
}
