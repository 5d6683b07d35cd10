package org.straddle.ui.kit;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.kit.PackingRow;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Tick;
import org.straddle.ui.session.Edit;
import org.straddle.words.Catalogue;

/** Ticking items off, or clearing ticks, as one step of undo. */
final class Ticks {

    private static final Catalogue TEXTS = Catalogue.of(Ticks.class);

    private Ticks() {
    }

    /** Rows that are ticked already keep the name and time of whoever was first. */
    static Command tick(EditingDomain domain, List<PackingRow> rows, String packer) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        List<PackingRow> open = rows.stream().filter(row -> row.packed().isEmpty()).toList();
        return change(domain, open, true, () -> {
            Tick tick = StraddleFactory.eINSTANCE.createTick();
            tick.setBy(packer);
            tick.setAt(now);
            return tick;
        });
    }

    static Command untick(EditingDomain domain, List<PackingRow> rows) {
        return change(domain, rows.stream().filter(row -> row.packed().isPresent()).toList(), false, () -> null);
    }

    private static Command change(EditingDomain domain, List<PackingRow> rows, boolean ticked, Supplier<Tick> tick) {
        String label = rows.size() == 1 ? TEXTS.text("ticks.one", "ticked", ticked, "item", rows.get(0).name())
                : TEXTS.text("ticks.many", "ticked", ticked, "count", rows.size());
        return Edit.together(label, rows.stream()
                .map(row -> Edit.set(domain, row.item(), Literals.KIT_ITEM__TICK, tick.get())).toList());
    }
}
