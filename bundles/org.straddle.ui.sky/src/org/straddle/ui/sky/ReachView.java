package org.straddle.ui.sky;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.picture.ReachPicture;
import org.straddle.ui.sky.reach.ReachSheet;
import org.straddle.ui.sky.reach.ReachWords;
import org.straddle.words.Catalogue;

/** Who can be worked through one pass, and when: regions where chasers live, and their squares. */
public final class ReachView extends SkyView<ReachSheet> {

    private static final Catalogue TEXTS = Catalogue.of(ReachView.class);

    public static final String ID = "org.straddle.ui.sky.reach";

    /** Below this width the list stands below the picture. */
    private static final int NARROW_PX = 900;
    private static final int PAPER_WIDTH = 1120;

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
        String name = "reach-" + Naming.name(shown.found().site()) + " " + Naming.name(shown.found().bird()) + " "
                + shown.found().pass().aos().toString().substring(0, 16).replace(":", "") + TEXTS.text("reachView.z");
        SheetExport.ask(getSite().getShell(), TEXTS.text("reachView.printExportReach"), name, () -> page(shown), () -> png(shown));
    }

    private byte[] page(ReachSheet shown) {
        ReachWords words = new ReachWords(shown);
        int height = height(shown);
        byte[] png = FinePicture.png(getSite().getShell().getDisplay(), PAPER_WIDTH, height, gc -> ReachPicture.paint(gc,
                picture.faces(), shown, new Rectangle(0, 0, PAPER_WIDTH, height), 0, -1));
        return PrintPage.titled(words.title()).sentence(words.summary()).picture(png, words.summary())
                .table(ReachWords.COLUMNS, words.rows()).bytes();
    }

    private byte[] png(ReachSheet shown) {
        ReachWords words = new ReachWords(shown);
        Rectangle area = new Rectangle(0, 0, PAPER_WIDTH, height(shown) + 80);
        return FinePicture.png(getSite().getShell().getDisplay(), area.width, area.height, gc -> ReachPicture.paper(gc,
                picture.faces(), shown, words.title(), words.summary(), area));
    }

    private int height(ReachSheet shown) {
        GC gc = new GC(picture.control());
        try {
            return ReachPicture.height(gc, picture.faces(), shown);
        } finally {
            gc.dispose();
        }
    }
}
