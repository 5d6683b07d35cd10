package org.straddle.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.straddle.check.Rule;
import org.straddle.check.run.StandardRules;
import org.straddle.guide.GuidePage.Section;

class GuideTest {

    @Test
    void everyRuleHasItsPage() {
        assertEquals(StandardRules.all().stream().map(Rule::id).toList(),
                Guide.index().stream().map(GuidePage::rule).toList());
    }

    @Test
    void everyPageHasAllHeadingsWithWordsUnderThem() {
        assertFalse(Guide.index().isEmpty());
        for (GuidePage page : Guide.index()) {
            assertEquals(Guide.HEADINGS, page.sections().stream().map(Section::heading).toList(), page.rule());
            page.sections().forEach(section -> assertFalse(section.text().isBlank(), page.rule()));
        }
    }

    @Test
    void whatAPageRefersToIsAnotherPage() {
        for (GuidePage page : Guide.index()) {
            page.seeAlso().forEach(other -> assertTrue(Guide.page(other).isPresent() && !other.equals(page.rule()),
                    page.rule() + " refers to " + other));
            assertEquals(Set.copyOf(page.seeAlso()).size(), page.seeAlso().size(), page.rule());
        }
        assertTrue(Guide.index().stream().anyMatch(page -> !page.seeAlso().isEmpty()));
    }

    @Test
    void noPagePromisesThatNothingCanHappen() {
        List<String> promising = Guide.index().stream().filter(page -> page.sections().stream()
                .anyMatch(section -> section.text().matches("(?is).*\\bsafe(ly|ty)?\\b.*"))).map(GuidePage::rule).toList();
        assertEquals(List.of(), promising);
    }

    @Test
    void whatIsNoRuleHasNoPage() throws IOException {
        assertTrue(Guide.page("no-such-rule").isEmpty());
        Path pages = Path.of("").toAbsolutePath().resolveSibling("org.straddle.guide/src/org/straddle/guide/pages");
        Set<String> rules = StandardRules.all().stream().map(rule -> rule.id() + ".txt").collect(Collectors.toSet());
        try (Stream<Path> files = Files.list(pages)) {
            assertEquals(List.of(), files.map(file -> file.getFileName().toString()).filter(name -> !rules.contains(name))
                    .toList());
        }
    }
}
