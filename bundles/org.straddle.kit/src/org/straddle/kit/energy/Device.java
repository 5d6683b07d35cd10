package org.straddle.kit.energy;

/**
 * Something that draws, in its three states.
 *
 * @param transmitW  while it transmits, W
 * @param receiveW   while it receives, W
 * @param idleW      while the team stands ready between turns, W
 */
public record Device(String name, double transmitW, double receiveW, double idleW) {

    /** Of a turn, the part that a station transmits at most: half of the time is the other's. Common practice, no source. */
    public static final double TRANSMITS = 0.5;

    /** The same where nobody switches it off between turns: it goes on receiving. */
    public Device leftOn() {
        return new Device(name, transmitW, receiveW, Math.max(idleW, receiveW));
    }

    /** Average draw in a turn, W; a device that draws more receiving than transmitting is taken at that. */
    public double turnW() {
        return Math.max(receiveW, TRANSMITS * transmitW + (1 - TRANSMITS) * receiveW);
    }
}
