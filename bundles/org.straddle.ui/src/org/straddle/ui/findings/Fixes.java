package org.straddle.ui.findings;

import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.model.Event;
import org.straddle.words.Catalogue;

/**
 * Several findings fixed as one step. Each fix is worked out when those before it are done, because they may have
 * taken away what it is about; such a fix is left out.
 */
final class Fixes extends CompoundCommand {

    private static final Catalogue TEXTS = Catalogue.of(Fixes.class);

    private final EditingDomain domain;
    private final Event live;
    private final List<Fix> fixes;

    Fixes(EditingDomain domain, Event live, List<Finding> findings) {
        this.domain = domain;
        this.live = live;
        this.fixes = findings.stream().flatMap(finding -> finding.fix().stream()).toList();
        setLabel(fixes.size() == 1 ? fixes.get(0).label() : TEXTS.text("fixes.several", "count", fixes.size()));
    }

    @Override
    protected boolean prepare() {
        return fixes.stream().anyMatch(fix -> fix.command(domain, live).canExecute());
    }

    @Override
    public void execute() {
        for (Fix fix : fixes) {
            Command command = fix.command(domain, live);
            if (command.canExecute()) {
                appendAndExecute(command);
            } else {
                command.dispose();
            }
        }
    }
}
