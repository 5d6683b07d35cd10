package org.straddle.safety.explain;

/**
 * One figure, or why there is none.
 *
 * @param what such as "Stopping distance"
 * @param sentence the figure in a sentence with what it follows from, or what is missing
 * @param source published source and range
 * @param known false where it could not be worked out
 * @param ofTheDay hangs on weather, sun or radio, so that the notes of the site do not have it
 */
public record Figure(String what, String sentence, String source, boolean known, boolean ofTheDay) {
}
