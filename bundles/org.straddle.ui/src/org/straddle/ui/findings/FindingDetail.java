package org.straddle.ui.findings;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.straddle.check.Finding;
import org.straddle.model.Identified;
import org.straddle.model.naming.Naming;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/**
 * The chosen finding in full: its whole sentence, links to its things, and what can be done about it. Of several
 * findings, what can be done with all.
 */
final class FindingDetail {

    private static final Catalogue TEXTS = Catalogue.of(FindingDetail.class);

    private final ScrolledComposite frame;
    private final Deeds deeds;
    private List<Finding> shown;

    /** What can be done from here with what is chosen. */
    record Deeds(Consumer<Identified> reveal, Runnable fix, Runnable accept, Runnable withdraw) {
    }

    FindingDetail(Composite parent, Deeds deeds) {
        frame = new ScrolledComposite(parent, SWT.V_SCROLL);
        frame.setExpandHorizontal(true);
        frame.setExpandVertical(true);
        frame.setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        this.deeds = deeds;
        frame.addListener(SWT.Resize, resized -> fit());
        show(List.of());
    }

    void show(List<Finding> findings) {
        if (findings.equals(shown)) {
            return;
        }
        shown = List.copyOf(findings);
        if (frame.getContent() != null) {
            frame.getContent().dispose();
        }
        Composite body = new Composite(frame, SWT.NONE);
        body.setBackground(frame.getBackground());
        body.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 10;
        layout.marginHeight = 8;
        layout.verticalSpacing = 8;
        body.setLayout(layout);
        if (findings.isEmpty()) {
            wrapped(body, 2).setText(TEXTS.text("findingDetail.none"));
        } else if (findings.size() == 1) {
            fill(body, findings.get(0));
        } else {
            fill(body, findings);
        }
        frame.setContent(body);
        fit();
    }

    private void fit() {
        Control body = frame.getContent();
        if (body != null && !body.isDisposed()) {
            frame.setMinHeight(body.computeSize(Math.max(80, frame.getClientArea().width), SWT.DEFAULT).y);
        }
    }

    private void fill(Composite body, Finding finding) {
        Label image = new Label(body, SWT.NONE);
        image.setImage(finding.accepted().isPresent() ? Icons.image("accepted") : Icons.of(finding.severity()));
        image.setLayoutData(GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.TOP).create());
        wrapped(body, 1).setText(finding.sentence());
        new Label(body, SWT.NONE);
        Composite links = row(body);
        for (Identified thing : finding.objects()) {
            Link link = new Link(links, SWT.NONE);
            link.setText("<a>" + Naming.name(thing).replace("&", "&&").replace("<", "") + "</a>");
            link.setToolTipText(TEXTS.text("findingDetail.show"));
            link.addListener(SWT.Selection, click -> deeds.reveal.accept(thing));
        }
        finding.accepted().ifPresent(acceptance -> {
            new Label(body, SWT.NONE);
            wrapped(body, 1).setText(TEXTS.text("findingDetail.accepted", "by", acceptance.getBy(),
                    "reason", acceptance.getReason()));
        });
        finding.fix().ifPresent(offered -> deed(body, "fix", offered.label(), TEXTS.text("findingDetail.fix.tooltip"), deeds.fix));
        if (finding.accepted().isEmpty()) {
            deed(body, "accepted", TEXTS.text("findingDetail.accept"), TEXTS.text("findingDetail.accept.tooltip"), deeds.accept);
        } else {
            deed(body, "remove", TEXTS.text("findingDetail.withdraw"), TEXTS.text("findingDetail.withdraw.tooltip"), deeds.withdraw);
        }
    }

    private void fill(Composite body, List<Finding> findings) {
        wrapped(body, 2).setText(TEXTS.text("findingDetail.several", "findings", findings.size()));
        long fixed = findings.stream().filter(finding -> finding.fix().isPresent()).count();
        long accepted = findings.stream().filter(finding -> finding.accepted().isPresent()).count();
        if (fixed > 0) {
            deed(body, "fix", TEXTS.text("findingDetail.several.fix",
                    "fixed", fixed), TEXTS.text("findingDetail.fix.tooltip"), deeds.fix);
        }
        if (accepted < findings.size()) {
            deed(body, "accepted", TEXTS.text("findingDetail.several.accept",
                    "findings", (findings.size() - accepted)), TEXTS.text("findingDetail.accept.tooltip"),
                    deeds.accept);
        }
        if (accepted > 0) {
            deed(body, "remove", TEXTS.text("findingDetail.several.withdraw", "accepted", accepted),
                    TEXTS.text("findingDetail.several.withdraw.tooltip"), deeds.withdraw);
        }
    }

    private static Composite row(Composite body) {
        Composite row = new Composite(body, SWT.NONE);
        RowLayout layout = new RowLayout();
        layout.marginLeft = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = 10;
        layout.center = true;
        row.setLayout(layout);
        row.setLayoutData(GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).create());
        return row;
    }

    private static void deed(Composite body, String icon, String text, String tip, Runnable run) {
        new Label(body, SWT.NONE).setImage(Icons.image(icon));
        Link link = new Link(body, SWT.WRAP);
        link.setText("<a>" + text.replace("&", "&&").replace("<", "") + "</a>");
        link.setToolTipText(tip);
        link.setLayoutData(GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).create());
        link.addListener(SWT.Selection, click -> run.run());
    }

    private static Label wrapped(Composite body, int columns) {
        Label label = new Label(body, SWT.WRAP);
        label.setLayoutData(GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).hint(120, SWT.DEFAULT)
                .create());
        return label;
    }
}
