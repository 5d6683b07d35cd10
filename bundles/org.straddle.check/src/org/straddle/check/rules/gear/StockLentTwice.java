package org.straddle.check.rules.gear;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Event;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.KitSource;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.TeamDays;
import org.straddle.sky.Window;

/** Club stock goes out with one team at a time. */
public final class StockLentTwice extends ScopedRule<Event> {

    public StockLentTwice() {
        super(Scope.TEAMS, CheckRule.STOCK_LENT_TWICE.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Event event, Inspection in, Consumer<Finding> findings) {
        List<Team> teams = event.getTeams();
        for (Kit kit : event.getKits()) {
            if (kit.getSource() != KitSource.CLUB_STOCK) {
                continue;
            }
            for (int one = 0; one < teams.size(); one++) {
                for (int other = one + 1; other < teams.size(); other++) {
                    clash(kit, teams.get(one), teams.get(other), findings);
                }
            }
        }
    }

    private void clash(Kit kit, Team one, Team other, Consumer<Finding> findings) {
        boolean both = one.getKits().contains(kit) && other.getKits().contains(kit);
        if (both && together(one, other)) {
            findings.accept(Finding.of(this, Statement.of("stockLentTwice.kit", "kit", kit, "one", one, "other", other),
                    kit, one, other));
        }
        for (KitItem item : kit.getItems()) {
            boolean lent = item.getLentTo() == one && other.getKits().contains(kit)
                    || item.getLentTo() == other && one.getKits().contains(kit);
            if (lent && !both && together(one, other)) {
                findings.accept(Finding.of(this, Statement.of("stockLentTwice.item", "item", item, "one", one, "other", other),
                        item, one, other));
            }
        }
    }

    private static boolean together(Team one, Team other) {
        List<Window> its = TeamDays.of(other);
        return TeamDays.of(one).stream().anyMatch(day -> its.stream().anyMatch(day::overlaps));
    }
}
