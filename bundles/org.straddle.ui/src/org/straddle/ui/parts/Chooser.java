package org.straddle.ui.parts;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ComboViewer;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A named list from which the user picks one of several values. It tells only what the user picked. */
public final class Chooser<T> {

    private final ComboViewer combo;
    private T shown;
    private List<T> offered = List.of();
    private List<String> said = List.of();
    private final Function<T, String> words;

    /**
     * Takes two columns of the row.
     *
     * @param name with mnemonic and colon
     * @param picked hears of another value
     */
    public Chooser(Composite row, String name, Function<T, String> words, Consumer<T> picked) {
        this.words = words;
        new Label(row, SWT.NONE).setText(name);
        combo = new ComboViewer(row, SWT.READ_ONLY);
        combo.getControl().getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = name.replaceAll("[&:]", "")));
        combo.setContentProvider(ArrayContentProvider.getInstance());
        combo.setLabelProvider(LabelProvider.createTextProvider(value -> words.apply(cast(value))));
        combo.addSelectionChangedListener(change -> {
            T value = cast(change.getStructuredSelection().getFirstElement());
            if (value != null && !value.equals(shown)) {
                shown = value;
                picked.accept(value);
            }
        });
    }

    /** Offers the values, one of them picked, and tells nobody. */
    public void offer(List<T> values, T picked) {
        shown = picked;
        List<String> saying = values.stream().map(words).toList();
        // A box that is filled anew is measured anew, line by line.
        if (!values.equals(offered) || !saying.equals(said)) {
            offered = List.copyOf(values);
            said = saying;
            combo.setInput(offered);
            combo.getControl().requestLayout();
        }
        if (!picked.equals(combo.getStructuredSelection().getFirstElement())) {
            combo.setSelection(new StructuredSelection(picked));
        }
    }

    public Control control() {
        return combo.getControl();
    }

    @SuppressWarnings("unchecked")
    private T cast(Object value) {
        return (T) value;
    }
}
