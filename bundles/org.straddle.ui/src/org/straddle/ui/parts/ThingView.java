package org.straddle.ui.parts;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.naming.Naming;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/**
 * A view of one thing out of several of its kind: it is picked from a list, or by selecting it or something that
 * belongs to it elsewhere. Shows what the event says now, without waiting for a computation.
 *
 * @param <T> the kind of thing
 */
public abstract class ThingView<T extends Identified> extends SessionView<Composite> {

    private static final Catalogue TEXTS = Catalogue.of(ThingView.class);

    private final ISelectionListener follow = this::follow;
    private final Runnable choose = this::refresh;
    private final String noThing;
    private final String whatToDo;
    private Chooser<T> chooser;
    private T thing;

    /** @param noThing a heading for an event without such things, and a sentence that says what to do */
    protected ThingView(String noThing, String whatToDo) {
        super(TEXTS.text("thingView.closed"));
        this.noThing = noThing;
        this.whatToDo = whatToDo;
    }

    /** What there is to pick from. */
    protected abstract List<T> things(Event event);

    /** What is meant by something that was selected elsewhere; anything but one of the things counts as nothing. */
    protected abstract Object meant(Object selected);

    /** Shows the thing as it is now; comes again after every change of the event. */
    protected abstract void show(T now);

    /** Makes the list to pick from, in two columns of a row; to be called once, with the content. */
    protected final void chooser(Composite row, String name) {
        chooser = new Chooser<>(row, name, Naming::name, picked -> {
            thing = picked;
            show(thing);
        });
    }

    /** What is shown; null while no event is open or it has no such thing. */
    protected final T thing() {
        return thing;
    }

    /** A deed that does nothing while there is no thing. */
    protected final Action act(String text, String icon, Runnable run) {
        return new Act(text, icon, () -> {
            if (thing != null) {
                run.run();
            }
        });
    }

    @Override
    protected void equip(Composite content) {
        getSite().getPage().addPostSelectionListener(follow);
    }

    @Override
    public void dispose() {
        getSite().getPage().removePostSelectionListener(follow);
        super.dispose();
    }

    @Override
    public final void opened(EventSession opened) {
        refresh();
    }

    @Override
    public final void edited(EventSession edited) {
        refresh();
    }

    @Override
    public final void closed(EventSession closed) {
        thing = null;
        super.closed(closed);
    }

    private void refresh() {
        List<T> all = things(session().event());
        if (all.isEmpty()) {
            thing = null;
            pages().say(noThing, whatToDo);
            return;
        }
        choose(all.contains(thing) ? thing : selected(all, getSite().getPage().getSelection()).orElse(all.get(0)));
        pages().showContent(true);
    }

    private Optional<T> selected(List<T> all, ISelection selection) {
        Object meant = selection instanceof IStructuredSelection selected ? meant(selected.getFirstElement()) : null;
        return all.stream().filter(one -> one == meant).findFirst();
    }

    private void choose(T chosen) {
        thing = chosen;
        chooser.offer(things(session().event()), thing);
        show(thing);
    }

    private void follow(IWorkbenchPart from, ISelection selection) {
        if (from != this && session().isOpen()) {
            selected(things(session().event()), selection).filter(one -> one != thing).ifPresent(chosen -> {
                thing = chosen;
                whileSeen(choose);
            });
        }
    }
}
