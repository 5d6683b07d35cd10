package org.straddle.outlook;

import org.straddle.model.Identified;

/**
 * Something in the event that keeps a part of the outlook from being computed.
 *
 * @param object   what it is about
 * @param sentence what is wrong and what to do, for the user
 */
public record Trouble(Identified object, String sentence) {
}
