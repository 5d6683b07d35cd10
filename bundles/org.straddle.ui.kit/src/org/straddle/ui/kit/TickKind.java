package org.straddle.ui.kit;

import org.eclipse.emf.ecore.EReference;
import org.straddle.model.KitItem;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Tick;

/** What somebody puts their name to. */
enum TickKind {
    PACKED(Literals.KIT_ITEM__TICK, '1'), CHECKED(Literals.KIT_ITEM__CHECKED, '2'), TESTED(Literals.KIT_ITEM__TESTED_ON_AIR, '3'),
    RETURNED(Literals.KIT_ITEM__RETURNED, '4');

    private final EReference slot;
    private final char key;

    TickKind(EReference slot, char key) {
        this.slot = slot;
        this.key = key;
    }

    EReference slot() {
        return slot;
    }

    /** The key that ticks or clears it. */
    char key() {
        return key;
    }

    /** Null where nobody has ticked. */
    Tick of(KitItem item) {
        return (Tick) item.eGet(slot);
    }
}
