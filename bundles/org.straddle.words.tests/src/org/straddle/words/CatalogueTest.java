package org.straddle.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CatalogueTest {

    private static final Catalogue TEXTS = Catalogue.of(CatalogueTest.class, "sample");

    enum Kind {
        LINE, CORNER
    }

    @Test
    void saysTexts() {
        assertEquals("Grüße an Old pier", TEXTS.text("greeting", "site", "Old pier"));
        assertEquals("on the line", TEXTS.text(Kind.LINE));
    }

    @Test
    void anotherLanguageIsAFileThatFallsBackOnEnglish() {
        Catalogue german = TEXTS.in(Language.of("de"));
        assertEquals("auf der Linie", german.text(Kind.LINE));
        assertEquals("at the corner", german.text(Kind.CORNER));
    }

    @Test
    void aTextThatIsMissingNeverFails() {
        assertEquals("<nothing.here>", TEXTS.text("nothing.here", "a", 1));
        assertFalse(TEXTS.has("nothing.here"));
    }

    @Test
    void everyTextOfPseudoIsBracketed() {
        String pseudo = TEXTS.in(Language.PSEUDO).text("greeting", "site", "x");
        assertTrue(pseudo.startsWith("⟦Ĝŕüßé") && pseudo.endsWith("~⟧"), pseudo);
    }
}
