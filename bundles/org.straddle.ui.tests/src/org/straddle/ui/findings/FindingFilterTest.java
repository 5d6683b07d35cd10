package org.straddle.ui.findings;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.model.Acceptance;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Site;

class FindingFilterTest {

    private final FindingFilter filter = new FindingFilter();

    @Test
    void severitiesAreSwitchedOff() {
        filter.show(Severity.WARNING, false);
        assertFalse(filter.lets(finding(Severity.WARNING, Optional.empty())));
        assertTrue(filter.lets(finding(Severity.BLOCKER, Optional.empty())));
        filter.show(Severity.WARNING, true);
        assertTrue(filter.lets(finding(Severity.WARNING, Optional.empty())));
    }

    @Test
    void acceptedFindingsShowOnDemand() {
        Finding accepted = finding(Severity.WARNING, Optional.of(Fresh.acceptance()));
        assertFalse(filter.lets(accepted));
        filter.showAccepted(true);
        assertTrue(filter.lets(accepted));
    }

    @Test
    void everyWordMustBeSomewhereInSentencePlaceOrRule() {
        for (String words : List.of("", "  ", "mark", "EIDER mark", "site-far sentence")) {
            filter.words(words);
            assertTrue(filter.lets(finding(Severity.ADVICE, Optional.empty())), words);
        }
        filter.words("eider gannet");
        assertFalse(filter.lets(finding(Severity.ADVICE, Optional.empty())));
    }

    private static Finding finding(Severity severity, Optional<Acceptance> accepted) {
        Site site = Fresh.site();
        site.setName("Eider Point");
        return new Finding("site-far-from-line", severity, Statement.words("A sentence about the mark."),
                List.<Identified>of(site), Optional.empty(), Optional.empty(), "facts", accepted);
    }
}
