package org.straddle.ui.safety.gate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.ControlListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.straddle.check.gate.DepartureGate;
import org.straddle.check.gate.GateItem;
import org.straddle.check.gate.Gates;
import org.straddle.model.naming.Naming;
import org.straddle.ui.parts.Chooser;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;

/** The gates as a table, with what the chosen cell means in full beside it. */
final class GateBoard {

    private static final Catalogue TEXTS = Catalogue.of(GateBoard.class);

    /** As wide as the table likes to be beside its text; below that the text goes under it. */
    private static final int WIDE_PX = 900;

    private final Label summary;
    private final Chooser<Optional<LocalDate>> days;
    private final GateTable table;
    private final Text detail;
    private Gates gates = new Gates(List.of());
    private Optional<LocalDate> day = Optional.empty();
    private Runnable chosen = () -> { };

    GateBoard(Composite parent, GateTable.Deeds deeds) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(8, 4).applyTo(body);
        days = new Chooser<>(body, TEXTS.text("gateBoard.day"), GateBoard::words, picked -> {
            day = picked;
            fill();
        });
        summary = new Label(body, SWT.NONE);
        summary.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        SashForm sash = new SashForm(body, SWT.HORIZONTAL | SWT.SMOOTH);
        sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 3, 1));
        table = new GateTable(sash, deeds);
        detail = new Text(sash, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
        detail.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = TEXTS.text("gateBoard.detail")));
        TabLeaves.on(detail);
        sash.setWeights(76, 24);
        sash.addControlListener(ControlListener.controlResizedAdapter(
                resized -> sash.setOrientation(sash.getSize().x > WIDE_PX ? SWT.HORIZONTAL : SWT.VERTICAL)));
    }

    GateTable table() {
        return table;
    }

    /** Hears when another cell is chosen or the same says something else. */
    void onChosen(Runnable heard) {
        chosen = heard;
    }

    void show(Gates shown, boolean again) {
        gates = shown;
        List<Optional<LocalDate>> offered = new ArrayList<>(List.of(Optional.empty()));
        gates.all().stream().map(DepartureGate::day).distinct().sorted().map(Optional::of).forEach(offered::add);
        if (!offered.contains(day)) {
            day = Optional.empty();
        }
        days.offer(offered, day);
        summary.setText(again ? TEXTS.text("gateBoard.again", "summary", gates.summary()) : gates.summary());
        summary.setToolTipText(summary.getText());
        fill();
    }

    private void fill() {
        table.show(gates.all().stream().filter(gate -> day.isEmpty() || day.get().equals(gate.day())).toList());
    }

    /** Says what the chosen cell means. */
    void tell() {
        String words = table.item().map(this::words).or(() -> table.gate().map(DepartureGate::sentence))
                .orElse(TEXTS.text("gateBoard.choose"));
        if (!detail.getText().equals(words)) {
            detail.setText(words);
        }
        chosen.run();
    }

    private String words(GateItem item) {
        DepartureGate gate = table.gate().orElseThrow();
        return TEXTS.text("gateBoard.words", "team", gate.team().getNumber(), "day", gate.day(), "item", item.name(), "state",
                item.stateWord(), "sentence", item.sentence(), "by", item.settledBy(), "open", item.isOpen() ? "yes" : "no",
                "thing", Naming.name(item.things().get(0)), "word", item.kind().byWord() ? "yes" : "no");
    }

    private static String words(Optional<LocalDate> any) {
        return any.map(DateText.inCurrent()::weekday).orElse(TEXTS.text("gateBoard.days"));
    }
}
