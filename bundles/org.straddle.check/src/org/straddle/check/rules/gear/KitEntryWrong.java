package org.straddle.check.rules.gear;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.kit.team.Inventory;
import org.straddle.kit.work.Circles;
import org.straddle.model.Event;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;

/** Entries of kits that cannot be: figures below zero, one serial number twice, things that only supply each other. */
public final class KitEntryWrong extends ScopedRule<Event> {

    public KitEntryWrong() {
        super(Scope.TEAMS, CheckRule.KIT_ENTRY_WRONG.id(), Severity.WARNING);
    }

    @Override
    public void check(Event event, Inspection in, Consumer<Finding> findings) {
        Map<String, KitItem> serials = new HashMap<>();
        for (Kit kit : event.getKits()) {
            for (KitItem item : kit.getItems()) {
                if (figures(item).anyMatch(figure -> !(figure >= 0) || Double.isInfinite(figure))) {
                    findings.accept(Finding.of(this, Statement.of("kitEntryWrong.figure", "item", item, "kit", kit), item, kit));
                }
                String serial = item.getSerial() == null ? "" : item.getSerial().strip().toLowerCase(Locale.ROOT);
                KitItem same = serial.isEmpty() ? null : serials.putIfAbsent(serial, item);
                if (same != null) {
                    findings.accept(Finding.of(this, Statement.of("kitEntryWrong.serial", "item", item, "other", same,
                            "serial", item.getSerial().strip()), item, same));
                }
            }
        }
        event.getTeams().forEach(team -> {
            Inventory inventory = Inventory.of(team);
            Circles.in(inventory.carried()).forEach(gear -> inventory.item(gear).ifPresent(item -> findings.accept(
                    Finding.of(this, Statement.of("kitEntryWrong.circle", "item", item, "team", team), item, team))));
        });
    }

    private static DoubleStream figures(KitItem item) {
        return DoubleStream.of(item.getCount(), item.getWeightKg(), item.getStoresWh(), item.getDrawsW(), item.getTransmitDrawsW(),
                item.getReceiveDrawsW(), item.getIdleDrawsW(), item.getAgeYears(), item.getPrice(), item.getTransmitsW());
    }
}
