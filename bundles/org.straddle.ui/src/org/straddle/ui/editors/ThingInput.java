package org.straddle.ui.editors;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import org.straddle.model.Identified;
import org.straddle.model.naming.Naming;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.Kind;
import org.straddle.words.Catalogue;

/** A thing by its identity: one editor for one thing. */
public final class ThingInput implements IEditorInput {

    private static final Catalogue TEXTS = Catalogue.of(ThingInput.class);

    private final Identified thing;

    public ThingInput(Identified thing) {
        this.thing = thing;
    }

    Identified thing() {
        return thing;
    }

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Icons.descriptor(Kind.icon(thing));
    }

    @Override
    public String getName() {
        return Naming.name(thing);
    }

    @Override
    public String getToolTipText() {
        String kind = Naming.inCurrent().type(thing.eClass());
        // "team 1" and "stop of team 1" say what they are themselves.
        return getName().startsWith(kind) ? getName() : TEXTS.text("thingInput.tooltip", "kind", kind, "name", getName());
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        return type.isInstance(thing) ? type.cast(thing) : null;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ThingInput input && input.thing.getId().equals(thing.getId());
    }

    @Override
    public int hashCode() {
        return thing.getId().hashCode();
    }
}
