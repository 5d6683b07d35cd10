package org.straddle.ui.sky;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.things.ThingText;
import org.straddle.outlook.things.Times;
import org.straddle.ui.parts.Chooser;
import org.straddle.ui.sky.pass.Worker;

/** Site, bird and pass to choose from; only what has a pass is offered. */
final class PassChooser {

    private final Composite row;
    private final Chooser<Site> sites;
    private final Chooser<Bird> birds;
    private final Chooser<SitePass> passes;
    private Outlook outlook;
    private SitePass shown;

    PassChooser(Composite parent) {
        row = new Composite(parent, SWT.NONE);
        row.setLayout(GridLayoutFactory.fillDefaults().numColumns(6).extendedMargins(6, 6, 3, 3).create());
        sites = wide(new Chooser<>(row, "S&ite:", ThingText::of, this::choose), 150);
        birds = wide(new Chooser<>(row, "&Bird:", ThingText::of, this::choose), 120);
        passes = wide(new Chooser<>(row, "&Pass:", this::words, this::choose), 240);
    }

    private static <T> Chooser<T> wide(Chooser<T> chooser, int width) {
        GridDataFactory.fillDefaults().grab(true, false).hint(width, SWT.DEFAULT).applyTo(chooser.control());
        return chooser;
    }

    Composite control() {
        return row;
    }

    void setFocus() {
        passes.control().setFocus();
    }

    /** Offers what there is, with one pass of it chosen. */
    void show(Outlook from, SitePass found) {
        outlook = from;
        shown = found;
        sites.offer(byName(from.passes().stream().map(SitePass::site).distinct().toList()), found.site());
        birds.offer(byName(from.passes(found.site()).stream().map(SitePass::bird).distinct().toList()), found.bird());
        passes.offer(from.passes(found.site(), found.bird()), found);
    }

    private static <T extends EObject> List<T> byName(List<T> things) {
        return things.stream().sorted((a, b) -> ThingText.of(a).compareToIgnoreCase(ThingText.of(b))).toList();
    }

    private void choose(Object thing) {
        Pointed.at(thing, outlook, Optional.of(shown)).ifPresent(ChosenPass.current()::choose);
    }

    private String words(SitePass found) {
        return Times.utcDay(found.pass().aos()) + " " + Times.utcClock(found.pass().aos()).replace("Z", "") + "–"
                + Times.utcClock(found.pass().los()) + ", peak " + Math.round(found.pass().peakElevationDeg()) + "°"
                + (Worker.works(outlook.event(), found) ? ", worked" : "");
    }
}
