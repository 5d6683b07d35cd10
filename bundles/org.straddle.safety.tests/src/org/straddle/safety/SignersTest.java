package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.safety.SiteNotation.day;
import static org.straddle.safety.SiteNotation.operator;
import static org.straddle.safety.SiteNotation.policies;
import static org.straddle.safety.SiteNotation.site;

import java.time.Instant;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.model.Contact;
import org.straddle.model.ContactRole;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Operator;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.Verdict;

/** Two teams, of which the first stops at the site: Ann and Ýma with Bo, and Cy. Di has no team. Kit coordinates. */
class SignersTest {

    private static final Instant NOW = Instant.parse("2031-06-20T18:00:00Z");

    private final Site site = site("visit 06-01");
    private final Event event = (Event) site.eContainer();
    private final Team first = team(1, "Ann", "Ýma", "Bo");
    private final Team second = team(2, "Cy");
    private final Stop stop = Fresh.stop();

    @BeforeEach
    void plan() {
        event.getOperators().get(0).setName("nobody in particular");
        operator("Ann").setCallSign("Q0AAR");
        SiteNotation.operator(event, "Di");
        contact(ContactRole.COORDINATOR, "Kit");
        contact(ContactRole.DEPUTY, "Lou");
        contact(ContactRole.HOSPITAL, "Mercy");
        stop.setTeam(first);
        stop.setSite(site);
        event.getPlan().getStops().add(stop);
    }

    private Team team(int number, String... names) {
        Team team = Fresh.team();
        team.setNumber(number);
        for (String name : names) {
            team.getOperators().add(SiteNotation.operator(event, name));
        }
        event.getTeams().add(team);
        return team;
    }

    private Operator operator(String name) {
        return event.getOperators().stream().filter(each -> each.getName().equals(name)).findFirst().orElseThrow();
    }

    private void contact(ContactRole role, String name) {
        Contact contact = StraddleFactory.eINSTANCE.createContact();
        contact.setRole(role);
        contact.setName(name);
        event.getContacts().add(contact);
    }

    private Optional<String> refused(String name) {
        return SignOff.signerProblem(site, name, Verdict.GO_WITH_CARE);
    }

    private Review signed(String name, String other) {
        Review review = Fresh.review();
        review.setDate(day("06-02"));
        review.setReviewer(name);
        review.setSecond(other);
        review.setSecondAt(NOW);
        site.getReviews().add(review);
        return review;
    }

    private ReviewState state() {
        return SafetyNotes.of(site, day("06-20"), policies()).state();
    }

    /** The last one is typed as letter and accent. */
    @ParameterizedTest
    @ValueSource(strings = {"Ann", " ann ", "q0aar", "Q0AAR\t", "BO", "ýma", "Y\u0301ma"})
    void anOperatorOfTheTeamThatStopsThereSignsFirst(String name) {
        assertEquals(Optional.empty(), refused(name));
        assertSame(first, new SignOff(name, day("06-20"), Verdict.GO_WITH_CARE, "", day("06-30")).review(site, NOW).getTeam());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Cy", "Di", "Kit", "Lou", "Mercy", "An", "Ann Bo", "Sam", "team 1", "Q0AAR/P"})
    void anybodyElseDoesNotAndIsToldWhoMay(String name) {
        assertEquals("Only an operator of team 1 may sign first: Ann (Q0AAR), Ýma or Bo.", refused(name).orElseThrow());
        signed(name, "Ann");
        assertEquals("signer unknown", state().word());
        assertFalse(state().holds());
        assertTrue(state().sentence().contains(name) && state().sentence().endsWith("Ann (Q0AAR), Ýma or Bo."), state().sentence());
    }

    @Test
    void anOperatorOfTheTeamThatTheReviewNamesSignsFirst() {
        Review review = signed("Cy", "Ann");
        assertEquals("signer unknown", state().word());
        review.setTeam(second);
        assertEquals("valid", state().word());
        review.setReviewer("Di");
        assertEquals("signer unknown", state().word());
    }

    @Test
    void whileNoTeamStopsThereAnyOperatorSignsAndTheReviewNamesTheirTeam() {
        event.getPlan().getStops().clear();
        for (String name : new String[] {"Ann", "Cy", "Di"}) {
            assertEquals(Optional.empty(), refused(name));
        }
        assertSame(second, new SignOff("cy", day("06-20"), Verdict.GO_WITH_CARE, "", day("06-30")).review(site, NOW).getTeam());
        assertNull(new SignOff("Di", day("06-20"), Verdict.GO_WITH_CARE, "", day("06-30")).review(site, NOW).getTeam());
        assertTrue(refused("Kit").orElseThrow().startsWith("Only an operator of this event may sign first: "));
        signed("Cy", "Ann").setTeam(second);
        stop.setTeam(first);
        event.getPlan().getStops().add(stop);
        assertEquals("valid", state().word(), "a plan that comes later does not make a stranger of a signer");
    }

    @Test
    void withoutOperatorsTheFormAsksForThem() {
        first.getOperators().clear();
        assertEquals("No operator is in team 1: enter its people first.", refused("Ann").orElseThrow());
        event.getPlan().getStops().clear();
        event.getOperators().clear();
        assertEquals("This event names no operator: enter its people first.", refused("Ann").orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"Bo, valid", "Cy, valid", " di, valid", "KIT, valid", "Lou, valid", "Ann, signed once", "q0aar, signed once",
        "Mercy, signer unknown", "Sam, signer unknown", "'', signed once"})
    void theSecondIsSomebodyElseOfTheEvent(String name, String word) {
        Review review = signed("Ann", name);
        assertEquals(word, state().word());
        assertEquals(!word.equals("valid"), new SecondSignature(name, NOW).problem(site, review).isPresent());
        assertEquals(!word.equals("valid"), SecondSignature.awaited(site, day("06-20"), policies()).isPresent(), "may be signed by another");
    }

    @Test
    void aCoordinatorWhoIsAnOperatorTooSignsOnce() {
        contact(ContactRole.DEPUTY, "Ann");
        signed("Q0AAR", "ann");
        assertEquals("signed once", state().word());
    }

    @Test
    void onlyWhoMaySignLiftsARefusal() {
        signed("Ann", "Bo").setVerdict(Verdict.DO_NOT_USE);
        Review review = signed("Sam", "Bo");
        assertEquals("refused", state().word());
        review.setReviewer("Bo");
        review.setSecond("Kit");
        assertEquals("valid", state().word());
    }

    @Test
    void anybodyOfTheEventCallsASiteOff() {
        for (String name : new String[] {"Cy", "Di", "Kit", "Lou"}) {
            assertEquals(Optional.empty(), SignOff.signerProblem(site, name, Verdict.DO_NOT_USE));
        }
        assertTrue(SignOff.signerProblem(site, "Sam", Verdict.DO_NOT_USE).isPresent());
        signed("Sam", "").setVerdict(Verdict.DO_NOT_USE);
        assertEquals("refused", state().word(), "one that stands in a file counts whoever wrote it");
    }

    @Test
    void whoLeavesTheEventTakesTheSignatureAlong() {
        signed("Ann", "Bo");
        assertEquals("valid", state().word());
        first.getOperators().remove(operator("Ann"));
        assertEquals("signer unknown", state().word());
    }
}
