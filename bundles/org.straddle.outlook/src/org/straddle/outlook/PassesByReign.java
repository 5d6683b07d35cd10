package org.straddle.outlook;

import java.time.Instant;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;

import org.straddle.sky.Pass;

/**
 * The passes of a bird that has several element sets. A pass belongs to the set in whose reign it begins. Two sets may
 * disagree by seconds about a pass at the change of reign: the later set's pass counts unless the earlier set's already
 * does.
 */
final class PassesByReign implements Iterator<Pass> {

    private final Iterator<ElementSets.Reign> reigns;
    private final Iterator<Iterator<Pass>> passesOfReigns;
    private ElementSets.Reign reign;
    private Iterator<Pass> passes;
    private Instant lastLos = Instant.MIN;
    private Pass next;

    /** @param passes of the set of each reign, by time, in the order of the reigns */
    PassesByReign(List<ElementSets.Reign> reigns, List<Iterator<Pass>> passes) {
        this.reigns = reigns.iterator();
        this.passesOfReigns = passes.iterator();
    }

    @Override
    public boolean hasNext() {
        while (next == null && (passes != null || nextReign())) {
            look();
        }
        return next != null;
    }

    private boolean nextReign() {
        if (!reigns.hasNext()) {
            return false;
        }
        reign = reigns.next();
        passes = passesOfReigns.next();
        return true;
    }

    private void look() {
        Pass pass = passes.hasNext() ? passes.next() : null;
        if (pass == null || !pass.aos().isBefore(reign.window().end())) {
            passes = null;
        } else if (!lastLos.isAfter(pass.aos()) && pass.window().overlaps(reign.window())) {
            next = pass;
            lastLos = pass.los();
        }
    }

    @Override
    public Pass next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        Pass taken = next;
        next = null;
        return taken;
    }
}
