package org.straddle.check.run;

import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.straddle.check.Finding;
import org.straddle.check.Rule;
import org.straddle.outlook.Outlook;

/** A set of rules that read an event together. */
public final class Checks {

    private final List<Rule> rules;

    public Checks(List<Rule> rules) {
        this.rules = List.copyOf(rules);
    }

    /** Every rule there is. */
    public static Checks standard() {
        return new Checks(StandardRules.all());
    }

    public List<Rule> rules() {
        return rules;
    }

    /**
     * Runs all rules. A finding that the event holds an acceptance for, with the same facts, comes back
     * marked.
     *
     * @param monitor told of progress; may be null
     * @return heaviest first, then by time
     * @throws OperationCanceledException between two rules after cancellation
     */
    public List<Finding> run(Outlook outlook, IProgressMonitor monitor) {
        return check(outlook, monitor).findings();
    }

    /** The same, with what it takes to check a later state of the event at little cost. */
    public Checked check(Outlook outlook, IProgressMonitor monitor) {
        return Checked.of(rules, outlook, monitor);
    }
}
