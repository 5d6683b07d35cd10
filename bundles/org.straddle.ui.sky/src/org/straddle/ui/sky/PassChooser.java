package org.straddle.ui.sky;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ComboViewer;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.pass.Worker;
import org.straddle.ui.things.ThingText;
import org.straddle.ui.things.Times;

/** Site, bird and pass to choose from; only what has a pass is offered. */
final class PassChooser {

    private final Composite row;
    private final ComboViewer sites;
    private final ComboViewer birds;
    private final ComboViewer passes;
    private Outlook outlook;
    private SitePass shown;
    private boolean filling;

    PassChooser(Composite parent) {
        row = new Composite(parent, SWT.NONE);
        row.setLayout(GridLayoutFactory.fillDefaults().numColumns(6).extendedMargins(6, 6, 3, 3).create());
        sites = combo("S&ite:", thing -> ThingText.of((Site) thing), 150);
        birds = combo("&Bird:", thing -> ThingText.of((Bird) thing), 120);
        passes = combo("&Pass:", this::words, 240);
        sites.addSelectionChangedListener(change -> chosen(change.getStructuredSelection().getFirstElement()));
        birds.addSelectionChangedListener(change -> chosen(change.getStructuredSelection().getFirstElement()));
        passes.addSelectionChangedListener(change -> chosen(change.getStructuredSelection().getFirstElement()));
    }

    Composite control() {
        return row;
    }

    void setFocus() {
        passes.getControl().setFocus();
    }

    /** Offers what there is, with one pass of it chosen. */
    void show(Outlook from, SitePass found) {
        filling = true;
        outlook = from;
        shown = found;
        fill(sites, from.passes().stream().map(SitePass::site).distinct()
                .sorted((a, b) -> ThingText.of(a).compareToIgnoreCase(ThingText.of(b))).toList(), found.site());
        fill(birds, from.passes(found.site()).stream().map(SitePass::bird).distinct()
                .sorted((a, b) -> ThingText.of(a).compareToIgnoreCase(ThingText.of(b))).toList(), found.bird());
        fill(passes, from.passes(found.site(), found.bird()), found);
        row.layout(true, true);
        filling = false;
    }

    private void chosen(Object thing) {
        if (!filling && thing != null) {
            Pointed.at(thing, outlook, Optional.of(shown)).ifPresent(ChosenPass.current()::choose);
        }
    }

    private String words(Object pass) {
        SitePass found = (SitePass) pass;
        return Times.utcDay(found.pass().aos()) + " " + Times.utcClock(found.pass().aos()).replace("Z", "") + "–"
                + Times.utcClock(found.pass().los()) + ", peak " + Math.round(found.pass().peakElevationDeg()) + "°"
                + (Worker.works(outlook.event(), found) ? ", worked" : "");
    }

    private static void fill(ComboViewer combo, List<?> things, Object chosen) {
        if (!things.equals(combo.getInput())) {
            combo.setInput(things);
        }
        combo.setSelection(new StructuredSelection(chosen));
    }

    private ComboViewer combo(String label, Function<Object, String> words, int width) {
        Label name = new Label(row, SWT.NONE);
        name.setText(label);
        ComboViewer combo = new ComboViewer(row, SWT.READ_ONLY);
        combo.setContentProvider(ArrayContentProvider.getInstance());
        combo.setLabelProvider(LabelProvider.createTextProvider(words));
        GridDataFactory.fillDefaults().grab(true, false).hint(width, SWT.DEFAULT).applyTo(combo.getControl());
        Accessibility.name(combo.getControl(), label.replaceAll("[&:]", ""));
        return combo;
    }
}
