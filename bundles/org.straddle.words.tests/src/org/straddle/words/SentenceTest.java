package org.straddle.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;

import org.junit.jupiter.api.Test;

class SentenceTest {

    @Test
    void aSentenceBeginsWithACapital() {
        assertEquals("Team 1 drives", Sentence.begun("team 1 drives"));
        assertEquals("", Sentence.begun(""));
        assertEquals("2 turns", Sentence.begun("2 turns"));
    }

    @Test
    void lettersOutsideTheFirstPlaneAndOfOneLanguageAreKept() {
        assertEquals("\uD801\uDC00b", Sentence.begun("\uD801\uDC28b"), "a letter of two units");
        assertEquals("İz", Sentence.begun("iz", Locale.forLanguageTag("tr")));
    }
}
