package org.straddle.ui.start;

import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.straddle.exchange.start.EventStart;
import org.straddle.exchange.start.ReadLines;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.ui.start.NewEventDraft.Lines;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/** A box for things written one on a line, and beside it how each line is understood while it is typed. */
final class LinesBox {

    private static final Catalogue TEXTS = Catalogue.of(LinesBox.class);

    private static final int WIDTH = 330;
    private static final int HEIGHT = 150;

    private final NewEventDraft draft;
    private final Lines kind;
    private final Function<EventStart, ReadLines<?>> reader;
    private final Runnable changed;
    private final Text text;
    private final Table understood;

    /** @param example a line as it may be written */
    LinesBox(Composite parent, NewEventDraft draft, Lines kind, Function<EventStart, ReadLines<?>> reader, String example,
            Runnable changed) {
        this.draft = draft;
        this.kind = kind;
        this.reader = reader;
        this.changed = changed;
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).spacing(10, 4).create());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        Label write = new Label(body, SWT.WRAP);
        write.setText(TEXTS.text("linesBox.write", "example", example));
        // Longer than its half, it would push the other one out of the page.
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(write);
        new Label(body, SWT.NONE).setText(TEXTS.text("linesBox.understood"));
        text = new Text(body, SWT.BORDER | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        TabLeaves.on(text);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(text);
        understood = new Table(body, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(understood);
        text.addModifyListener(change -> {
            draft.set(kind, text.getText());
            read();
            changed.run();
        });
    }

    /** Shows what the draft has, for another step may have changed what it means. */
    void show() {
        if (!text.getText().equals(draft.lines(kind))) {
            text.setText(draft.lines(kind));
        }
        read();
        changed.run();
    }

    void setFocus() {
        text.setFocus();
        text.setSelection(text.getCharCount());
    }

    /** What cannot be read, with the number of its line; null when all can. */
    String problem() {
        return reader.apply(draft.start()).lines().stream().filter(line -> line.thing().isEmpty()).findFirst()
                .map(line -> TEXTS.text("linesBox.problem", "number", line.number(), "told", line.told())).orElse(null);
    }

    private void read() {
        understood.removeAll();
        for (ReadLines.Line<?> line : reader.apply(draft.start()).lines()) {
            TableItem item = new TableItem(understood, SWT.NONE);
            item.setImage(Icons.image(line.thing().isEmpty() ? "blocker" : line.open() ? "warning" : "accepted"));
            item.setText(TEXTS.text(line.thing().isPresent() ? "linesBox.line" : "linesBox.problem", "number", line.number(),
                    "told", line.told()));
        }
    }
}
