package org.straddle.check.rules;

import org.straddle.check.Rule;
import org.straddle.check.Severity;
import org.straddle.words.Catalogue;

/** A rule with its id and severity; its title stands in the catalogue. */
public abstract class NamedRule implements Rule {

    private static final Catalogue TEXTS = Catalogue.of(Rule.class);

    private final String id;
    private final Severity severity;

    protected NamedRule(String id, Severity severity) {
        this.id = id;
        this.severity = severity;
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
        return TEXTS.text("title." + id);
    }
}
