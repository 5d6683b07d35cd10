package org.straddle.ui.editors;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;
import org.straddle.model.Identified;
import org.straddle.outlook.things.ThingText;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.Kind;

/** A thing by its identity: one editor for one thing. */
public final class ThingInput implements IEditorInput {

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
        return ThingText.of(thing);
    }

    @Override
    public String getToolTipText() {
        return Kind.of(thing).map(Kind::word).orElse("") + " " + getName();
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
