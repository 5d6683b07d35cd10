package org.straddle.daysheet.layout;

import java.util.List;
import java.util.Optional;

import org.straddle.daysheet.fits.FittingPlace;
import org.straddle.daysheet.fits.Landing;

/**
 * What is carried over the sheet.
 *
 * @param turn   whether it is a turn, else a stop
 * @param places where it fits, as far as they are known by now
 * @param words  lines about the landing
 */
public record Carry(boolean turn, List<FittingPlace> places, Optional<Landing> landing, List<String> words) {
}
