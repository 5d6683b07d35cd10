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
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.parts.Chooser;
import org.straddle.ui.sky.pass.Worker;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Site, bird and pass to choose from; only what has a pass is offered. */
final class PassChooser {

    private static final Catalogue TEXTS = Catalogue.of(PassChooser.class);

    private final Composite row;
    private final Chooser<Site> sites;
    private final Chooser<Bird> birds;
    private final Chooser<SitePass> passes;
    private Outlook outlook;
    private SitePass shown;

    PassChooser(Composite parent) {
        row = new Composite(parent, SWT.NONE);
        row.setLayout(GridLayoutFactory.fillDefaults().numColumns(6).extendedMargins(6, 6, 3, 3).create());
        sites = wide(new Chooser<>(row, TEXTS.text("passChooser.site"), Naming::name, this::choose), 150);
        birds = wide(new Chooser<>(row, TEXTS.text("passChooser.bird"), Naming::name, this::choose), 120);
        passes = wide(new Chooser<>(row, TEXTS.text("passChooser.pass"), this::words, this::choose), 240);
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
        return things.stream().sorted((a, b) -> Naming.name(a).compareToIgnoreCase(Naming.name(b))).toList();
    }

    private void choose(Object thing) {
        Pointed.at(thing, outlook, Optional.of(shown)).ifPresent(ChosenPass.current()::choose);
    }

    private String words(SitePass found) {
        return TEXTS.text("passChooser.peakCase", "day", TimeText.utc().weekday(found.pass().aos()),
                "times", TimeText.zulu(found.pass().aos(), found.pass().los()),
                "degrees", Math.round(found.pass().peakElevationDeg()),
                "worked", Worker.works(outlook.event(), found));
    }
}
