package org.straddle.check.rules.event;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.NamedRule;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.Trouble;

/** What the outlook had to leave out, told as findings: one rule for each kind of trouble. */
public final class CannotBeComputed extends NamedRule {

    private final Trouble.Kind kind;

    public CannotBeComputed(CheckRule rule, Severity severity, Trouble.Kind kind) {
        super(rule.id(), severity);
        this.kind = kind;
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        outlook.troubles().stream().filter(trouble -> trouble.kind() == kind)
                .forEach(trouble -> findings.accept(Finding.of(this, Statement.words(trouble.sentence()), trouble.object())));
    }
}
