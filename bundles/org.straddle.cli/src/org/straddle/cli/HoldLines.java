package org.straddle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;

import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.keeping.PlanKeeping;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;
import org.straddle.worth.EventWorth;
import org.straddle.worth.ExpectedPlan;
import org.straddle.worth.SiteReadiness;
import org.straddle.worth.split.PlanB;
import org.straddle.worth.split.ToDo;

/** How likely a plan holds, which drives matter most, and what to settle before departure. */
final class HoldLines {

    private static final Catalogue TEXTS = Catalogue.of(HoldLines.class);

    private static final int MOST_DRIVES = 5;

    private HoldLines() {
    }

    /** Nothing without turns. */
    static void print(Outlook outlook, PrintWriter out) {
        PlanKeeping keeping = PlanKeeping.of(outlook);
        int turns = keeping.chances().size();
        if (turns == 0) {
            return;
        }
        out.println(TEXTS.text("holdLines.keeping", "expected", Rounded.tenths(keeping.expected()), "turns", turns,
                "whole", PlanKeeping.percent(keeping.whole())));
        List<PlanKeeping.UnknownDrive> drives = keeping.drives();
        if (!drives.isEmpty()) {
            out.println(TEXTS.text("holdLines.drives"));
            drives.stream().limit(MOST_DRIVES).forEach(each -> out.println(TEXTS.text("holdLines.drive",
                    "from", Naming.name(each.drive().from()), "to", Naming.name(each.drive().to()),
                    "team", each.drive().team().getNumber(), "gain", each.gain())));
        }
        toDo(ExpectedPlan.of(EventWorth.of(outlook)), out);
    }

    /** Where teams go when they arrive at a stop and cannot use the place. */
    static void planB(ExpectedPlan expected, PrintWriter out) {
        Outlook outlook = expected.worth().outlook();
        Itinerary plan = Itinerary.of(outlook.event());
        if (plan.stays().stream().allMatch(stay -> stay.turns().isEmpty())) {
            return;
        }
        TimeText times = TimeText.of(outlook.zone());
        out.println(TEXTS.text("holdLines.planB"));
        for (Stay stay : plan.stays()) {
            if (!stay.turns().isEmpty() && outlook.isPlaced(stay.site())) {
                Optional<PlanB> other = PlanB.of(stay, expected, plan);
                out.println(TEXTS.text("holdLines.planBOf", "site", Naming.name(stay.site()), "team", stay.team().getNumber(),
                        "arrival", times.at(stay.window().start()), "found", other.isPresent(),
                        "other", other.map(found -> Naming.name(found.site())).orElse(""),
                        "minutes", other.map(found -> found.drive().toMinutes()).orElse(0L),
                        "turns", other.map(found -> found.turns().size()).orElse(0),
                        "birds", other.stream().flatMap(found -> found.turns().stream()).map(work -> Naming.name(work.bird()))
                                .distinct().toList(),
                        "served", other.map(PlanB::served).orElse(0.0)));
            }
        }
    }

    /** What to settle at the sites of the event's plan, what unlocks most first. */
    static void toDo(ExpectedPlan expected, PrintWriter out) {
        List<ToDo> open = ToDo.of(expected);
        if (open.isEmpty()) {
            return;
        }
        out.println(TEXTS.text("holdLines.toDo"));
        open.forEach(each -> out.println(TEXTS.text("holdLines.toDoAt", "site", Naming.name(each.site()),
                "lacks", each.lacks().stream().sorted().map(SiteReadiness.Lack::word).toList(),
                "first", TimeText.of(expected.worth().outlook().zone()).at(each.first()), "unlocks", each.unlocks())));
    }
}
