package org.straddle.ui.importing;

import java.util.ArrayList;
import java.util.List;

import org.straddle.exchange.sites.SiteChange;
import org.straddle.words.Catalogue;

/**
 * One row of the preview: one thing that a line of the file changes.
 *
 * @param line  empty in all rows of a line but the first
 * @param grade how the row is marked
 */
record PreviewLine(String line, Grade grade, String change, String site, String field, String was, String now) {

    private static final Catalogue TEXTS = Catalogue.of(PreviewLine.class);

    /** What a row is to the user. */
    enum Grade { NEW, CHANGED, UNCHANGED, REFUSED }

    static List<PreviewLine> of(SiteChange change) {
        String line = String.valueOf(change.line());
        if (change instanceof SiteChange.New added) {
            return details(line, Grade.NEW, TEXTS.text("previewLine.new"), added.name(), added.details());
        }
        if (change instanceof SiteChange.Changed changed) {
            return details(line, Grade.CHANGED, TEXTS.text("previewLine.changed"), changed.name(), changed.details());
        }
        return List.of(change instanceof SiteChange.Refused refused
                ? new PreviewLine(line, Grade.REFUSED, TEXTS.text("previewLine.refused"), refused.name(), "", "", refused.reason())
                : new PreviewLine(line, Grade.UNCHANGED, TEXTS.text("previewLine.unchanged"), change.name(), "", "", ""));
    }

    private static List<PreviewLine> details(String line, Grade grade, String word, String site, List<SiteChange.Detail> details) {
        List<PreviewLine> lines = new ArrayList<>();
        for (SiteChange.Detail detail : details) {
            boolean first = lines.isEmpty();
            lines.add(new PreviewLine(first ? line : "", grade, first ? word : "", first ? site : "", detail.field().word(), detail.was(),
                    detail.now()));
        }
        return lines;
    }
}
