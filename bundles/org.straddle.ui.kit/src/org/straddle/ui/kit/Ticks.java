package org.straddle.ui.kit;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.kit.PackingRow;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Tick;
import org.straddle.ui.session.Edit;
import org.straddle.words.Catalogue;

/** Ticking items off, or clearing ticks, as one step of undo. */
final class Ticks {

    private static final Catalogue TEXTS = Catalogue.of(Ticks.class);

    private Ticks() {
    }

    /** Rows that are ticked already keep the name and time of whoever was first. */
    static Command tick(EditingDomain domain, TickKind kind, List<PackingRow> rows, String packer) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        List<PackingRow> open = rows.stream().filter(row -> kind.of(row.item()) == null).toList();
        return change(domain, kind, open, true, () -> {
            Tick tick = StraddleFactory.eINSTANCE.createTick();
            tick.setBy(packer);
            tick.setAt(now);
            return tick;
        });
    }

    static Command untick(EditingDomain domain, TickKind kind, List<PackingRow> rows) {
        return change(domain, kind, rows.stream().filter(row -> kind.of(row.item()) != null).toList(), false, () -> null);
    }

    private static Command change(EditingDomain domain, TickKind kind, List<PackingRow> rows, boolean ticked, Supplier<Tick> tick) {
        String label = rows.size() == 1
                ? TEXTS.text("ticks.one", "ticked", ticked, "item", rows.get(0).name(), "kind", TEXTS.text(kind))
                : TEXTS.text("ticks.many", "ticked", ticked, "count", rows.size(), "kind", TEXTS.text(kind));
        return Edit.together(label, rows.stream().map(row -> Edit.set(domain, row.item(), kind.slot(), tick.get())).toList());
    }
}
