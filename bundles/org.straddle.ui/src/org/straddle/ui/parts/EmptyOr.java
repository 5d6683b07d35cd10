package org.straddle.ui.parts;

import java.util.function.Function;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/**
 * A view's content, or a heading and a sentence in its place when there is nothing to show: no view is ever blank.
 */
public final class EmptyOr<T> {

    private final Composite stack;
    private final StackLayout pages = new StackLayout();
    private final Composite body;
    private final Composite empty;
    private final Label heading;
    private final Label sentence;
    private final T content;

    public EmptyOr(Composite parent, String heading, String sentence, Function<Composite, T> content) {
        stack = new Composite(parent, SWT.NONE);
        stack.setLayout(pages);
        empty = new Composite(stack, SWT.NONE);
        empty.setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        empty.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayout margins = new GridLayout();
        margins.marginWidth = 14;
        margins.marginHeight = 12;
        empty.setLayout(margins);
        this.heading = label();
        this.heading.setFont(JFaceResources.getBannerFont());
        this.sentence = label();
        body = new Composite(stack, SWT.NONE);
        body.setLayout(new FillLayout());
        this.content = content.apply(body);
        say(heading, sentence);
        showContent(false);
    }

    public T content() {
        return content;
    }

    /** The outermost control, for layout data. */
    public Control control() {
        return stack;
    }

    /** Shows a heading and a sentence instead of the content. */
    public void say(String newHeading, String newSentence) {
        if (!heading.getText().equals(newHeading) || !sentence.getText().equals(newSentence)) {
            heading.setText(newHeading);
            sentence.setText(newSentence);
            empty.layout(true, true);
        }
        showContent(false);
    }

    public void showContent(boolean shown) {
        Control top = shown ? body : empty;
        if (pages.topControl != top) {
            pages.topControl = top;
            stack.layout();
        }
    }

    public void setFocus() {
        if (pages.topControl == body) {
            (content instanceof Viewer viewer ? viewer.getControl() : body).setFocus();
        } else {
            stack.setFocus();
        }
    }

    private Label label() {
        Label label = new Label(empty, SWT.WRAP);
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return label;
    }
}
