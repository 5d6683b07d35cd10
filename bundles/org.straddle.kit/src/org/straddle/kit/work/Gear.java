package org.straddle.kit.work;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One line of a kit.
 *
 * @param id        tells it from all others
 * @param pieces    how many there are, 0 or more
 * @param gives     functions that it gives
 * @param needs     functions that it needs of other gear before it works
 * @param duplex    can a radio receive while it transmits on another band?
 * @param works     modes of work that it is for; empty means all
 * @param needed    did the club say that work is impossible without it or its spare?
 * @param spareFor  id of the gear that it can stand in for
 * @param cents     price of one piece, hundredths of the event's money, 0 or more
 * @param grams     weight of one piece, 0 or more
 */
public record Gear(String id, String name, int pieces, List<Ability> gives, List<Ability> needs, boolean duplex,
        Set<Work> works, boolean needed, Optional<String> spareFor, long cents, long grams) {

    public Gear {
        gives = List.copyOf(gives);
        needs = List.copyOf(needs);
        works = Set.copyOf(works);
        pieces = Math.max(0, pieces);
        cents = Math.max(0, cents);
        grams = Math.max(0, grams);
    }

    boolean gives(Ability wanted) {
        for (Ability given : gives) {
            if (given.meets(wanted)) {
                return true;
            }
        }
        return false;
    }

    boolean isFor(Work work) {
        return work == Work.PROOF || works.isEmpty() || works.contains(work);
    }

    /** As it is while it only lies in stock: nobody has said that work needs it. */
    Gear unmarked() {
        return new Gear(id, name, pieces, gives, needs, duplex, works, false, spareFor, cents, grams);
    }

    /** Can it replace the other piece for piece? Then only price and weight tell them apart. */
    Object kind() {
        return List.of(gives, needs, duplex, works, spareFor);
    }
}
