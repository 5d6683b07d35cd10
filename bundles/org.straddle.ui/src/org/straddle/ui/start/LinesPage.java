package org.straddle.ui.start;

import java.util.function.Function;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.straddle.exchange.start.EventStart;
import org.straddle.exchange.start.ReadLines;
import org.straddle.ui.start.NewEventDraft.Lines;

/** A step that asks for things written one on a line. It may stay empty; what stands there must be readable. */
class LinesPage extends WizardPage {

    private final NewEventDraft draft;
    private final Lines kind;
    private final Function<EventStart, ReadLines<?>> reader;
    private final String example;
    private LinesBox box;

    LinesPage(NewEventDraft draft, Lines kind, Function<EventStart, ReadLines<?>> reader, String title, String description,
            String example) {
        super(kind.name(), title, null);
        this.draft = draft;
        this.kind = kind;
        this.reader = reader;
        this.example = example;
        setDescription(description);
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().margins(12, 12).spacing(10, 8).create());
        above(body);
        box = new LinesBox(body, draft, kind, reader, example, this::changed);
        setControl(body);
    }

    /** Adds what stands over the box. */
    void above(Composite body) {
        // nothing as a rule
    }

    NewEventDraft draft() {
        return draft;
    }

    LinesBox box() {
        return box;
    }

    private void changed() {
        setErrorMessage(box.problem());
        setPageComplete(getErrorMessage() == null);
    }

    @Override
    public void setVisible(boolean visible) {
        if (visible) {
            box.show();
        }
        super.setVisible(visible);
        if (visible) {
            box.setFocus();
        }
    }
}
