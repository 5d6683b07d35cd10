package org.straddle.kit.work;

import java.util.BitSet;
import java.util.List;

/** Gear whose failure together stops a mode of work, and none of which could be left out; twice the same for two pieces. */
public record Failure(List<Gear> gear) {

    public Failure {
        gear = List.copyOf(gear);
    }

    static Failure of(BitSet cut, Pieces pieces) {
        return new Failure(cut.stream().mapToObj(pieces::gear).toList());
    }
}
