package org.straddle.grid;

/** User text as it may be repeated in a message: one line, never long. */
final class Quoted {

    private static final int LONGEST = 60;

    private Quoted() {
    }

    static String shortened(String text) {
        if (text == null) {
            return "";
        }
        String head = text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
        return head.replaceAll("\\p{Cntrl}", " ").strip();
    }
}
