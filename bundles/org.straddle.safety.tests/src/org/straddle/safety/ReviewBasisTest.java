package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.safety.SiteNotation.day;
import static org.straddle.safety.SiteNotation.policies;
import static org.straddle.safety.SiteNotation.site;

import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Event;
import org.straddle.model.Forecast;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.Verdict;

/** A review falls when something under it changes, and says what. */
class ReviewBasisTest {

    private static final Instant SIGNED = Instant.parse("2031-06-02T18:00:00Z");

    private final Site site = site("visit 06-01");
    private final Event event = (Event) site.eContainer();
    private final Team team = Fresh.team();
    private final KitItem mast = Fresh.kitItem();
    private final Stop stop = Fresh.stop();

    @BeforeEach
    void signed() {
        event.getTeams().add(team);
        team.getOperators().addAll(event.getOperators());
        Kit kit = Fresh.kit();
        event.getKits().add(kit);
        team.getKits().add(kit);
        kit.getItems().add(mast);
        mast.setRaisedM(2.6);
        stop.setTeam(team);
        stop.setSite(site);
        stop.setArrival(Instant.parse("2031-06-20T09:00:00Z"));
        event.getPlan().getStops().add(stop);
        Review review = new SignOff("A", day("06-02"), Verdict.GO_WITH_CARE, "", day("06-30")).review(site, SIGNED);
        review.setSecond("B");
        review.setSecondAt(SIGNED);
        site.getReviews().add(review);
    }

    private ReviewState state() {
        return SafetyNotes.of(site, day("06-20"), policies()).state();
    }

    private List<String> changed() {
        return state() instanceof ReviewState.Fallen fallen ? fallen.changed() : List.of();
    }

    @Test
    void holdsWhileNothingChanges() {
        assertTrue(state().holds());
        stop.setArrival(Instant.parse("2031-06-20T11:00:00Z"));
        mast.setNote("scratched");
        assertTrue(state().holds(), "another hour and a scratch are nothing that was reviewed");
    }

    @Test
    void fallsWithTheVisit() {
        site.getVisits().get(0).setRoadSpeedKmh(90);
        assertEquals(List.of("the visit"), changed());
        assertEquals("Since A signed the review, this has changed: the visit. Look again and sign a new one.", state().sentence());
    }

    @Test
    void fallsWithAHigherMast() {
        mast.setRaisedM(8);
        assertEquals(List.of("the kit"), changed());
    }

    @Test
    void fallsWithTheForecastOfItsDayOnly() {
        Forecast forecast = StraddleFactory.eINSTANCE.createForecast();
        forecast.setDay(day("06-21"));
        event.getForecasts().add(forecast);
        assertEquals(List.of(), changed());
        forecast.setDay(day("06-20"));
        forecast.setThunder(true);
        assertEquals(List.of("the forecast"), changed());
    }

    @Test
    void fallsWhenAnotherTeamOrDayIsPlanned() {
        stop.setArrival(Instant.parse("2031-06-21T09:00:00Z"));
        assertEquals(List.of("the days and teams of the plan"), changed());
        event.getPlan().getStops().clear();
        assertEquals(List.of("the days and teams of the plan", "the kit"), changed());
    }

    @Test
    void aReviewOfAnOlderFormatHasNoBasisAndStands() {
        site.getReviews().get(0).getBasis().clear();
        site.getVisits().get(0).setRoadSpeedKmh(90);
        assertTrue(state().holds());
    }
}
