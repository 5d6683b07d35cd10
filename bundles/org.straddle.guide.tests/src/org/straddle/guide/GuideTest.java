package org.straddle.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.check.Rule;
import org.straddle.check.rules.StandardRules;
import org.straddle.guide.GuidePage.Section;

class GuideTest {

    @Test
    void everyRuleHasItsPage() {
        assertEquals(StandardRules.all().stream().map(Rule::id).toList(),
                Guide.index().stream().map(GuidePage::rule).toList());
    }

    @Test
    void everyPageHasAllHeadingsWithWordsUnderThem() {
        for (GuidePage page : Guide.index()) {
            assertEquals(Guide.HEADINGS, page.sections().stream().map(Section::heading).toList(), page.rule());
            page.sections().forEach(section -> assertFalse(section.text().isBlank(), page.rule()));
        }
    }

    @Test
    void noPagePromisesThatNothingCanHappen() {
        List<String> promising = Guide.index().stream().filter(page -> page.sections().stream()
                .anyMatch(section -> section.text().matches("(?is).*\\bsafe(ly|ty)?\\b.*"))).map(GuidePage::rule).toList();
        assertEquals(List.of(), promising);
    }

    @Test
    void whatIsNoRuleHasNoPage() {
        assertTrue(Guide.page("no-such-rule").isEmpty());
    }
}
