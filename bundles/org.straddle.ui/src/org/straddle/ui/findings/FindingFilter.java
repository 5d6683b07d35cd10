package org.straddle.ui.findings;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.naming.Naming;

/** Lets through the severities that are switched on and findings that have all words in their text. */
final class FindingFilter extends ViewerFilter {

    private final Set<Severity> shown = EnumSet.allOf(Severity.class);
    private boolean accepted;
    private String[] words = {};

    void show(Severity severity, boolean on) {
        if (on) {
            shown.add(severity);
        } else {
            shown.remove(severity);
        }
    }

    boolean shows(Severity severity) {
        return shown.contains(severity);
    }

    void showAccepted(boolean on) {
        accepted = on;
    }

    void words(String text) {
        words = text.isBlank() ? new String[0] : text.strip().toLowerCase(Locale.ROOT).split("\\s+");
    }

    boolean lets(Finding finding) {
        return shown.contains(finding.severity()) && (accepted || finding.accepted().isEmpty()) && hasWords(finding);
    }

    private boolean hasWords(Finding finding) {
        StringBuilder text = new StringBuilder(finding.sentence()).append(' ').append(finding.rule());
        finding.objects().forEach(thing -> text.append(' ').append(Naming.name(thing)));
        String all = text.toString().toLowerCase(Locale.ROOT);
        for (String word : words) {
            if (!all.contains(word)) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean select(Viewer viewer, Object parent, Object element) {
        return lets((Finding) element);
    }
}
