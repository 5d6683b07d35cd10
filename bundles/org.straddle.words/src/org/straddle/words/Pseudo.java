package org.straddle.words;

/** Makes a text strange yet readable: letters with accents, brackets around it, and longer, as other languages are. */
final class Pseudo {

    private static final String PLAIN = "ACDEGHIJKLNORSTUWYZacdeghijklnorstuwyz";
    private static final String ACCENTED = "ÁÇĎÉĜĤÍĴĶĹŃÓŔŜŤÚŴÝŽáçďéĝĥíĵķĺńóŕŝťúŵýž";

    private Pseudo() {
    }

    static String accented(String literal) {
        StringBuilder out = new StringBuilder(literal.length());
        for (int i = 0; i < literal.length(); i++) {
            // Variables of a library, such as ${DEFAULT-VALUE}, and %n stay what they are.
            if (literal.startsWith("${", i) && literal.indexOf('}', i) > 0) {
                int end = literal.indexOf('}', i) + 1;
                out.append(literal, i, end);
                i = end - 1;
            } else if (literal.startsWith("%n", i)) {
                out.append("%n");
                i++;
            } else {
                int at = PLAIN.indexOf(literal.charAt(i));
                out.append(at < 0 ? literal.charAt(i) : ACCENTED.charAt(at));
            }
        }
        return out.toString();
    }

    /** In brackets, a third longer. */
    static String whole(String text) {
        return text.isBlank() ? text : "⟦" + text + " " + "~".repeat(1 + text.length() / 3) + "⟧";
    }
}
