package org.straddle.ui.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class MenuLettersTest {

    @Test
    void eachEntryHasALetterOfItsOwnWhileThereAreAny() {
        MenuLetters letters = new MenuLetters("r");
        assertEquals("&Map", letters.lettered("Map"));
        assertEquals("&Passes", letters.lettered("Passes"));
        assertEquals("P&acking", letters.lettered("Packing"));
        assertEquals("R&each", letters.lettered("Reach"), "R is taken by the menu");
        assertEquals("Ma", letters.lettered("Ma"), "no letter is left");
        assertEquals("&Bed && breakfast", letters.lettered("Bed & breakfast"));
    }
}
