package org.straddle.ui.daysheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.straddle.daysheet.sheet.PlacedTurn;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.plan.event.TurnWorth;
import org.straddle.sky.PassError;

/** What a turn adds to the plan and what it costs, in lines. */
final class TurnCost {

    private final Outlook outlook;

    TurnCost(Outlook outlook) {
        this.outlook = outlook;
    }

    List<String> lines(PlacedTurn placed) {
        List<String> lines = new ArrayList<>();
        worth(placed, lines);
        lines.add("Takes " + placed.window().duration().toMinutes() + " min and the gap of "
                + outlook.policies().turnGap().toMinutes() + " min to the next turn");
        Site site = ((Stop) placed.turn().eContainer()).getSite();
        Bird bird = placed.turn().getBird();
        placed.pass().ifPresent(pass -> {
            outlook.reach().of(new SitePass(site, bird, pass), placed.window()).ifPresent(reach -> lines.add(
                    "Reaches " + percent(reach.mean()) + " of chasers at a moment, " + percent(reach.ever())
                            + " at some time of it"));
            PassError error = outlook.error(pass);
            lines.add(String.format(Locale.ROOT, "Times good to ±%.1f s; the element set is %.1f days old",
                    error.timeErrorS(), error.age().toMinutes() / 1440.0));
        });
        return lines;
    }

    private void worth(PlacedTurn placed, List<String> lines) {
        TurnWorth worth = TurnWorth.of(outlook, placed.turn());
        for (TurnWorth.Part part : worth.parts()) {
            lines.add(part.square() + ": demand " + percent(part.demand()) + ", "
                    + (part.worked() == 1 ? "the only pass from it" : "one of " + part.worked() + " passes from it")
                    + ", adds " + hundredths(part.adds()));
        }
        if (worth.parts().size() > 1) {
            lines.add("Without this turn the plan is worth " + hundredths(worth.adds()) + " less");
        }
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String hundredths(double worth) {
        return String.format(Locale.ROOT, "%.2f", worth);
    }
}
