package org.straddle.ui.explorer;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import org.straddle.check.FindingsByThing;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.outlook.Outlook;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.Kind;
import org.straddle.ui.things.ThingLine;
import org.straddle.words.Catalogue;

/** Names and pictures in the explorer, with the number of findings and a mark of the gravest. */
final class ExplorerLabels extends LabelProvider implements IStyledLabelProvider {

    private static final Catalogue TEXTS = Catalogue.of(ExplorerLabels.class);

    private final EventSession session;
    private FindingsByThing findings = FindingsByThing.NONE;

    ExplorerLabels(EventSession session) {
        this.session = session;
    }

    void take(FindingsByThing found) {
        findings = found;
    }

    @Override
    public String getText(Object element) {
        return getStyledText(element).getString();
    }

    @Override
    public StyledString getStyledText(Object element) {
        StyledString text = new StyledString(name(element));
        String detail = detail(element);
        if (!detail.isEmpty()) {
            text.append("  " + detail, StyledString.QUALIFIER_STYLER);
        }
        int open = findings.open(covered(element)).size();
        if (open > 0) {
            text.append("  (" + open + ")", StyledString.COUNTER_STYLER);
        }
        return text;
    }

    @Override
    public Image getImage(Object element) {
        String icon = element instanceof Group group ? groupIcon(group.kind())
                : element instanceof Identified thing ? Kind.icon(thing) : "demand";
        return findings.gravest(covered(element)).map(severity -> Icons.marked(icon, severity))
                .orElseGet(() -> Icons.image(icon));
    }

    private static String groupIcon(Kind kind) {
        return kind == Kind.STOP ? "plan" : kind == Kind.SITE ? "site-line" : kind.icon();
    }

    private static String name(Object element) {
        return element instanceof Group group ? group.kind().plural()
                : element instanceof Identified thing ? ThingLine.name(thing) : element.toString();
    }

    private String detail(Object element) {
        if (element instanceof Group group) {
            int size = group.things(session.event()).size();
            return TEXTS.text("explorerLabels.count", "count", size);
        }
        if (element == ExplorerTree.DEMAND) {
            int size = session.event().getDemands().size();
            return TEXTS.text("explorerLabels.demand", "count", size);
        }
        return element instanceof Event ? "" : ThingLine.detail((Identified) element, Outlook.zoneOf(session.event()));
    }

    /** A heading speaks for its things, a stop for its turns; the event speaks for itself only. */
    private List<Identified> covered(Object element) {
        if (element instanceof Group group) {
            return group.things(session.event()).stream().flatMap(thing -> covered(thing).stream()).toList();
        }
        if (element instanceof Stop stop) {
            return Stream.concat(Stream.of(stop), stop.getTurns().stream()).map(Identified.class::cast).toList();
        }
        return element instanceof Identified thing ? List.of(thing) : List.of();
    }
}
