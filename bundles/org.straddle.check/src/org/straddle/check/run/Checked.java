package org.straddle.check.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

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
    private static final Comparator<Keyed> ORDER = Checked::order;
    private static final Comparator<Keyed> OF_ONE_TIME = Comparator.comparing((Keyed keyed) -> keyed.finding.rule())
            .thenComparing(Keyed::key).thenComparing(keyed -> keyed.finding.facts());

    /** A finding with its key, made once: it stays the same in every copy of the event. */
    private static final class Keyed {

        private final Finding finding;
        private final String key;
        /** Where it came in order, in the check that it is of; −1 before that is known. */
        private int place = -1;

        Keyed(Finding finding) {
            this(finding, finding.key());
        }

        private Keyed(Finding finding, String key) {
            this.finding = finding;
            this.key = key;
        }

        Keyed with(Finding other) {
            Keyed same = new Keyed(other, key);
            same.place = place;
            return same;
        }

        String key() {
            return key;
        }
    }

    /** @param reading versions of the things that the rules read for this subject */
    private record Looked(List<Object> reading, List<Keyed> findings) {
    }

    private final List<Rule> rules;
    private final Outlook outlook;
    private final Inspection in;
    /** What the rules read for every subject. */
    private final List<Object> common;
    private final Map<String, Looked> bySubject = new HashMap<>();
    private final List<Finding> findings;
    private int looked;

    private Checked(List<Rule> rules, Outlook outlook, Checked before, IProgressMonitor monitor) {
        this.rules = rules;
        this.outlook = outlook;
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("check.progress"), rules.size());
        List<Keyed> found = new ArrayList<>();
        Map<Scope<?>, List<ScopedRule<?>>> scopes = new LinkedHashMap<>();
        for (Rule rule : rules) {
            if (rule instanceof ScopedRule<?> scoped) {
                scopes.computeIfAbsent(scoped.scope(), any -> new ArrayList<>()).add(scoped);
            } else {
                rule.check(outlook, finding -> found.add(new Keyed(finding.in(outlook.zone()))));
                progress.split(1);
            }
        }
        common = new ArrayList<>(outlook.conditions());
        common.add(outlook.versions().ofHead());
        Checked usable = outlook.versions().isUnique() && before != null && before.outlook.versions().isUnique()
                && before.common.equals(common) ? before : null;
        in = usable == null ? Inspection.of(outlook) : usable.in.after(outlook);
        scopes.forEach((scope, ofScope) -> {
            look(scope, ofScope, usable, found);
            progress.split(ofScope.size());
        });
        findings = accepted(found, usable == null ? 0 : usable.findings.size());
    }

    /** Written out, because after every edit thousands are sorted. */
    private static int order(Keyed one, Keyed other) {
        Finding a = one.finding;
        Finding b = other.finding;
        int bySeverity = a.severity().compareTo(b.severity());
        if (bySeverity != 0) {
            return bySeverity;
        }
        int byTime = a.when().isEmpty() || b.when().isEmpty() ? Boolean.compare(a.when().isPresent(), b.when().isPresent())
                : a.when().get().compareTo(b.when().get());
        return byTime != 0 ? byTime : OF_ONE_TIME.compare(one, other);
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

    private <T> void look(Scope<T> scope, List<ScopedRule<?>> ofScope, Checked before, List<Keyed> found) {
        for (T subject : scope.subjects(in)) {
            String key = scope.key(subject);
            List<Object> reading = scope.reading(subject, in);
            Looked earlier = before == null ? null : before.bySubject.get(key);
            List<Keyed> about;
            if (earlier != null && earlier.reading.equals(reading)) {
                about = moved(earlier.findings);
            } else {
                List<Keyed> now = new ArrayList<>();
                ofScope.forEach(rule -> check(rule, subject, finding -> now.add(new Keyed(finding.in(outlook.zone())))));
                about = now;
                looked++;
            }
            bySubject.put(key, new Looked(reading, about));
            found.addAll(about);
        }
    }

    @SuppressWarnings("unchecked") // a rule is only given subjects of its own scope
    private <T> void check(ScopedRule<?> rule, T subject, Consumer<Finding> about) {
        ((ScopedRule<T>) rule).check(subject, in, about);
    }

    /** @param before number of findings of the check before */
    private List<Finding> accepted(List<Keyed> found, int before) {
        Map<List<String>, Acceptance> acceptances = new HashMap<>();
        for (Acceptance acceptance : outlook.event().getAcceptances()) {
            acceptances.put(List.of(String.valueOf(acceptance.getFinding()), String.valueOf(acceptance.getFacts())),
                    acceptance);
        }
        List<Keyed> ordered = sorted(found, before);
        List<Finding> accepted = new ArrayList<>(ordered.size());
        for (int i = 0; i < ordered.size(); i++) {
            Keyed keyed = ordered.get(i);
            keyed.place = i;
            accepted.add(acceptances.isEmpty() ? keyed.finding
                    : Optional.ofNullable(acceptances.get(List.of(keyed.key, keyed.finding.facts())))
                            .map(keyed.finding::acceptedBy).orElse(keyed.finding));
        }
        return List.copyOf(accepted);
    }

    /** Those that stay come as they came before, which leaves little to sort. */
    private static List<Keyed> sorted(List<Keyed> found, int before) {
        Keyed[] stayed = new Keyed[before];
        List<Keyed> fresh = new ArrayList<>();
        for (Keyed keyed : found) {
            if (keyed.place >= 0) {
                stayed[keyed.place] = keyed;
            } else {
                fresh.add(keyed);
            }
        }
        List<Keyed> all = new ArrayList<>(found.size());
        for (Keyed keyed : stayed) {
            if (keyed != null) {
                all.add(keyed);
            }
        }
        all.addAll(fresh);
        all.sort(ORDER);
        return all;
    }

    /** The same about the things of this copy of the event. */
    private List<Keyed> moved(List<Keyed> earlier) {
        List<Keyed> moved = new ArrayList<>(earlier.size());
        for (Keyed keyed : earlier) {
            Identified[] objects = new Identified[keyed.finding.objects().size()];
            for (int i = 0; i < objects.length; i++) {
                objects[i] = outlook.versions().find(keyed.finding.objects().get(i).getId()).orElseThrow();
            }
            moved.add(keyed.with(keyed.finding.about(List.of(objects))));
        }
        return moved;
    }
}
