package org.straddle.ui.findings;

import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Finding;
import org.straddle.check.Mend;
import org.straddle.model.Event;
import org.straddle.words.Catalogue;

/**
 * Several findings mended as one step. Each mend is worked out when those before it are done, because they may have
 * taken away what it is about; such a mend is left out.
 */
final class Mends extends CompoundCommand {

    private static final Catalogue TEXTS = Catalogue.of(Mends.class);

    private final EditingDomain domain;
    private final Event live;
    private final List<Mend> mends;

    Mends(EditingDomain domain, Event live, List<Finding> findings) {
        this.domain = domain;
        this.live = live;
        this.mends = findings.stream().flatMap(finding -> finding.mend().stream()).toList();
        setLabel(mends.size() == 1 ? mends.get(0).label() : TEXTS.text("mends.several", "count", mends.size()));
    }

    @Override
    protected boolean prepare() {
        return mends.stream().anyMatch(mend -> mend.command(domain, live).canExecute());
    }

    @Override
    public void execute() {
        for (Mend mend : mends) {
            Command command = mend.command(domain, live);
            if (command.canExecute()) {
                appendAndExecute(command);
            } else {
                command.dispose();
            }
        }
    }
}
