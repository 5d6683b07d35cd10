package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/**
 * A rule that looks at one subject after another. It reads no more than its scope names, and its fixes keep ids, not
 * objects: so what it found stays true for a later copy of the event in which none of that has changed.
 *
 * @param <T> the kind of subject
 */
public abstract class ScopedRule<T> extends NamedRule {

    private final Scope<T> scope;

    protected ScopedRule(Scope<T> scope, String id, Severity severity) {
        super(id, severity);
        this.scope = scope;
    }

    public final Scope<T> scope() {
        return scope;
    }

    /** Reads what the scope names and hands on what it finds about the subject. */
    public abstract void check(T subject, Inspection in, Consumer<Finding> findings);

    @Override
    public final void check(Outlook outlook, Consumer<Finding> findings) {
        Inspection in = Inspection.of(outlook);
        scope.subjects(in).forEach(subject -> check(subject, in, findings));
    }
}
