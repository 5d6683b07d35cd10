package org.straddle.publish;

/**
 * One file of a publication.
 *
 * @param fileName without folder; letters, digits, hyphens and one dot
 * @param text whole content, written as UTF-8
 */
public record Sheet(Audience audience, String fileName, String text) {
}
