package org.straddle.check.rules.site;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.UsedSite;
import org.straddle.model.KitItem;
import org.straddle.model.Site;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.safety.MastLimit;

/** A kit holds something that stands higher than overhead wires, or the visit, allow at a site of its team. */
public final class MastTooHigh extends ScopedRule<Site> {

    public MastTooHigh() {
        super(Scope.SITE, CheckRule.MAST_TOO_HIGH.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        Set<KitItem> told = new HashSet<>();
        for (UsedSite use : in.uses(site)) {
            Optional<MastLimit> limit = use.notes().mastLimit();
            limit.ifPresent(most -> raised(use.stay(), most, item -> {
                if (told.add(item)) {
                    findings.accept(Finding.of(this, Statement.of("mastTooHigh.stands", "item", item, "height", item.getRaisedM(), "site", site,
                            "limit", most.heightM(), "none", most.heightM() > 0 ? "no" : "yes"), site, item)
                            .restingOn(item.getRaisedM(), most.heightM()).at(use.stay().window().start()));
                }
            }));
        }
    }

    private static void raised(Stay stay, MastLimit most, Consumer<KitItem> high) {
        stay.team().getKits().stream().filter(kit -> !kit.eIsProxy()).flatMap(kit -> kit.getItems().stream())
                .filter(item -> item.getRaisedM() > most.heightM()).forEach(high);
    }
}
