package org.straddle.ui.safety.gate;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.check.gate.DepartureGate;
import org.straddle.check.gate.GateEntry;
import org.straddle.check.gate.GateItem;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;

/** Asks somebody to put their name to an item of a gate: that it is settled, or that the team leaves all the same. */
final class GateDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(GateDialog.class);

    private static final int WIDE_PX = 460;

    private static String lastName = "";

    private final GateItem item;
    private boolean override;
    private Button settled;
    private Text nameText;
    private Text reasonText;
    private Label problem;
    private GateEntry entry;

    /** @param override does the question begin with an override? */
    GateDialog(Shell parent, DepartureGate gate, GateItem item, boolean override) {
        super(parent, TEXTS.text("gateDialog.title", "team", gate.team().getNumber(), "item", item.name()), item.sentence(),
                TEXTS.text("gateDialog.sign"), 2);
        this.item = item;
        this.override = override || !item.kind().byWord();
    }

    /** What was entered when the button was pressed. */
    GateEntry entry() {
        return entry;
    }

    @Override
    protected void fields(Composite body) {
        settled = choice(body, TEXTS.text("gateDialog.settled"), !override);
        settled.setEnabled(item.kind().byWord());
        choice(body, TEXTS.text("gateDialog.override"), override);
        nameText = line(body, TEXTS.text("gateDialog.name"), lastName, SWT.DEFAULT);
        reasonText = lines(body, TEXTS.text("gateDialog.reason"), 3, WIDE_PX);
        problem = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WIDE_PX, 2 * reasonText.getLineHeight()).applyTo(problem);
        nameText.addModifyListener(change -> read());
        reasonText.addModifyListener(change -> read());
        (lastName.isEmpty() || !override ? nameText : reasonText).setFocus();
        nameText.selectAll();
        read();
    }

    private Button choice(Composite body, String words, boolean chosen) {
        Button choice = new Button(body, SWT.RADIO);
        choice.setText(words);
        choice.setSelection(chosen);
        choice.addSelectionListener(SelectionListener.widgetSelectedAdapter(pressed -> read()));
        GridDataFactory.fillDefaults().span(2, 1).applyTo(choice);
        return choice;
    }

    private void read() {
        override = !settled.getSelection();
        entry = new GateEntry(item.kind(), nameText.getText(), Instant.now().truncatedTo(ChronoUnit.MINUTES), override,
                reasonText.getText());
        Optional<String> first = entry.problems().stream().findFirst();
        problem.setText(first.orElse(""));
        answered();
    }

    @Override
    protected boolean complete() {
        return entry != null && entry.problems().isEmpty();
    }

    @Override
    protected void okPressed() {
        lastName = nameText.getText().strip();
        super.okPressed();
    }
}
