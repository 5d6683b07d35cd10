package org.straddle.kit.work;

/**
 * A mode of work on the bands of a bird.
 *
 * @param uplink   band to transmit on, such as {@code 2m}; empty when the bird's frequency is not known
 * @param downlink band to receive on
 */
public record Task(Work work, String uplink, String downlink) {

    public Task {
        uplink = uplink == null ? "" : uplink;
        downlink = downlink == null ? "" : downlink;
    }

    /** Evidence that needs no band. */
    public static Task proof() {
        return new Task(Work.PROOF, "", "");
    }
}
