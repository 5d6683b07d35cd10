package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.safety.SiteNotation.day;
import static org.straddle.safety.SiteNotation.policies;
import static org.straddle.safety.SiteNotation.site;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Verdict;

class SignOffTest {

    private static final Instant NOW = Instant.parse("2031-06-20T18:00:00Z");

    private static final SignOff GOOD = new SignOff(" Q0AAR ", day("06-20"), Verdict.GO_WITH_CARE, " ", day("06-30"));

    @Test
    void startsWithTheExpiryOfThePolicies() {
        assertEquals(day("08-19"), SignOff.on(day("06-20"), policies()).expires());
    }

    /** As everywhere: a length of time that makes no sense is taken as the usual one. */
    @Test
    void aPolicyOfZeroDaysIsTheUsualOne() {
        Policies none = StraddleFactory.eINSTANCE.createPolicies();
        none.setReviewValidityDays(0);
        none.setVisitAgeLimitDays(0);
        assertEquals(day("08-19"), SignOff.lastDay(day("06-20"), none));
        Site site = site("visit 06-01");
        assertEquals(SafetyNotes.of(site, day("06-20"), policies()).remarks(), SafetyNotes.of(site, day("06-20"), none).remarks());
    }

    @Test
    void theReviewNamesTheNewestVisitOfItsDay() {
        Site site = site("visit 06-01; visit 06-10; visit 06-21");
        Review review = GOOD.review(site, NOW);
        assertSame(site.getVisits().get(1), review.getVisit());
        assertEquals("Q0AAR", review.getReviewer());
        assertNull(review.getConditions());
        assertEquals(List.of(), site.getReviews(), "adding it is the caller's, in a command");
        assertEquals(NOW, review.getSignedAt());
        site.getReviews().add(review);
        assertEquals(new ReviewState.SignedOnce("Q0AAR"), state(site), "one signature opens nothing");
        assertSame(review, SecondSignature.awaited(site, day("06-20"), policies()).orElseThrow());
        review.setSecond("Q3DUN");
        assertEquals(new ReviewState.SignedOnce("Q0AAR"), state(site), "a name without a time is no signature");
        review.setSecondAt(NOW);
        assertEquals(new ReviewState.Valid("Q0AAR", day("06-20"), day("06-30"), "", "Q3DUN"), state(site));
        assertEquals(Optional.empty(), SecondSignature.awaited(site, day("06-20"), policies()));
    }

    @Test
    void aNewReviewLiftsARefusal() {
        Site site = site("review 06-20 by A refuse");
        sign(site);
        assertEquals("valid", SafetyNotes.of(site, day("06-20"), policies()).state().word());
    }

    @Test
    void saysWhatIsStillWrong() {
        assertEquals(List.of(), GOOD.problems(site("")));
        assertProblem("Enter your name", new SignOff(" ", day("06-20"), Verdict.GO_WITH_CARE, "", day("06-20")));
        assertProblem("Say what the conditions are",
                new SignOff("A", day("06-20"), Verdict.ON_CONDITIONS, " ", day("06-20")));
        assertProblem("Say why", new SignOff("A", day("06-20"), Verdict.DO_NOT_USE, null, day("06-20")));
        assertProblem("The last day, 19 Jun 2031, is before",
                new SignOff("A", day("06-20"), Verdict.GO_WITH_CARE, "", day("06-19")));
        assertProblem("Enter both days", new SignOff("A", day("06-20"), Verdict.GO_WITH_CARE, "", null));
    }

    @Test
    void theSecondSignatureIsSomebodyElses() {
        Site site = site("visit 06-01");
        Review review = GOOD.review(site, NOW);
        assertEquals(Optional.empty(), new SecondSignature("Q3DUN", NOW).problem(site, review));
        assertTrue(new SecondSignature(" ", NOW).problem(site, review).isPresent());
        assertEquals("Q0AAR signed already: the second signature is somebody else's.",
                new SecondSignature(" q0aar ", NOW).problem(site, review).orElseThrow());
    }

    private static ReviewState state(Site site) {
        return SafetyNotes.of(site, day("06-20"), policies()).state();
    }

    private static void sign(Site site) {
        Review review = GOOD.review(site, NOW);
        review.setSecond("Q3DUN");
        review.setSecondAt(NOW);
        site.getReviews().add(review);
    }

    private static void assertProblem(String start, SignOff signOff) {
        assertEquals(List.of(true), signOff.problems(site("")).stream().map(text -> text.startsWith(start)).toList());
        assertThrows(IllegalStateException.class, () -> signOff.review(site(""), NOW));
    }
}
