package org.straddle.daysheet.layout;

import java.util.List;
import java.util.Optional;

/**
 * What lies over the sheet while something is carried, and what there is to say.
 *
 * @param lit places that fit
 */
public record Overlay(List<Box> lit, Optional<Ghost> ghost, Optional<Message> message) {

    public static final Overlay NONE = new Overlay(List.of(), Optional.empty(), Optional.empty());

    /**
     * Where the carried thing would come to lie.
     *
     * @param fits    whether nothing would be wrong with it
     * @param balloon around the lines beside it
     * @param mark    the square for a tick or a cross before the lines
     */
    public record Ghost(Box box, boolean fits, Box balloon, Box mark, List<Label> lines) {
    }

    /** Lines at the foot of the lanes. */
    public record Message(Box box, Box mark, List<Label> lines, boolean trouble) {
    }
}
