package org.straddle.ui.safety;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.Bullet;
import org.eclipse.swt.custom.ST;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GlyphMetrics;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.straddle.model.Review;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Visit;
import org.straddle.model.naming.Naming;
import org.straddle.safety.HazardNote;
import org.straddle.safety.SafetyNotes;
import org.straddle.words.Catalogue;
import org.straddle.words.Sentence;

/** Safety notes as one text with headings and bullets: it wraps, scrolls by keyboard, and can be copied. */
final class NotesText {

    private static final Catalogue TEXTS = Catalogue.of(NotesText.class);

    private static final int MARGIN = 8;
    private static final int BULLET_INDENT = 24;

    private final StyledText text;
    private final StringBuilder words = new StringBuilder();
    private final List<StyleRange> bold = new ArrayList<>();
    private final List<Integer> bullets = new ArrayList<>();
    private Put put = new Put("", List.of(), List.of());

    /** What stands in the text. */
    private record Put(String words, List<StyleRange> bold, List<Integer> bullets) {
    }

    NotesText(Composite parent) {
        text = new StyledText(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setAlwaysShowScrollBars(false);
        text.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = TEXTS.text("notesText.name")));
        text.addTraverseListener(key -> key.doit |= key.detail == SWT.TRAVERSE_TAB_NEXT
                || key.detail == SWT.TRAVERSE_TAB_PREVIOUS);
    }

    Control control() {
        return text;
    }

    void setFocus() {
        text.setFocus();
    }

    void show(SafetyNotes notes) {
        words.setLength(0);
        bold.clear();
        bullets.clear();
        if (!notes.remarks().isEmpty()) {
            heading(TEXTS.text("notesText.first"));
            notes.remarks().forEach(this::bullet);
            line("");
        }
        notes.hazards().forEach(this::hazard);
        if (!notes.hazards().isEmpty()) {
            line(SafetyNotes.DEFERENCE);
            line("");
        }
        notes.visit().ifPresent(this::visit);
        notes.review().ifPresent(this::review);
        put();
    }

    private void hazard(HazardNote hazard) {
        heading(Sentence.begun(hazard.title()));
        line(hazard.measure().isEmpty() ? hazard.measureText() : TEXTS.text("notesText.measure", "measure", hazard.measureText()));
        hazard.cautions().forEach(this::bullet);
        line("");
    }

    private void visit(Visit visit) {
        heading(signed("visit", visit.getDate(), visit.getVisitor()));
        fact(Literals.VISIT__ACCESS, visit.getAccess());
        fact(Literals.VISIT__ALLOWED_BY, visit.getAllowedBy());
        fact(Literals.VISIT__PARKING, visit.getParking());
        fact(Literals.VISIT__SURFACE, visit.getSurface());
        fact(Literals.VISIT__PHONE_COVERAGE, visit.getPhoneCoverage());
        fact(Literals.VISIT__NOTE, visit.getNote());
        line("");
    }

    private void review(Review review) {
        heading(signed("review", review.getDate(), review.getReviewer()));
        fact(Literals.REVIEW__VERDICT, Naming.of(review.getVerdict()));
        fact(Literals.REVIEW__CONDITIONS, review.getConditions());
    }

    private static String signed(String what, LocalDate day, String by) {
        return TEXTS.text("notesText.signed." + what, "day", day == null ? TEXTS.text("notesText.unknown") : day, "known",
                blank(by) ? "no" : "yes", "by", blank(by) ? "" : by.strip());
    }

    private void heading(String heading) {
        StyleRange range = new StyleRange(words.length(), heading.length(), null, null, SWT.BOLD);
        bold.add(range);
        line(heading);
    }

    private void fact(EStructuralFeature feature, String fact) {
        if (!blank(fact)) {
            line(TEXTS.text("notesText.fact", "name", Naming.feature(feature), "fact", fact.strip().replaceAll("\\s+", " ")));
        }
    }

    private void bullet(String sentence) {
        bullets.add((int) words.chars().filter(letter -> letter == '\n').count());
        line(sentence);
    }

    private void line(String line) {
        words.append(line).append('\n');
    }

    /** Keeps the place in sight when the same site is shown again. */
    private void put() {
        Put fresh = new Put(words.toString().stripTrailing(), List.copyOf(bold), List.copyOf(bullets));
        if (fresh.equals(put)) {
            return;
        }
        put = fresh;
        int top = text.getTopPixel();
        text.setRedraw(false);
        text.setText(fresh.words());
        bold.forEach(text::setStyleRange);
        StyleRange width = new StyleRange();
        width.metrics = new GlyphMetrics(0, 0, BULLET_INDENT);
        Bullet dot = new Bullet(ST.BULLET_DOT, width);
        bullets.forEach(line -> text.setLineBullet(line, 1, dot));
        bullets.forEach(line -> text.setLineWrapIndent(line, 1, BULLET_INDENT));
        text.setTopPixel(top);
        text.setRedraw(true);
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
