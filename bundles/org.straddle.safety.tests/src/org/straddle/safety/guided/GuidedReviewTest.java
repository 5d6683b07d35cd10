package org.straddle.safety.guided;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.model.Event;
import org.straddle.model.Forecast;
import org.straddle.model.Fresh;
import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Operator;
import org.straddle.model.Review;
import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;

/** A site with a road and no hazards written down, a team with a mast and a radio, and a stop of an evening. */
class GuidedReviewTest {

    private static final LocalDate DAY = LocalDate.parse("2031-06-20");

    private final Event event = Fresh.event("Ridge rove", "UTC", DAY, DAY);
    private final Site site = Fresh.site();
    private final Visit visit = Fresh.visit();
    private final KitItem mast = Fresh.kitItem();

    @BeforeEach
    void make() {
        site.setName("Gate");
        site.setLatitudeDeg(42);
        site.setLongitudeDeg(-72);
        visit.setDate(LocalDate.parse("2031-06-01"));
        visit.setRoadSpeedKmh(90);
        visit.setPhoneCoverage("none");
        site.getVisits().add(visit);
        event.getSites().add(site);
        Kit kit = Fresh.kit();
        mast.setName("Mast");
        mast.setRaisedM(8);
        kit.getItems().add(mast);
        event.getKits().add(kit);
        Team team = Fresh.team();
        team.setNumber(1);
        team.getKits().add(kit);
        Operator ann = Fresh.operator();
        ann.setName("Ann");
        event.getOperators().add(ann);
        team.getOperators().add(ann);
        event.getTeams().add(team);
        if (event.getPlan() == null) {
            event.setPlan(Fresh.plan());
        }
        Stop stop = Fresh.stop(team, site, Instant.parse("2031-06-20T15:00:00Z"), Instant.parse("2031-06-20T17:00:00Z"));
        event.getPlan().getStops().add(stop);
    }

    private List<HazardProposal> proposals(OptionalDouble wiresM) {
        Outlook outlook = Outlook.of(event, null);
        List<Stay> stays = Itinerary.of(event).at(site);
        return HazardProposals.open(outlook, site, stays, DAY, wiresM);
    }

    private List<HazardKind> kinds() {
        return proposals(OptionalDouble.empty()).stream().map(HazardProposal::kind).toList();
    }

    @Test
    void factsProposeHazardsAndSayWhy() {
        assertEquals(List.of(HazardKind.TRAFFIC, HazardKind.REMOTENESS, HazardKind.OTHER), kinds());
        assertEquals("traffic passes at 90 km/h.", proposals(OptionalDouble.empty()).get(0).because());
        mast.setRaisedM(2);
        visit.setRoadSpeedKmh(0);
        visit.setPhoneCoverage("good");
        assertEquals(List.of(), kinds(), "without facts nothing is proposed");
        mast.setTransmitsW(50);
        assertEquals(List.of(HazardKind.RADIO_FIELD), kinds());
    }

    @Test
    void wiresComeFromTheVisitElseFromAMapThatShowsThemNear() {
        assertEquals("a map of the event shows wires 35 m away.", proposals(OptionalDouble.of(35.9)).stream()
                .filter(proposal -> proposal.kind() == HazardKind.POWER_LINE).findFirst().orElseThrow().because());
        assertTrue(proposals(OptionalDouble.of(201)).stream().noneMatch(proposal -> proposal.kind() == HazardKind.POWER_LINE));
        visit.getOverheadLines().add(StraddleFactory.eINSTANCE.createOverheadLine());
        visit.getOverheadLines().get(0).setDistanceM(20);
        assertEquals(1, proposals(OptionalDouble.of(35)).stream().filter(proposal -> proposal.kind() == HazardKind.POWER_LINE).count());
    }

    @Test
    void darknessAndForecastsProposeTheirs() {
        event.getPlan().getStops().get(0).setDeparture(Instant.parse("2031-06-21T02:00:00Z"));
        assertTrue(kinds().contains(HazardKind.FOOTING), "the sun sets there about 00:30 UTC");
        Forecast forecast = StraddleFactory.eINSTANCE.createForecast();
        forecast.setDay(DAY);
        forecast.setThunder(true);
        forecast.setWarmestDegC(38.0);
        forecast.setHumidityPercent(60.0);
        event.getForecasts().add(forecast);
        assertTrue(kinds().containsAll(List.of(HazardKind.LIGHTNING, HazardKind.HEAT)), kinds().toString());
    }

