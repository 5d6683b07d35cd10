package org.straddle.check.gate;

import org.straddle.model.Identified;

/**
 * Something that keeps an item of the gate open.
 *
 * @param thing where somebody looks to settle it
 */
record OpenPoint(String sentence, Identified thing) {
}
