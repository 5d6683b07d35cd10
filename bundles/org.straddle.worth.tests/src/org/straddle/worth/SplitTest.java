package org.straddle.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.straddle.grid.Square;
import org.straddle.model.Chaser;
import org.straddle.model.Site;
import org.straddle.model.SitesTaken;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.worth.split.PlanB;
import org.straddle.worth.split.SplitTable;
import org.straddle.worth.split.ToDo;

/** Who holds which square, where a team goes instead, and what to settle before departure, on a plan of a few numbers. */
class SplitTest {

    private final PlanOnPaper paper = new PlanOnPaper();
    private final Team first = paper.team();
    private final Site line = paper.site("Line", 60, "JJ50", "JJ60");
    private final Site near = paper.site("Near", 75, "JJ60");
    private final Site far = paper.site("Far", 200, "JJ60", "JJ50");

    private PlanB planB(int stay) {
        Itinerary plan = Itinerary.of(paper.event);
        return PlanB.of(plan.stays().get(stay), paper.expected(), plan).orElse(null);
    }

    @Test
    void eachSquareOfEachStopHasALine() {
        Team second = paper.team();
        paper.stop(first, line, 480, 600, 510, 540, 570);
        paper.stop(second, near, 700, 800, 740);
        SplitTable split = SplitTable.of(paper.expected());
        assertEquals(List.of("JJ50 Line 3", "JJ60 Line 3", "JJ60 Near 1"), split.rows().stream()
                .map(row -> row.square().name() + " " + row.site().getName() + " " + row.passes()).toList());
        assertEquals(4, split.of(Square.parse("JJ60")).passes());
        assertEquals(3, split.of(Square.parse("JJ50")).passes());
        assertEquals(100, split.of(Square.parse("JJ50")).wanted(), 1e-9);
    }

    /** 100 chasers call at 30 %: of turns that serve 10.8 % each, the seventh finds half of its chasers served. */
    @Test
    void aSquareIsWorkedTooOftenOnceEarlierTurnsServedHalf() {
        paper.stop(first, near, 480, 1000, 520, 540, 560, 580, 600, 620);
        assertFalse(SplitTable.of(paper.expected()).of(Square.parse("JJ60")).isWorkedTooOften());
        paper.stop(first, near, 1000, 1300, 1040, 1060, 1080, 1100);
        SplitTable.OfSquare all = SplitTable.of(paper.expected()).of(Square.parse("JJ60"));
        // 1 − (1 − 0.108)^n > 0.5 from n = 7 on: turns 8, 9 and 10
        assertEquals(3, all.tooMany());
        assertTrue(all.isWorkedTooOften());
    }

    /** From the line it is 15 km to the one site: there after 20 min, ready 15 min later. The other lies too far. */
    @Test
    void planBIsTheSiteThatSavesMost() {
        paper.stop(first, line, 480, 600, 500, 530, 560);
        PlanB other = planB(0);
        assertEquals(near, other.site());
        // usual 15 min, and 0.84 deviations of 15 % more
        assertEquals(Duration.ofSeconds(1014), other.drive().truncatedTo(java.time.temporal.ChronoUnit.SECONDS), "drive");
        assertEquals(List.of(530, 560), other.turns().stream().map(work -> (int) Duration.between(PlanOnPaper.at(0),
                work.window().start()).toMinutes()).toList());
        assertTrue(other.served() > 10 && other.served() < 30, "served " + other.served());
    }

    @Test
    void aSiteThatAnotherTeamHoldsIsNoPlanB() {
        Team second = paper.team();
        paper.stop(first, line, 480, 600, 530, 560);
        paper.stop(second, near, 470, 640, 600);
        assertEquals(null, planB(0));
    }

    @Test
    void whatUnlocksMostComesFirst() {
        near.getReviews().clear();
        far.getVisits().clear();
        paper.stop(first, near, 480, 560, 520);
        paper.stop(first, far, 800, 1000, 840, 860, 880, 900);
        List<ToDo> open = ToDo.of(paper.expected());
        assertEquals(List.of(far, near), open.stream().map(ToDo::site).toList());
        assertEquals(Set.of(SiteReadiness.Lack.REVIEW), open.get(1).lacks());
        assertTrue(open.get(0).lacks().contains(SiteReadiness.Lack.VISIT));
        double before = paper.expected().served().served();
        paper.event.getPolicies().setSitesTaken(SitesTaken.ALL);
        double settled = paper.expected().served().served();
        assertEquals(settled - before, open.get(0).unlocks() + open.get(1).unlocks(), 0.1 * (settled - before));
        assertTrue(open.get(0).unlocks() > open.get(1).unlocks() && open.get(1).unlocks() > 0);
    }

    @Test
    void aSiteIsReadyWithVisitReviewAndPermission() {
        WorthFigures usual = WorthFigures.of(null);
        assertTrue(SiteReadiness.of(near, PlanOnPaper.DAY, null).isReady());
        assertEquals(1, SiteReadiness.of(near, PlanOnPaper.DAY, null).chance(usual));
        near.getVisits().get(0).setAccessUntil(PlanOnPaper.DAY.minusDays(1));
        assertEquals(Set.of(SiteReadiness.Lack.PERMISSION), SiteReadiness.of(near, PlanOnPaper.DAY, null).lacks());
        assertEquals(0.6, SiteReadiness.of(near, PlanOnPaper.DAY, null).chance(usual), 1e-9);
        near.getVisits().clear();
        assertTrue(SiteReadiness.of(near, PlanOnPaper.DAY, null).lacks().contains(SiteReadiness.Lack.VISIT));
    }

    @Test
    void chasersOfAListAreGroupedByHomeAndCountedBySquare() {
        chaser("Q0AAA", "JJ51", "JJ50", "JJ60");
        chaser("Q0BBB", "jj51xx", "JJ60");
        chaser("Q0CCC", "JO50", "JJ60", "nonsense");
        List<ChaserGroup> groups = EventWorth.of(org.straddle.outlook.Outlook.of(paper.event, null)).groups();
        assertEquals(List.of("JJ51", "JO50"), groups.stream().map(ChaserGroup::name).toList());
        assertEquals(2, groups.get(0).needs().of(Square.parse("JJ60")));
        assertEquals(1, groups.get(0).needs().of(Square.parse("JJ50")));
        assertEquals(2, groups.get(0).needs().ofAny(List.of(Square.parse("JJ50"), Square.parse("JJ60"))));
        assertEquals(List.of(new NeededSquare(Square.parse("JJ60"), List.of("Q0AAA", "Q0BBB", "Q0CCC")),
                new NeededSquare(Square.parse("JJ50"), List.of("Q0AAA"))), NeededSquare.of(paper.event));
    }

    private void chaser(String call, String locator, String... squares) {
        Chaser chaser = StraddleFactory.eINSTANCE.createChaser();
        chaser.setCallSign(call);
        chaser.setLocator(locator);
        chaser.getSquares().addAll(List.of(squares));
        paper.event.getChaserList().add(chaser);
    }
}
