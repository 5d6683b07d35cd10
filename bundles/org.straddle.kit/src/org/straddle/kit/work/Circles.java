package org.straddle.kit.work;

import java.util.List;

/** Gear whose needs are met only by way of itself. */
public final class Circles {

    private Circles() {
    }

    /** Gear that never works, because what it needs comes only from itself or from things that need it in turn. */
    public static List<Gear> in(List<Gear> kit) {
        return new Pieces(kit).circular();
    }
}
