package org.straddle.ui.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.check.Fix;
import org.straddle.check.fix.AddAsked;
import org.straddle.check.fix.LendStock;
import org.straddle.kit.asked.PlanAsks;
import org.straddle.kit.team.Resilience;
import org.straddle.kit.team.ResilienceText;
import org.straddle.kit.team.SharedSpare;
import org.straddle.kit.work.Answer;
import org.straddle.kit.work.Gear;
import org.straddle.model.KitItem;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.words.Catalogue;

/** What the resilience view shows of one team, with what can be done about it. */
record WeakPoints(String teamId, String summary, List<Line> lines, List<String> closing) {

    private static final Catalogue TEXTS = Catalogue.of(WeakPoints.class);

    /** How bad a line is. */
    enum Weight {
        GOOD, KNOWN, WEAK
    }

    /**
     * A line of the tree with those under it.
     *
     * @param help what helps, in words; empty where nothing has to be done
     * @param fix  where one step does it
     */
    record Line(String what, Weight weight, String help, Optional<Fix> fix, List<Line> parts) {

        static Line plain(String what, Weight weight, List<Line> parts) {
            return new Line(what, weight, "", Optional.empty(), parts);
        }

        static Line fixed(String what, Fix fix) {
            return new Line(what, Weight.WEAK, fix.label(), Optional.of(fix), List.of());
        }
    }

    static WeakPoints of(Team team, Outlook outlook) {
        Itinerary itinerary = Itinerary.of(outlook.event());
        Resilience resilience = Resilience.of(team, itinerary);
        ResilienceText text = new ResilienceText(resilience);
        List<Line> lines = new ArrayList<>();
        resilience.planned().forEach(answer -> lines.add(line(answer, team, resilience, text, "planned")));
        resilience.further().forEach(answer -> lines.add(line(answer, team, resilience, text, "further")));
        List<Line> asked = PlanAsks.lacking(team, outlook, itinerary).stream().map(lacking -> Line.fixed(
                lacking.sentence(), AddAsked.of(lacking, team))).toList();
        if (!asked.isEmpty()) {
            lines.add(Line.plain(TEXTS.text("weak.asked", "count", asked.size()), Weight.WEAK, asked));
        }
        List<String> closing = Stream.concat(text.closing().stream(),
                SharedSpare.of(team, outlook, itinerary).stream().map(SharedSpare::sentence)).toList();
        return new WeakPoints(team.getId(), TEXTS.text("weak.summary", "ways", resilience.planned().size(), "points",
                resilience.singlePoints().size(), "cannot", resilience.planned().stream().filter(answer -> !answer.possible()).count()),
                lines, lines.isEmpty() ? List.of() : closing);
    }

    private static Line line(Answer answer, Team team, Resilience resilience, ResilienceText text, String which) {
        List<Line> parts = new ArrayList<>();
        answer.single().forEach(gear -> parts.add(single(answer, gear, team, resilience)));
        answer.pairs().forEach(pair -> parts.add(Line.plain(TEXTS.text("weak.pair", "one", pair.gear().get(0).name(), "other",
                pair.gear().get(1).name(), "same", pair.gear().get(0).equals(pair.gear().get(1)) ? "yes" : "no"), Weight.KNOWN, List.of())));
        String what = answer.possible() ? TEXTS.text("weak.way", "which", which, "work", text.work(answer.task()), "single",
                answer.single().size(), "pairs", answer.pairs().size()) : text.cannot(answer);
        boolean weak = !answer.possible() || !answer.single().isEmpty();
        return Line.plain(what, !weak ? Weight.GOOD : which.equals("planned") ? Weight.WEAK : Weight.KNOWN, parts);
    }

    private static Line single(Answer answer, Gear gear, Team team, Resilience resilience) {
        String what = TEXTS.text("weak.single", "item", gear.name());
        Optional<KitItem> remedy = resilience.remedy(answer, gear).flatMap(resilience.inventory()::item);
        Optional<KitItem> failing = resilience.inventory().item(gear);
        if (remedy.filter(LendStock::isStock).isPresent() && failing.isPresent()) {
            return Line.fixed(what, LendStock.of(remedy.get(), team, failing.get()));
        }
        return new Line(what, Weight.WEAK, remedy.map(item -> TEXTS.text("weak.buy", "item", Naming.name(item)))
                .orElseGet(() -> TEXTS.text("weak.nothing")), Optional.empty(), List.of());
    }
}
