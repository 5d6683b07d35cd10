package org.straddle.check.rules;

import org.straddle.check.Rule;
import org.straddle.check.Severity;

/** A rule with its id, severity and title. */
public abstract class NamedRule implements Rule {

    private final String id;
    private final Severity severity;
    private final String title;

    protected NamedRule(String id, Severity severity, String title) {
        this.id = id;
        this.severity = severity;
        this.title = title;
    }

    @Override
    public final String id() {
        return id;
    }

    @Override
    public final Severity severity() {
        return severity;
    }

    @Override
    public final String title() {
        return title;
    }
}
