package org.straddle.check;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Acceptance;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.words.Language;

/**
 * What a rule has to say about an event.
 *
 * @param rule     id of the rule
 * @param severity how much it weighs
 * @param says     what is wrong, as facts; the sentence is made of them when it is read
 * @param objects  what it is about, the most telling first
 * @param fix      a change that would settle it
 * @param when     when in the event it bites; empty for things that hold all along
 * @param facts    digest of the facts under it: when they change, somebody must accept it again
 * @param accepted the coordinator's acceptance of exactly these facts
 */
public record Finding(String rule, Severity severity, Statement says, List<Identified> objects, Optional<Fix> fix,
        Optional<Instant> when, String facts, Optional<Acceptance> accepted) {

    public Finding {
        objects = List.copyOf(objects);
    }

    /** A finding that rests on what it says. */
    public static Finding of(Rule rule, Statement says, Identified... objects) {
        return new Finding(rule.id(), rule.severity(), says, List.of(objects), Optional.empty(), Optional.empty(),
                Digest.of(says.plain()), Optional.empty());
    }

    /** What is wrong, naming the objects, with local and UTC times, in the language chosen at the start. */
    public String sentence() {
        return says.sentence();
    }

    /** The same in another language. */
    public String sentenceIn(Language language) {
        return says.sentenceIn(language);
    }

    /** The same with times said in a zone. */
    public Finding in(ZoneId zone) {
        return new Finding(rule, severity, says.in(zone), objects, fix, when, facts, accepted);
    }

    /** The same at a time of the event. */
    public Finding at(Instant instant) {
        return new Finding(rule, severity, says, objects, fix, Optional.of(instant), facts, accepted);
    }

    /** The same with a change that settles it. */
    public Finding fixedBy(Fix offered) {
        return new Finding(rule, severity, says, objects, Optional.of(offered), when, facts, accepted);
    }

    /** The same with another weight, which is a fact of its own: accepting a warning does not accept a blocker. */
    public Finding weighing(Severity other) {
        return new Finding(rule, other, says, objects, fix, when, Digest.of(facts, other), accepted);
    }

    /** The same resting on facts that the sentence does not show. */
    public Finding restingOn(Object... more) {
        return new Finding(rule, severity, says, objects, fix, when, Digest.of(facts, more), accepted);
    }

    /** The same about the same things in another copy of the event. */
    public Finding about(List<Identified> others) {
        return new Finding(rule, severity, says, others, fix, when, facts, accepted);
    }

    /** The same, accepted by the coordinator. */
    public Finding acceptedBy(Acceptance acceptance) {
        return new Finding(rule, severity, says, objects, fix, when, facts, Optional.of(acceptance));
    }

    /** The rule and the ids of the objects in a fixed order: the same for the same trouble after every edit. */
    public String key() {
        StringBuilder key = new StringBuilder(rule);
        objects.stream().map(o -> String.valueOf(o.getId())).sorted().forEach(id -> key.append(' ').append(id));
        return key.toString();
    }

    /** What to add to the event's acceptances when the coordinator accepts this finding. */
    public Acceptance acceptance(String reason, String by, Instant at) {
        Acceptance acceptance = Fresh.acceptance();
        acceptance.setFinding(key());
        acceptance.setFacts(facts);
        acceptance.setReason(reason);
        acceptance.setBy(by);
        acceptance.setAt(at);
        return acceptance;
    }
}
