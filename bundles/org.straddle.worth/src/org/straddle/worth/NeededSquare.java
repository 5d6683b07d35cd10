package org.straddle.worth;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.straddle.grid.Square;
import org.straddle.model.Chaser;
import org.straddle.model.Event;

/**
 * A square that chasers of an event's list need.
 *
 * @param callSigns of those who need it, in the alphabet
 */
public record NeededSquare(Square square, List<String> callSigns) {

    public NeededSquare {
        callSigns = List.copyOf(callSigns);
    }

    /** What the list of an event asks for, needed most first; names that are no squares are left out. */
    public static List<NeededSquare> of(Event event) {
        Map<Square, Set<String>> who = new TreeMap<>();
        for (Chaser chaser : event.getChaserList()) {
            Set<Square> needed = new HashSet<>();
            chaser.getSquares().forEach(name -> Square.named(name).ifPresent(needed::add));
            needed.forEach(square -> who.computeIfAbsent(square, any -> new TreeSet<>())
                    .add(chaser.getCallSign() == null ? "" : chaser.getCallSign()));
        }
        return who.entrySet().stream().map(each -> new NeededSquare(each.getKey(), List.copyOf(each.getValue())))
                .sorted(Comparator.comparingInt((NeededSquare each) -> each.callSigns.size()).reversed()
                        .thenComparing(NeededSquare::square)).toList();
    }
}
