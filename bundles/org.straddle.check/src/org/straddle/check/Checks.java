package org.straddle.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.model.Acceptance;
import org.straddle.check.rules.StandardRules;
import org.straddle.outlook.Outlook;

/** A set of rules that read an event together. */
public final class Checks {

    /** Heaviest first, then what holds all along, then by time; the key settles ties, so the order never varies. */
    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::severity)
            .thenComparing(f -> f.when().isPresent())
            .thenComparing(f -> f.when().orElse(null), Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(Finding::rule).thenComparing(Finding::sentence).thenComparing(Finding::key);

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
        SubMonitor progress = SubMonitor.convert(monitor, "Checking the event", rules.size());
        Map<List<String>, Acceptance> acceptances = new HashMap<>();
        for (Acceptance acceptance : outlook.event().getAcceptances()) {
            acceptances.put(List.of(String.valueOf(acceptance.getFinding()), String.valueOf(acceptance.getFacts())),
                    acceptance);
        }
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : rules) {
            rule.check(outlook, found -> findings.add(
                    Optional.ofNullable(acceptances.get(List.of(found.key(), found.facts())))
                            .map(found::acceptedBy).orElse(found)));
            progress.split(1);
        }
        findings.sort(ORDER);
        return List.copyOf(findings);
    }
}
