package org.straddle.ui.safety.calls;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.check.gate.CallEntry;
import org.straddle.model.Event;
import org.straddle.model.naming.Naming;
import org.straddle.safety.CallLog;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;

/** Asks who called, when, who took the call, and what was said. */
final class CallDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(CallDialog.class);

    private static final int WIDE_PX = 360;

    private static String lastTaker = "";

    private final Instants instants;
    private Text by;
    private Text at;
    private Text takenBy;
    private Text note;
    private CallEntry entry;

    CallDialog(Shell parent, CallLog.Entry planned) {
        super(parent, TEXTS.text("callDialog.title", "team", Naming.name(planned.team())), TEXTS.text("callDialog.explanation", "site",
                Naming.name(planned.stay().site()), "state", planned.stateWord()), TEXTS.text("callDialog.deed"), 2);
        instants = Instants.in((Event) planned.team().eContainer());
    }

    CallEntry entry() {
        return entry;
    }

    @Override
    protected void fields(Composite body) {
        by = field(body, TEXTS.text("callDialog.by"), "");
        at = field(body, TEXTS.text("callDialog.at"), instants.print(Instant.now().truncatedTo(ChronoUnit.MINUTES)));
        takenBy = field(body, TEXTS.text("callDialog.takenBy"), lastTaker);
        note = field(body, TEXTS.text("callDialog.note"), "");
        by.setFocus();
        read();
    }

    private Text field(Composite body, String name, String value) {
        Text field = line(body, name, value, WIDE_PX);
        field.addModifyListener(change -> read());
        return field;
    }

    private void read() {
        if (note == null) {
            return;
        }
        Instant when;
        try {
            when = instants.parse(at.getText());
        } catch (IllegalArgumentException unreadable) {
            when = null;
        }
        entry = new CallEntry(when, by.getText(), takenBy.getText(), note.getText());
        answered();
    }

    @Override
    protected boolean complete() {
        return entry != null && entry.problems().isEmpty();
    }

    @Override
    protected void okPressed() {
        lastTaker = takenBy.getText().strip();
        super.okPressed();
    }
}
