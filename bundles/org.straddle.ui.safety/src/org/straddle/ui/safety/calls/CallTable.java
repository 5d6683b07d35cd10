package org.straddle.ui.safety.calls;

import java.util.Optional;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.straddle.model.Event;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.safety.CallLog;
import org.straddle.ui.parts.HeaderRoom;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.TableFrame;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** The planned calls in order of time, with what came, under a sentence that says what to do now. */
final class CallTable {

    private static final Catalogue TEXTS = Catalogue.of(CallTable.class);

    private final Label sentence;
    private final TableViewer rows;
    private TimeText times = TimeText.utc();

    /** @param note called by Enter in a row */
    CallTable(Composite parent, Runnable note) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(8, 4).applyTo(body);
        sentence = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(sentence);
        Composite frame = new TableFrame(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        rows = new TableViewer(frame, SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        rows.getTable().setHeaderVisible(true);
        OnceSized.show(rows.getTable());
        rows.setContentProvider(ArrayContentProvider.getInstance());
        column(layout, TEXTS.text("callTable.state"), 10, CallLog.Entry::stateWord);
        column(layout, TEXTS.text("callTable.due"), 21, entry -> times.weekday(entry.due()) + " " + times.clock(entry.due()));
        column(layout, TEXTS.text("callTable.act"), 10, entry -> times.clock(entry.actAt()));
        column(layout, TEXTS.text("callTable.team"), 18, entry -> Naming.name(entry.team()));
        column(layout, TEXTS.text("callTable.site"), 18, entry -> Naming.name(entry.stay().site()));
        column(layout, TEXTS.text("callTable.came"), 10, entry -> entry.call().map(call -> times.clock(call.getAt())).orElse(""));
        column(layout, TEXTS.text("callTable.by"), 12, entry -> entry.call().map(call -> call.getBy()).orElse(""));
        column(layout, TEXTS.text("callTable.note"), 24, entry -> entry.call().map(call -> call.getNote()).orElse(""));
        rows.addOpenListener(pressed -> note.run());
    }

    Control keys() {
        return rows.getTable();
    }

    Optional<CallLog.Entry> chosen() {
        return Optional.ofNullable((CallLog.Entry) rows.getStructuredSelection().getFirstElement());
    }

    /** Keeps the row that is chosen; at first it is the first call that did not come. */
    void show(CallLog log, Event event) {
        times = TimeText.of(Outlook.zoneOf(event));
        sentence.setText(log.sentence());
        int chosen = rows.getTable().getSelectionIndex();
        rows.setInput(log.entries());
        int first = 0;
        while (first < log.entries().size() - 1 && log.entries().get(first).state() == CallLog.State.CAME) {
            first++;
        }
        rows.getTable().setSelection(chosen >= 0 && chosen < log.entries().size() ? chosen : first);
    }

    private void column(TableColumnLayout layout, String heading, int weight, Function<CallLog.Entry, String> text) {
        TableViewerColumn column = new TableViewerColumn(rows, SWT.LEFT);
        column.getColumn().setText(heading);
        boolean state = rows.getTable().getColumnCount() == 1;
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                String words = text.apply((CallLog.Entry) row);
                return words == null ? "" : words;
            }

            @Override
            public Image getImage(Object row) {
                return state ? Icons.image(icon(((CallLog.Entry) row).state())) : null;
            }
        });
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, HeaderRoom.least(rows.getTable(), heading, weight * 6), true));
    }

    /** Shapes differ, and the word stands beside them. */
    private static String icon(CallLog.State state) {
        return switch (state) {
            case AHEAD -> "down";
            case CAME -> "accepted";
            case DUE -> "warning";
            case MISSED -> "blocker";
        };
    }
}
