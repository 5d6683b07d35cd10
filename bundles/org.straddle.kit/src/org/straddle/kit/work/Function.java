package org.straddle.kit.work;

/** What a piece of gear can do for a mode of work, or for another piece. */
public enum Function {
    TRANSMIT, RECEIVE, ANTENNA, FEED_LINE, DIPLEXER, PUSH_TO_TALK, HEADSET, POWER, COMPUTER, RECORDING, POSITION, TIME, ADAPTER,
    SUPPORT
}
