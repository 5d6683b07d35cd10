package org.straddle.ui.workbench;

import java.util.HashSet;
import java.util.Set;

/** Gives each entry of a menu, in turn, the first of its letters that no other entry has. */
final class MenuLetters {

    private final Set<Character> taken = new HashSet<>();

    /** @param taken letters of entries that stand in the same menu and have theirs already */
    MenuLetters(String taken) {
        taken.chars().forEach(letter -> this.taken.add(Character.toLowerCase((char) letter)));
    }

    /** The label with an ampersand before its letter; as it is when none of its letters is free. */
    String lettered(String label) {
        String plain = label.replace("&", "&&");
        for (int at = 0; at < plain.length(); at++) {
            char letter = Character.toLowerCase(plain.charAt(at));
            if (Character.isLetterOrDigit(letter) && taken.add(letter)) {
                return plain.substring(0, at) + "&" + plain.substring(at);
            }
        }
        return plain;
    }
}
