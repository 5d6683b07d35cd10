package org.straddle.ui.daysheet;

import java.util.ArrayList;
import java.util.List;

import org.straddle.daysheet.sheet.PlacedTurn;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.plan.event.TurnWorth;
import org.straddle.sky.PassError;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

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
        Site site = ((Stop) placed.turn().eContainer()).getSite();
        Bird bird = placed.turn().getBird();
        placed.pass().ifPresent(pass -> {
            outlook.reach().of(new SitePass(site, bird, pass), placed.window()).ifPresent(reach -> lines.add(
                    TEXTS.text("turnCost.reachesChasersMoment", "mean", percent(reach.mean()),
                            "ever", percent(reach.ever()))));
            PassError error = outlook.error(pass);
            lines.add(TEXTS.text("turnCost.timesGoodS", "seconds", error.timeErrorS(),
                    "days", error.age().toMinutes() / 1440.0));
        });
        return lines;
    }

    private void worth(PlacedTurn placed, List<String> lines) {
        TurnWorth worth = TurnWorth.of(outlook, placed.turn());
        for (TurnWorth.Part part : worth.parts()) {
            lines.add(TEXTS.text("turnCost.demandAdds", "square", part.square(), "demand", percent(part.demand()),
                    "worked", part.worked(),
                    "worth", hundredths(part.adds())));
        }
        if (worth.parts().size() > 1) {
            lines.add(TEXTS.text("turnCost.withoutTurnPlan", "worth", hundredths(worth.adds())));
        }
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String hundredths(double worth) {
        return FigureText.inCurrent().fixed(2, worth);
    }
}
