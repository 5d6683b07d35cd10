package org.straddle.ui.fields;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.straddle.ui.session.EventSession;

/** One value out of a few: a kind, a state, or another thing of the event. */
public final class ChoiceField<T> implements Field {

    private final Combo combo;
    private final Slot<T> slot;
    private final Supplier<List<T>> options;
    private final Function<T, String> words;
    private List<T> offered = List.of();

    ChoiceField(EventSession session, Combo combo, Slot<T> slot, Supplier<List<T>> options,
            Function<T, String> words) {
        this.combo = combo;
        this.slot = slot;
        this.options = options;
        this.words = words;
        refresh();
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(choice -> {
            T chosen = offered.get(combo.getSelectionIndex());
            if (!Objects.equals(chosen, slot.get().get())) {
                session.execute(slot.set().apply(chosen));
            }
        }));
    }

    @Override
    public void focus() {
        combo.setFocus();
    }

    @Override
    public void refresh() {
        offered = options.get();
        String[] labels = offered.stream().map(words).toArray(String[]::new);
        if (!List.of(labels).equals(List.of(combo.getItems()))) {
            combo.setItems(labels);
        }
        int at = offered.indexOf(slot.get().get());
        if (at != combo.getSelectionIndex()) {
            if (at < 0) {
                combo.deselectAll();
            } else {
                combo.select(at);
            }
        }
    }
}
