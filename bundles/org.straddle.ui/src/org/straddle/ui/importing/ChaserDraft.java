package org.straddle.ui.importing;

import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.chasers.ChaserImport;
import org.straddle.exchange.chasers.ChaserList;
import org.straddle.model.Event;

/** A list of chasers that was read, and what would come of it; knows no window. */
final class ChaserDraft implements PreviewedImport {

    private final Event event;
    private ChaserList list = new ChaserList(List.of(), 0, List.of());
    private ChaserImport found;
    private boolean leaveOutRefused;

    ChaserDraft(Event event) {
        this.event = event;
        take(list);
    }

    /** Takes another list. */
    void take(ChaserList read) {
        list = read;
        found = ChaserImport.into(event, read);
        leaveOutRefused = false;
    }

    @Override
    public List<PreviewLine> lines() {
        return PreviewLine.of(found, list);
    }

    @Override
    public String summary() {
        return found.summary(list);
    }

    @Override
    public int refusedLines() {
        return list.refused().size();
    }

    @Override
    public boolean changesNothing() {
        return found.isEmpty();
    }

    /** Every line is judged by itself. */
    @Override
    public String doubt() {
        return "";
    }

    @Override
    public boolean leavesOutRefused() {
        return leaveOutRefused;
    }

    @Override
    public void leaveOutRefused(boolean chosen) {
        leaveOutRefused = chosen;
    }

    @Override
    public boolean isReady() {
        return !changesNothing() && (list.refused().isEmpty() || leaveOutRefused);
    }

    @Override
    public Command command(EditingDomain domain) {
        return found.command(domain);
    }
}
