package org.straddle.ui.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.check.Mend;
import org.straddle.check.mend.AddAsked;
import org.straddle.check.mend.LendStock;
import org.straddle.kit.asked.PlanAsks;
import org.straddle.kit.team.Resilience;
import org.straddle.kit.team.ResilienceText;
import org.straddle.kit.team.SharedSpare;
import org.straddle.kit.team.SinglePoint;
import org.straddle.kit.work.Answer;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.words.Catalogue;

/** What the resilience view shows of one team, with what can be done about it. */
record WeakPoints(String teamId, String summary, List<Line> lines, List<String> closing) {

    private static final Catalogue TEXTS = Catalogue.of(WeakPoints.class);

    /** A line of the tree with those under it. */
    record Line(String what, boolean weak, Optional<Mend> fix, List<Line> parts) {

        static Line plain(String what, boolean weak, List<Line> parts) {
            return new Line(what, weak, Optional.empty(), parts);
        }
    }

    static WeakPoints of(Team team, Outlook outlook) {
        Itinerary itinerary = Itinerary.of(outlook.event());
        Resilience resilience = Resilience.of(team, itinerary);
        ResilienceText text = new ResilienceText(resilience);
        List<Line> lines = new ArrayList<>();
        resilience.planned().forEach(answer -> lines.add(line(answer, team, resilience, text, "planned")));
        resilience.further().forEach(answer -> lines.add(line(answer, team, resilience, text, "further")));
        List<Line> asked = PlanAsks.of(team, outlook, itinerary).lacking().stream().map(lacking -> new Line(lacking.sentence(), true,
                Optional.of(AddAsked.of(lacking, team)), List.of())).toList();
        if (!asked.isEmpty()) {
            lines.add(Line.plain(TEXTS.text("weak.asked", "count", asked.size()), true, asked));
        }
        List<String> closing = Stream.concat(text.closing().stream(),
                SharedSpare.of(team, outlook, itinerary).stream().map(SharedSpare::sentence)).toList();
        return new WeakPoints(team.getId(), TEXTS.text("weak.summary", "ways", resilience.planned().size(), "points",
                resilience.singlePoints().size(), "cannot", resilience.planned().stream().filter(answer -> !answer.possible()).count()),
                lines, lines.isEmpty() ? List.of() : closing);
    }

    private static Line line(Answer answer, Team team, Resilience resilience, ResilienceText text, String which) {
        List<Line> parts = new ArrayList<>();
        answer.single().forEach(gear -> {
            SinglePoint point = new SinglePoint(gear, List.of(answer));
            parts.add(new Line(text.single(point), true, resilience.remedy(answer, gear).flatMap(resilience.inventory()::item)
                    .filter(LendStock::isStock).flatMap(stock -> resilience.inventory().item(gear)
                            .map(item -> LendStock.of(stock, team, item))), List.of()));
        });
        answer.pairs().forEach(pair -> parts.add(Line.plain(text.pair(pair, answer), false, List.of())));
        String what = answer.possible() ? TEXTS.text("weak.way", "which", which, "work", text.work(answer.task()), "single",
                answer.single().size(), "pairs", answer.pairs().size()) : text.cannot(answer);
        return Line.plain(what, which.equals("planned") && (!answer.possible() || !answer.single().isEmpty()), parts);
    }
}
