package org.straddle.outlook;

import org.straddle.model.Identified;

/**
 * Something in the event that keeps a part of the outlook from being computed.
 *
 * @param kind     what sort of thing it is
 * @param object   what it is about
 * @param sentence what is wrong and what to do, for the user
 */
public record Trouble(Kind kind, Identified object, String sentence) {

    /** What sort of thing keeps a part of the outlook from being computed. */
    public enum Kind {
        /** The time zone is not known. */
        TIME_ZONE,
        /** There are no days, or far too many. */
        DAYS,
        /** A demand names no square. */
        DEMAND_SQUARE,
        /** A site or base has a position that cannot be. */
        POSITION,
        /** A point of a horizon mask cannot be. */
        HORIZON,
        /** A region where chasers live has no area that can be made out. */
        REGION,
        /** A jurisdiction has no area that can be made out. */
        JURISDICTION,
        /** A bird has no element set. */
        ELEMENTS_MISSING,
        /** An element set cannot be used, or the bird comes down. */
        ELEMENTS_UNUSABLE
    }
}
