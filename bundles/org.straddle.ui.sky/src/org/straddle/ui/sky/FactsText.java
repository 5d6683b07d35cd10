package org.straddle.ui.sky;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.straddle.ui.sky.pass.SheetWords.Fact;

/** Headings and sentences, to read and to copy. */
final class FactsText {

    private final StyledText text;

    FactsText(Composite parent, String name) {
        text = new StyledText(parent, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        text.setMargins(8, 6, 8, 6);
        text.setCaret(null);
        text.setWrapIndent(14);
        text.setLineSpacing(2);
        Accessibility.name(text, name);
        text.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
                event.doit = true;
            }
        });
    }

    void show(List<Fact> facts) {
        StringBuilder words = new StringBuilder();
        List<StyleRange> bold = new ArrayList<>();
        for (Fact fact : facts) {
            StyleRange heading = new StyleRange();
            heading.start = words.length();
            heading.length = fact.heading().length() + 1;
            heading.font = JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT);
            bold.add(heading);
            words.append(fact.heading()).append(": ").append(fact.text()).append('\n');
        }
        text.setText(words.toString().stripTrailing());
        text.setStyleRanges(bold.toArray(StyleRange[]::new));
    }
}
