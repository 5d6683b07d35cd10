package org.straddle.ui.planning;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.parts.Chooser;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;

/** Asks what may happen, to which team, site or bird, and when. */
final class CaseDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(CaseDialog.class);

    private final Event event;
    private final Instants instants;
    private Chooser<Identified> thing;
    private Text from;
    private Text until;
    private Label told;
    private Case.Kind kind = Case.Kind.TEAM_OUT;
    private Identified chosen;
    private Case result;

    /** @param first the case that is offered at first */
    CaseDialog(Shell parent, Event event, Case.Kind first, String heading, String explanation, String deed) {
        super(parent, heading, explanation, deed, 2);
        this.event = event;
        kind = first;
        instants = Instants.in(event);
    }

    Case result() {
        return result;
    }

    @Override
    protected void fields(Composite body) {
        Chooser<Case.Kind> kinds = new Chooser<>(body, TEXTS.text("caseDialog.what"), Case.Kind::words, picked -> {
            kind = picked;
            offerThings();
            answered();
        });
        wide(kinds.control());
        thing = new Chooser<>(body, TEXTS.text("caseDialog.which"), Case::name, picked -> {
            chosen = picked;
            answered();
        });
        wide(thing.control());
        from = time(body, TEXTS.text("caseDialog.from"), TEXTS.text("caseDialog.from.empty", "day", day()));
        until = time(body, TEXTS.text("caseDialog.until"), TEXTS.text("caseDialog.until.empty", "day", day()));
        new Label(body, SWT.NONE);
        told = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(340, 3 * told.computeSize(SWT.DEFAULT, SWT.DEFAULT).y).applyTo(told);
        kinds.offer(List.of(Case.Kind.values()), kind);
        offerThings();
    }

    private static void wide(Control control) {
        GridDataFactory.fillDefaults().grab(true, false).hint(340, SWT.DEFAULT).applyTo(control);
    }

    private void offerThings() {
        List<Identified> things = List.copyOf(kind.things(event));
        chosen = things.isEmpty() ? null : things.get(0);
        if (chosen != null) {
            thing.offer(things, chosen);
        }
    }

    /** As it is to be typed. */
    private String day() {
        return event.getFirstDay() == null ? "2026-06-20" : event.getFirstDay().toString();
    }

    private Text time(Composite body, String label, String empty) {
        new Label(body, SWT.NONE).setText(label);
        Text text = new Text(body, SWT.BORDER);
        text.setMessage(empty);
        wide(text);
        text.addModifyListener(change -> answered());
        return text;
    }

    @Override
    protected boolean complete() {
        try {
            Optional<Instant> begin = Optional.ofNullable(instants.parse(from.getText()));
            Optional<Instant> end = Optional.ofNullable(instants.parse(until.getText()));
            boolean late = kind == Case.Kind.TEAM_LATE;
            until.setEnabled(!late);
            if (late && begin.isEmpty()) {
                told.setText(TEXTS.text("caseDialog.start"));
                return false;
            }
            if (!late && begin.isPresent() && end.isPresent() && !begin.get().isBefore(end.get())) {
                told.setText(TEXTS.text("caseDialog.order"));
                return false;
            }
            result = chosen == null ? null : new Case(kind, chosen.getId(), begin, late ? Optional.empty() : end);
            told.setText(result == null ? TEXTS.text("caseDialog.none") : result.words(event));
            return result != null;
        } catch (IllegalArgumentException wrong) {
            told.setText(wrong.getMessage());
            return false;
        } finally {
            told.requestLayout();
        }
    }
}
