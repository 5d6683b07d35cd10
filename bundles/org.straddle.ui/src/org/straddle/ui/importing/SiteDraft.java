package org.straddle.ui.importing;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.sites.SiteImport;
import org.straddle.exchange.sites.SiteKey;
import org.straddle.exchange.sites.SiteMapping;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.model.Event;
import org.straddle.words.Catalogue;

/** What the user has chosen so far on the way to importing sites, and what would come of it; knows no window. */
public final class SiteDraft implements PreviewedImport {

    private static final Catalogue TEXTS = Catalogue.of(SiteDraft.class);

    private static final double USUAL_WITHIN_M = 25;
    /** So many lines are compared in the blink of an eye. */
    private static final int AT_ONCE = 1000;

    private final Event event;
    private SourceTable table;
    private SiteMapping mapping;
    private SiteKey key;
    private CoordinateOrder order = CoordinateOrder.OF_THE_FORMAT;
    private boolean leaveOutRefused;
    private SiteImport preview;

    public SiteDraft(Event event) {
        this.event = event;
    }

    /** Takes another file, with the usual meaning of its columns. */
    public void take(SourceTable read) {
        table = read;
        mapping = SiteMapping.guess(read);
        key = mapping.usualKey();
        order = CoordinateOrder.OF_THE_FORMAT;
        changed();
    }

    private void changed() {
        leaveOutRefused = false;
        preview = null;
    }

    public Optional<SourceTable> table() {
        return Optional.ofNullable(table);
    }

    public SiteMapping mapping() {
        return mapping;
    }

    public void map(SiteMapping chosen) {
        mapping = chosen;
        changed();
    }

    public SiteKey key() {
        return key;
    }

    public void know(SiteKey chosen) {
        key = chosen;
        changed();
    }

    public double withinM() {
        return key != null && key.kind() == SiteKey.Kind.POSITION ? key.withinM() : USUAL_WITHIN_M;
    }

    public CoordinateOrder order() {
        return order;
    }

    public void order(CoordinateOrder chosen) {
        order = chosen;
        changed();
    }

    @Override
    public List<PreviewLine> lines() {
        return preview().map(found -> found.changes().stream().flatMap(change -> PreviewLine.of(change).stream()).toList()).orElse(List.of());
    }

    @Override
    public String summary() {
        return preview().map(SiteImport::summary).orElse("");
    }

    @Override
    public int refusedLines() {
        return preview().map(found -> found.refused().size()).orElse(0);
    }

    @Override
    public boolean changesNothing() {
        return preview().filter(SiteImport::isEmpty).isPresent();
    }

    @Override
    public String doubt() {
        return preview().filter(SiteImport::swapOffered).map(found -> TEXTS.text("siteDraft.swapped")).orElse("");
    }

    @Override
    public boolean leavesOutRefused() {
        return leaveOutRefused;
    }

    @Override
    public void leaveOutRefused(boolean chosen) {
        leaveOutRefused = chosen;
    }

    /** Why there is no preview, a sentence; empty when there is one. */
    public Optional<String> problem() {
        return table == null ? Optional.of(TEXTS.text("siteDraft.nofile")) : mapping.problem(key);
    }

    /** What would change; empty while there is a {@link #problem}. */
    public Optional<SiteImport> preview() {
        if (problem().isPresent()) {
            return Optional.empty();
        }
        if (preview == null) {
            preview = SiteImport.of(event, table, mapping, order, key);
        }
        return Optional.of(preview);
    }

    /** Whether asking for the preview takes so long that the window should not wait for it. */
    public boolean isLongWork() {
        return preview == null && table != null && table.rows().size() > AT_ONCE;
    }

    @Override
    public boolean isReady() {
        return preview().filter(found -> !found.isEmpty() && (found.refused().isEmpty() || leaveOutRefused)).isPresent();
    }

    @Override
    public Command command(EditingDomain domain) {
        return preview().orElseThrow().command(domain);
    }
}
