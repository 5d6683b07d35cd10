package org.straddle.check.rules.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.Meals;
import org.straddle.sky.Window;

/** People eat: about noon and in the evening there is a pause. */
public final class MealMissing extends ScopedRule<Team> {

    public MealMissing() {
        super(Scope.TEAM, CareRule.MEAL_MISSING.id(), Severity.ADVICE);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        for (Duty duty : in.duties(team)) {
            for (Window meal : Meals.missing(duty, in.outlook().zone(), in.policies(), in.hold())) {
                List<Identified> objects = new ArrayList<>(List.of(team));
                duty.stays().stream().filter(stay -> stay.window().overlaps(meal)).forEach(stay -> objects.add(stay.stop()));
                findings.accept(Finding.of(this, Statement.of("mealMissing.pause", "team", team,
                        "length", in.hold().meal(), "during", meal), objects.toArray(Identified[]::new))
                        .at(meal.start()));
            }
        }
    }
}
