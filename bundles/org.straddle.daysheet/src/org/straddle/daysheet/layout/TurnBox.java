package org.straddle.daysheet.layout;

import java.util.Optional;

import org.straddle.daysheet.sheet.PlacedTurn;

/**
 * A turn: a hatched block as long as the turn, its words inside or behind it.
 *
 * @param mark of its findings; without room for it the stop's mark counts them
 * @param peak x of TCA, if it is in the block
 */
public record TurnBox(PlacedTurn turn, Box box, Optional<Label> label, Optional<MarkBox> mark,
        Optional<Integer> peak) implements SheetPart {
}
