package org.straddle.kit.work;

/**
 * One thing that a mode of work needs of the kit.
 *
 * @param kind what it is
 * @param band the band, empty where it has none
 * @param of   name of the gear that the club marked as needed, empty for all other kinds
 */
public record Requirement(Kind kind, String band, String of) {

    /** What a requirement asks for. */
    public enum Kind {
        TRANSMIT, RECEIVE, ANTENNA, FEED_LINE, PUSH_TO_TALK, POWER, COMPUTER, TWO_RADIOS, TWO_FEED_LINES, HANDHELD, RECORDING,
        POSITION, TIME, MARKED_ITEM
    }
}
