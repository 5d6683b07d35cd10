package org.straddle.sky;

/** A file is no Earth orientation data, or is damaged. The message names it and says what to do. */
public final class EarthOrientationException extends IllegalArgumentException {

    /** What to do about it, a sentence. */
    public static final String WHAT_TO_DO = "Take finals2000A.daily, finals2000A.all or eopc04 as the IERS publishes them.";

    private static final int LONGEST = 160;

    private static final long serialVersionUID = 1L;

    private final String reason;

    EarthOrientationException(String file, String reason, Throwable cause) {
        super(file + " cannot be read as Earth orientation data: " + plain(reason) + ". " + WHAT_TO_DO, cause);
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
