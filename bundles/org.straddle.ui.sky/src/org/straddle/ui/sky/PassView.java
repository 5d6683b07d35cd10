package org.straddle.ui.sky;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;
import org.straddle.ui.sky.picture.PassPaper;
import org.straddle.words.Catalogue;

/** The sheet of one pass: its arc over the skyline of the site, times, directions, Doppler and light. */
public final class PassView extends SkyView<PassSheet> {

    private static final Catalogue TEXTS = Catalogue.of(PassView.class);

    public static final String ID = "org.straddle.ui.sky.pass";

    /** Below this height the tables stand beside each other. */
    private static final int LOW_PX = 430;
    /** Below this width the tables stand below the picture. */
    private static final int NARROW_PX = 760;

    private SashForm halves;
    private SashForm tables;
    private PassCanvas picture;
    private Label reading;
    private MomentTable moments;
    private FactsText facts;
    private boolean arranged;

    @Override
    Optional<PassSheet> read(Outlook outlook, SitePass found) {
        return PassSheet.of(outlook, found);
    }

    @Override
    Control content(Composite parent) {
        halves = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        Composite left = new Composite(halves, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(left);
        picture = new PassCanvas(left, this::read);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(picture.control());
        reading = new Label(left, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 2).applyTo(reading);
        tables = new SashForm(halves, SWT.VERTICAL | SWT.SMOOTH);
        moments = new MomentTable(tables);
        facts = new FactsText(tables, TEXTS.text("passView.aboutPass"));
        halves.addListener(SWT.Resize, event -> arrange());
        read("");
        return halves;
    }

    @Override
    void fill(PassSheet newest) {
        SheetWords words = new SheetWords(newest);
        picture.show(newest);
        moments.show(words.moments());
        facts.show(words.facts());
    }

    @Override
    String[] missing() {
        return new String[] {TEXTS.text("passView.birdCannotFollowed"),
            TEXTS.text("passView.hasElementSet")};
    }

    @Override
    void export(PassSheet shown) {
        SkyExport.ask(getSite().getShell(), TEXTS.text("passView.printExportPass"), SkyExport.name("pass", shown.found()), new PassPaper(shown), picture.letters());
    }

    private void read(String words) {
        reading.setText(words.isEmpty() ? TEXTS.text("passView.pointArcUse") : words);
    }

    private void arrange() {
        Rectangle area = halves.getClientArea();
        boolean narrow = area.width < NARROW_PX;
        boolean stacked = !narrow && area.height >= LOW_PX;
        int across = narrow ? SWT.VERTICAL : SWT.HORIZONTAL;
        int down = stacked ? SWT.VERTICAL : SWT.HORIZONTAL;
        if (!arranged || halves.getOrientation() != across || tables.getOrientation() != down) {
            arranged = true;
            halves.setOrientation(across);
            tables.setOrientation(down);
            halves.setWeights(stacked ? new int[] {60, 40} : new int[] {53, 47});
            tables.setWeights(stacked ? new int[] {40, 60} : new int[] {60, 40});
        }
    }
}
