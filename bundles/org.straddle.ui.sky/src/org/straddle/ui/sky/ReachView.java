package org.straddle.ui.sky;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.picture.ReachPaper;
import org.straddle.ui.sky.reach.ReachSheet;
import org.straddle.ui.sky.reach.ReachWords;
import org.straddle.words.Catalogue;

/** Who can be worked through one pass, and when: regions where chasers live, and their squares. */
public final class ReachView extends SkyView<ReachSheet> {

    private static final Catalogue TEXTS = Catalogue.of(ReachView.class);

    public static final String ID = "org.straddle.ui.sky.reach";

    /** Below this width the list stands below the picture. */
    private static final int NARROW_PX = 900;

    private SashForm halves;
    private ReachCanvas picture;
    private ReachTable table;
    private Label summary;

    @Override
    Optional<ReachSheet> read(Outlook outlook, SitePass found) {
        return ReachSheet.of(outlook, found);
    }

    @Override
    Control content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(body);
        summary = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 0).hint(300, SWT.DEFAULT).applyTo(summary);
        halves = new SashForm(body, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        picture = new ReachCanvas(halves, row -> {
            table.choose(row);
            picture.choose(row);
        });
        table = new ReachTable(halves, row -> picture.choose(row));
        halves.setWeights(52, 48);
        halves.addListener(SWT.Resize, event -> halves.setOrientation(
                halves.getClientArea().width < NARROW_PX ? SWT.VERTICAL : SWT.HORIZONTAL));
        return body;
    }

    @Override
    void fill(ReachSheet newest) {
        ReachWords words = new ReachWords(newest);
        summary.setText(words.summary());
        summary.requestLayout();
        picture.show(newest);
        table.show(words.rows());
    }

    @Override
    String[] missing() {
        return new String[] {TEXTS.text("reachView.nobodyKnownReached"), TEXTS.text("reachView.eventDoesNot")};
    }

    @Override
    void export(ReachSheet shown) {
        SkyExport.ask(getSite().getShell(), TEXTS.text("reachView.printExportReach"), SkyExport.name("reach", shown.found()), new ReachPaper(shown), picture.letters());
    }
}
