package org.straddle.ui.daysheet;

import java.util.ArrayList;
import java.util.List;

import org.straddle.daysheet.sheet.PlacedTurn;
import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.keeping.PlanKeeping;
import org.straddle.sky.prediction.PassError;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;
import org.straddle.worth.EventWorth;
import org.straddle.worth.ExpectedPlan;
import org.straddle.worth.PlanWorth;
import org.straddle.worth.TurnChance;

/** What a turn adds to the plan and what it costs, in lines. */
final class TurnCost {

    private static final Catalogue TEXTS = Catalogue.of(TurnCost.class);

    private final Outlook outlook;

    TurnCost(Outlook outlook) {
        this.outlook = outlook;
    }

    List<String> lines(PlacedTurn placed) {
        List<String> lines = new ArrayList<>();
        worth(placed, lines);
        lines.add(TEXTS.text("turnCost.takesMinGap", "minutes", placed.window().duration().toMinutes(),
                "gap", outlook.policies().turnGap().toMinutes()));
        Stop stop = (Stop) placed.turn().eContainer();
        if (stop.getTeam() != null) {
            Double chance = PlanKeeping.chances(stop.getTeam(), outlook, Itinerary.of(outlook.event()).of(stop.getTeam()))
                    .get(placed.turn());
            if (chance != null) {
                lines.add(TEXTS.text("turnCost.kept", "percent", PlanKeeping.percent(chance)));
            }
        }
        Site site = stop.getSite();
        Bird bird = placed.turn().getBird();
        placed.pass().ifPresent(pass -> {
            outlook.reach().of(new SitePass(site, bird, pass), placed.window()).ifPresent(reach -> lines.add(
                    TEXTS.text("turnCost.reachesChasersMoment", "mean", percent(reach.mean()),
                            "ever", percent(reach.ever()))));
            PassError error = outlook.error(pass);
            lines.add(TEXTS.text("turnCost.timesGood", "seconds", error.timeErrorS(),
                    "days", error.age().toMinutes() / 1440.0));
        });
        return lines;
    }

    private void worth(PlacedTurn placed, List<String> lines) {
        ExpectedPlan expected = ExpectedPlan.of(EventWorth.of(outlook));
        TurnChance chance = expected.of(placed.turn()).orElse(null);
        if (chance == null) {
            return;
        }
        PlanWorth plan = expected.served();
        lines.add(TEXTS.text("turnCost.brings", "worth", tenths(plan.gain(chance))));
        for (Square square : chance.squares()) {
            lines.add(TEXTS.text("turnCost.square", "square", square, "wanted", tenths(plan.wanted(square)),
                    "served", tenths(plan.served(square)), "turns", plan.turns(square)));
        }
        lines.add(TEXTS.text("turnCost.minutes", "counted", tenths(chance.minutes()), "length", tenths(chance.lengthMinutes()),
                "contacts", tenths(chance.contacts()), "callers", tenths(chance.callers())));
        lines.add(TEXTS.text("turnCost.chance", "chance", percent(chance.chance()), "bird", percent(chance.bird()),
                "site", percent(chance.usable()), "happens", percent(chance.happens())));
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String tenths(double figure) {
        return FigureText.inCurrent().fixed(1, figure);
    }
}
