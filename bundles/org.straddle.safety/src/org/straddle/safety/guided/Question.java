package org.straddle.safety.guided;

/**
 * One question of a guided review.
 *
 * @param id names its answer
 * @param section heading that it stands under
 * @param text the question in a sentence
 * @param help why it is asked, or what proposes it; may be empty
 * @param needed must it be answered before somebody signs?
 */
public record Question(String id, String section, String text, String help, AnswerKind kind, boolean needed) {
}
