package org.straddle.sky.prediction;

import org.straddle.words.Catalogue;

/** A file is no Earth orientation data, or is damaged. The message names it and says what to do. */
public final class EarthOrientationException extends IllegalArgumentException {

    private static final Catalogue TEXTS = Catalogue.of(EarthOrientationException.class);

    /** What to do about it, a sentence. */
    public static final String WHAT_TO_DO = TEXTS.text("earthOrientationException.takeFinalsDaily");

    private static final int LONGEST = 160;

    private static final long serialVersionUID = 1L;

    private final String reason;

    EarthOrientationException(String file, String reason, Throwable cause) {
        super(TEXTS.text("earthOrientationException.cannotReadAs", "file", file, "plain", plain(reason),
                "whatToDo", WHAT_TO_DO), cause);
        this.reason = plain(reason);
    }

    /** On one line, and not with the whole of a damaged one in it. */
    private static String plain(String reason) {
        String line = String.valueOf(reason).replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
        return line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line;
    }

    /** What is wrong, without a full stop. */
    public String reason() {
        return reason;
    }
}
