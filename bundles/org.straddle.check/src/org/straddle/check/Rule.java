package org.straddle.check;

import java.util.function.Consumer;

import org.straddle.outlook.Outlook;

/** One thing that can be wrong with an event. Rules hold no state and may run on any thread. */
public interface Rule {

    /** In kebab-case, never changed once published: acceptances are stored with it. */
    String id();

    /** The severity of its findings; a finding may be milder when the object is not in the plan. */
    Severity severity();

    /** What the rule asks for, as a short heading. */
    String title();

    /** Reads the event and hands on what it finds. */
    void check(Outlook outlook, Consumer<Finding> findings);
}
