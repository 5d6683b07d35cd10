package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlugTest {

    @ParameterizedTest
    @CsvSource({"Long Gravel Bank,long-gravel-bank", "Þórsmörk – Æð & Øst,thorsmork-aed-ost", "  ..//..  ,site", "İstanbul,istanbul",
        "東,site", "NUL,nul-site", "com7,com7-site", "com77,com77", "ﬁre ½,fire-1-2", "-a-,a"})
    void asciiLowerCase(String name, String slug) {
        assertEquals(slug, Slug.of(name, "site"));
    }

    @Test
    void longNamesAreCut() {
        assertEquals("a".repeat(64), Slug.of("a".repeat(200), "site"));
        assertEquals("a".repeat(63), Slug.of("a".repeat(63) + " b", "site"));
        assertEquals("site", Slug.of(null, "site"));
    }

    @Test
    void takenNamesAreNumbered() {
        assertEquals("cairn-3", Slug.unique("cairn", Set.of("cairn", "cairn-2")::contains));
    }
}
