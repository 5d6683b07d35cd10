package org.straddle.plan.problem;

/**
 * A chance for a turn: the part of a pass in which a bird can be worked from a site. Times are seconds from
 * the problem's origin.
 *
 * @param site  index of the site
 * @param bird  index of the bird
 * @param start first second
 * @param end   first second after; later than {@code start}
 * @param service what working it is to the chasers
 */
public record Chance(int site, int bird, int start, int end, Service service) {

    public Chance {
        if (start >= end) {
            throw new IllegalArgumentException("A chance must end after it starts: " + start + " to " + end);
        }
    }

    public boolean overlaps(Chance other) {
        return start < other.end && other.start < end;
    }
}
