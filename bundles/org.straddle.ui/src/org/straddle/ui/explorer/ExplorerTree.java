package org.straddle.ui.explorer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.eclipse.jface.viewers.ITreeContentProvider;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.ui.things.Kind;
import org.straddle.words.Catalogue;

/** The event, its demand, and a heading for each kind of thing; turns stand under their stop. */
final class ExplorerTree implements ITreeContentProvider {

    private static final Catalogue TEXTS = Catalogue.of(ExplorerTree.class);

    /** The table of demand; it opens with the event. */
    static final String DEMAND = TEXTS.text("explorerTree.demand");

    private Event event;

    @Override
    public Object[] getElements(Object input) {
        event = (Event) input;
        var roots = new ArrayList<Object>(List.of(event, DEMAND));
        roots.addAll(Group.ALL);
        return roots.toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        if (parent instanceof Group group) {
            return group.things(event).toArray();
        }
        if (parent instanceof Stop stop) {
            return stop.getTurns().stream().sorted(Comparator.comparing(Turn::getStart,
                    Comparator.nullsFirst(Comparator.naturalOrder()))).toArray();
        }
        return new Object[0];
    }

    @Override
    public Object getParent(Object element) {
        if (element instanceof Turn turn) {
            return turn.eContainer();
        }
        return element instanceof Identified thing && !(thing instanceof Event)
                ? Kind.of(thing).map(Group::new).orElse(null) : null;
    }

    @Override
    public boolean hasChildren(Object element) {
        return getChildren(element).length > 0;
    }
}
