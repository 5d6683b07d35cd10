package org.straddle.daysheet.fits;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.straddle.model.Turn;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.InHand;
import org.straddle.outlook.itinerary.Meals;
import org.straddle.outlook.itinerary.Relief;
import org.straddle.outlook.itinerary.Sitting;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.keeping.PlanKeeping;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/** What speaks against a place where a stop fits: the rules that warn, by the same predicates as the check. */
final class Cares {

    private static final Catalogue TEXTS = Catalogue.of(Cares.class);

    /** @param rule that would warn */
    record Care(CareRule rule, String sentence) {
    }

    private Cares() {
    }

    /** @param stays of the team, with the tried one, in any order */
    static List<Care> of(Outlook outlook, Stay tried, List<Stay> stays) {
        HoldFigures figures = HoldFigures.of(outlook.event().getPolicies());
        List<Stay> lane = stays.stream().sorted((a, b) -> Window.IN_TIME_ORDER.compare(a.window(), b.window())).toList();
        List<Care> cares = new ArrayList<>();
        Duration inHand = InHand.of(tried, outlook.policies()).orElse(figures.inHand());
        if (!inHand.isNegative() && inHand.compareTo(figures.inHand()) < 0) {
            cares.add(new Care(CareRule.TIME_IN_HAND, TEXTS.text("care.inHand", "have", Say.have(inHand),
                    "need", Say.need(figures.inHand()))));
        }
        slips(outlook, tried, lane, figures, cares);
        Sitting.of(lane).stream().filter(sitting -> sitting.stays().contains(tried) && Relief.isMissing(sitting, figures))
                .forEach(sitting -> cares.add(new Care(CareRule.RELIEF_MISSING, TEXTS.text("care.relief",
                        "have", Say.need(sitting.window().duration()), "limit", Say.have(figures.longestStop())))));
        duties(outlook, tried, lane, figures, cares);
        return cares;
    }

    private static void slips(Outlook outlook, Stay tried, List<Stay> lane, HoldFigures figures, List<Care> cares) {
        Map<Turn, Double> chances = PlanKeeping.chances(tried.team(), outlook, lane);
        tried.turns().stream().mapToDouble(work -> chances.getOrDefault(work.turn(), 1.0)).min()
                .ifPresent(least -> {
                    if (least < figures.leastKeeping()) {
                        cares.add(new Care(CareRule.TURN_MAY_SLIP, TEXTS.text("care.slip",
                                "percent", PlanKeeping.percent(least))));
                    }
                });
    }

    private static void duties(Outlook outlook, Stay tried, List<Stay> lane, HoldFigures figures, List<Care> cares) {
        List<Duty> duties = Duty.of(tried.team(), outlook, lane, figures).stream()
                .sorted((a, b) -> Window.IN_TIME_ORDER.compare(a.window(), b.window())).toList();
        for (int i = 0; i < duties.size(); i++) {
            Duty duty = duties.get(i);
            boolean own = duty.stays().contains(tried);
            if (own && duty.isTooLong(figures)) {
                cares.add(new Care(CareRule.DUTY_TOO_LONG, TEXTS.text("care.duty", "have", Say.need(duty.window().duration()),
                        "limit", Say.have(figures.longestDuty()))));
            }
            if (own && !Meals.missing(duty, outlook.zone(), outlook.policies(), figures).isEmpty()) {
                cares.add(new Care(CareRule.MEAL_MISSING, TEXTS.text("care.meal", "need", Say.need(figures.meal()))));
            }
            if (i > 0 && (own || duties.get(i - 1).stays().contains(tried))
                    && !Duty.lackingRest(duties.get(i - 1), duty, figures).isZero()) {
                cares.add(new Care(CareRule.REST_TOO_SHORT, TEXTS.text("care.rest", "need", Say.need(figures.leastRest()))));
            }
        }
    }
}
