package org.straddle.check.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.check.Finding;
import org.straddle.check.Rule;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Acceptance;
import org.straddle.model.Identified;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * An event that was checked, with what was found of each subject and what the rules read for it: after an edit only
 * subjects of whose reading something changed are looked at again ({@link #again}), and the rest stays as it was found.
 * The result is the same as that of a whole check. Rules without a scope run every time.
 */
public final class Checked {

    private static final Catalogue TEXTS = Catalogue.of(Rule.class);

    /** Heaviest first, then what holds all along, then by time; the key settles ties, so the order never varies. */
    private static final Comparator<Finding> ORDER = Checked::order;
    private static final Comparator<Finding> OF_ONE_TIME = Comparator.comparing(Finding::rule)
            .thenComparing(Finding::key).thenComparing(Finding::facts);

    /** @param reading versions of the things that the rules read for this subject */
    private record Looked(List<Object> reading, List<Finding> findings) {
    }

    private final List<Rule> rules;
    private final Outlook outlook;
    /** What the rules read for every subject. */
    private final List<Object> common;
    private final Map<String, Looked> bySubject = new HashMap<>();
    private final List<Finding> findings;
    private int looked;

    private Checked(List<Rule> rules, Outlook outlook, Checked before, IProgressMonitor monitor) {
        this.rules = rules;
        this.outlook = outlook;
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("check.progress"), rules.size());
        List<Finding> found = new ArrayList<>();
        Map<Scope<?>, List<ScopedRule<?>>> scopes = new LinkedHashMap<>();
        for (Rule rule : rules) {
            if (rule instanceof ScopedRule<?> scoped) {
                scopes.computeIfAbsent(scoped.scope(), any -> new ArrayList<>()).add(scoped);
            } else {
                rule.check(outlook, found::add);
                progress.split(1);
            }
        }
        Inspection in = Inspection.of(outlook);
        common = new ArrayList<>(outlook.conditions());
        common.add(outlook.versions().ofHead());
        Checked usable = outlook.versions().isUnique() && before != null && before.outlook.versions().isUnique()
                && before.common.equals(common) ? before : null;
        scopes.forEach((scope, ofScope) -> {
            look(scope, ofScope, in, usable, found);
            progress.split(ofScope.size());
        });
        found.replaceAll(finding -> finding.in(outlook.zone()));
        findings = List.copyOf(accepted(found));
    }

    /** Written out, because after every edit thousands are sorted. */
    private static int order(Finding a, Finding b) {
        int bySeverity = a.severity().compareTo(b.severity());
        if (bySeverity != 0) {
            return bySeverity;
        }
        int byTime = a.when().isEmpty() || b.when().isEmpty() ? Boolean.compare(a.when().isPresent(), b.when().isPresent())
                : a.when().get().compareTo(b.when().get());
        return byTime != 0 ? byTime : OF_ONE_TIME.compare(a, b);
    }

    static Checked of(List<Rule> rules, Outlook outlook, IProgressMonitor monitor) {
        return new Checked(rules, outlook, null, monitor);
    }

    /**
     * Checks a later state of the same event.
     *
     * @param later   made by {@link Outlook#after} from the outlook of this check, else everything is looked at
     * @param monitor told of progress; may be null
     */
    public Checked again(Outlook later, IProgressMonitor monitor) {
        return new Checked(rules, later, this, monitor);
    }

    public Outlook outlook() {
        return outlook;
    }

    /** Heaviest first, then by time; their objects are those of the outlook's event. */
    public List<Finding> findings() {
        return findings;
    }

    /** How many subjects were looked at; the others are as they were. */
    public int looked() {
        return looked;
    }

    /** How many subjects there are. */
    public int subjects() {
        return bySubject.size();
    }

    private <T> void look(Scope<T> scope, List<ScopedRule<?>> ofScope, Inspection in, Checked before,
            List<Finding> found) {
        for (T subject : scope.subjects(in)) {
            String key = scope.key(subject);
            List<Object> reading = new ArrayList<>();
            scope.reads(subject, in).forEach(thing -> reading.add(outlook.versions().of(thing)));
            Looked earlier = before == null ? null : before.bySubject.get(key);
            List<Finding> about;
            if (earlier != null && earlier.reading.equals(reading)) {
                about = moved(earlier.findings);
            } else {
                about = new ArrayList<>();
                ofScope.forEach(rule -> check(rule, subject, in, about));
                looked++;
            }
            bySubject.put(key, new Looked(reading, about));
            found.addAll(about);
        }
    }

    @SuppressWarnings("unchecked") // a rule is only given subjects of its own scope
    private static <T> void check(ScopedRule<?> rule, T subject, Inspection in, List<Finding> about) {
        ((ScopedRule<T>) rule).check(subject, in, about::add);
    }

    private List<Finding> accepted(List<Finding> found) {
        Map<List<String>, Acceptance> acceptances = new HashMap<>();
        for (Acceptance acceptance : outlook.event().getAcceptances()) {
            acceptances.put(List.of(String.valueOf(acceptance.getFinding()), String.valueOf(acceptance.getFacts())),
                    acceptance);
        }
        if (!acceptances.isEmpty()) {
            found.replaceAll(finding -> Optional.ofNullable(acceptances.get(List.of(finding.key(), finding.facts())))
                    .map(finding::acceptedBy).orElse(finding));
        }
        found.sort(ORDER);
        return found;
    }

    /** The same about the things of this copy of the event. */
    private List<Finding> moved(List<Finding> earlier) {
        List<Finding> moved = new ArrayList<>(earlier.size());
        for (Finding finding : earlier) {
            List<Identified> objects = new ArrayList<>(finding.objects().size());
            for (Identified object : finding.objects()) {
                objects.add(outlook.versions().find(object.getId()).orElseThrow());
            }
            moved.add(finding.about(objects));
        }
        return moved;
    }
}
