package org.straddle.kit.work;

/** A mode of work, as gear sees it. */
public enum Work {
    /** Two-way FM through a bird with a single channel; transmitting and receiving in turn is enough. */
    FM,
    /** Linear transponder, hearing oneself while transmitting: two radios or one duplex radio. */
    LINEAR_FULL_DUPLEX,
    /** Linear transponder with one radio that transmits and receives in turn. */
    LINEAR_HALF_DUPLEX,
    DATA,
    /** Voice with one handheld that carries its own battery and microphone, its antenna on the radio. */
    HANDHELD_VOICE,
    /** Log, position and time: without them contacts are made and the squares cannot be shown. */
    PROOF
}