    private GuidedReview begin() {
        return GuidedReview.begin(site, DAY, event.getPolicies(), proposals(OptionalDouble.empty()));
    }

    private static GuidedReview answer(GuidedReview review, String id, String answer) {
        Question question = review.questions().stream().filter(each -> each.id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError(id + " is not asked"));
        assertEquals(java.util.Optional.empty(), review.problem(question, answer));
        return review.with(question, answer);
    }

    private static GuidedReview signed(GuidedReview begun) {
        GuidedReview review = answer(begun, "wires", "no");
        review = answer(review, "hazard0.here", "yes");
        review = answer(review, "hazard0.measure", "A lookout stands at the bend");
        review = answer(review, "hazard0.owner", "Ann");
        review = answer(review, "hazard0.severityLeft", "CRITICAL");
        review = answer(review, "hazard0.probabilityLeft", "IMPROBABLE");
        review = answer(review, "hazard1.here", "no");
        review = answer(review, "hazard1.reason", "The ranger's radio works here");
        review = answer(review, "hazard2.here", "yes");
        review = answer(review, "verdict", "ON_CONDITIONS");
        review = answer(review, "conditions", "by daylight");
        return answer(review, "name", "Ann");
    }

    @Test
    void itBeginsWithTheLastVisitAndAsksWhatIsStillOpen() {
        GuidedReview review = begin();
        assertEquals("90", review.answer(review.questions().get(0)));
        assertFalse(review.problems().isEmpty());
        assertThrows(IllegalStateException.class, review::visit);
        assertTrue(review.questions().stream().noneMatch(question -> question.id().equals("wires.distance")), "only after a yes");
        assertTrue(answer(review, "wires", "yes").questions().stream().anyMatch(question -> question.id().equals("wires.distance")));
    }

    @Test
    void theAnswersBecomeANewVisitAndAReviewOfIt() {
        GuidedReview review = signed(begin());
        assertEquals(List.of(), review.problems());
        Visit fresh = review.visit();
        assertEquals(90, fresh.getRoadSpeedKmh());
        assertEquals(DAY, fresh.getDate());
        assertEquals("Ann", fresh.getVisitor());
        Hazard traffic = fresh.getHazards().get(0);
        assertEquals(HazardKind.TRAFFIC, traffic.getKind());
        assertEquals("A lookout stands at the bend", traffic.getMeasure());
        assertEquals(RiskSeverity.CRITICAL, traffic.getSeverityLeft());
        assertEquals(RiskProbability.IMPROBABLE, traffic.getProbabilityLeft());
        assertEquals(RiskSeverity.NOT_RATED, traffic.getSeverity(), "nobody rated it");
        assertEquals("The ranger's radio works here", fresh.getDeclinedHazards().get(0).getReason());
        assertEquals(List.of(visit), site.getVisits(), "adding it is the caller's, in a command");
        site.getVisits().add(fresh);
        Review signature = review.review(fresh, Instant.parse("2031-06-20T10:00:00Z"));
        assertEquals(fresh, signature.getVisit());
        assertEquals("by daylight", signature.getConditions());
        assertEquals(List.of(), proposals(OptionalDouble.empty()), "each was accepted or declined");
        fresh.setPhoneCoverage("poor");
        assertEquals(1, proposals(OptionalDouble.empty()).size(), "other facts ask again");
    }

    @ParameterizedTest
    @CsvSource({"road,-1", "road,201", "road,fast", "road,NaN", "road,Infinity", "road,''", "until,20 June", "until,2031-02-30", "wires,perhaps", "wires,''"})
    void whatCannotBeIsRefusedInWords(String id, String answer) {
        GuidedReview review = begin();
        Question question = review.questions().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
        assertTrue(review.problem(question, answer).orElseThrow().matches("[A-Z].*\\."));
    }

    @Test
    void everyQuestionCanBeReadAloud() {
        GuidedReview review = answer(answer(begin(), "hazard0.here", "yes"), "wires", "yes");
        assertTrue(review.questions().size() > 2, review.questions().toString());
        for (Question question : review.questions()) {
            assertTrue(question.text().endsWith("?") || question.id().equals("name"), question.text());
            assertTrue(question.text().split(" ").length <= 22, question.text());
        }
    }
}
