package org.straddle.ui.safety.guided;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Shell;
import org.straddle.model.naming.Naming;
import org.straddle.safety.guided.GuidedReview;
import org.straddle.safety.guided.Question;
import org.straddle.words.Catalogue;

/** One question on the screen at a time. Enter goes on, Alt+B goes back, and what was answered stays. */
public final class GuidedReviewDialog extends TitleAreaDialog {

    private static final Catalogue TEXTS = Catalogue.of(GuidedReviewDialog.class);

    private static final int BACK = IDialogConstants.BACK_ID;
    private static final int NEXT = IDialogConstants.NEXT_ID;
    private static final int WIDE_PX = 560;
    private static final int HIGH_PX = 220;

    private GuidedReview review;
    private int place;
    private Composite body;
    private Label text;
    private Label help;
    private Composite answerPlace;
    private AnswerField answer;
    private ProgressBar progress;

    public GuidedReviewDialog(Shell parent, GuidedReview review) {
        super(parent);
        this.review = review;
        setShellStyle(getShellStyle() | SWT.RESIZE);
        setHelpAvailable(false);
    }

    /** With all answers, once the dialog was left by its last button. */
    public GuidedReview review() {
        return review;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(TEXTS.text("guidedReview.title", "site", Naming.name(review.site())));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        body = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDE_PX, HIGH_PX).applyTo(body);
        GridLayoutFactory.swtDefaults().margins(14, 12).spacing(6, 10).applyTo(body);
        text = words(true);
        help = words(false);
        answerPlace = new Composite(body, SWT.NONE);
        answerPlace.setLayout(GridLayoutFactory.fillDefaults().create());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(answerPlace);
        progress = new ProgressBar(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(progress);
        return body;
    }

    private Label words(boolean bold) {
        Label label = new Label(body, SWT.WRAP);
        if (bold) {
            label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        }
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDE_PX, SWT.DEFAULT).applyTo(label);
        return label;
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        ask();
        return contents;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, BACK, TEXTS.text("guidedReview.back"), false);
        createButton(parent, NEXT, TEXTS.text("guidedReview.next"), true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void buttonPressed(int button) {
        if (button == NEXT) {
            next();
        } else if (button == BACK) {
            keep();
            place = Math.max(0, place - 1);
            ask();
        } else {
            super.buttonPressed(button);
        }
    }

    private Question question() {
        return review.questions().get(place);
    }

    private void keep() {
        review = review.with(question(), answer.text());
    }

    private void next() {
        keep();
        Optional<String> problem = review.problem(question(), answer.text());
        if (problem.isPresent()) {
            setMessage(problem.get(), IMessageProvider.ERROR);
            answer.setFocus();
        } else if (place < review.questions().size() - 1) {
            place++;
            ask();
        } else {
            finish();
        }
    }

    /** Goes to the first question that still keeps it from being signed. */
    private void finish() {
        List<Question> all = review.questions();
        for (int at = 0; at < all.size(); at++) {
            Optional<String> problem = review.problem(all.get(at), review.answer(all.get(at)));
            if (problem.isPresent()) {
                place = at;
                ask();
                setMessage(problem.get(), IMessageProvider.ERROR);
                return;
            }
        }
        okPressed();
    }

    private void ask() {
        List<Question> all = review.questions();
        Question question = all.get(place);
        setTitle(question.section());
        setMessage(TEXTS.text("guidedReview.place", "number", place + 1, "all", all.size()), IMessageProvider.NONE);
        text.setText(question.text().replace("&", "&&"));
        help.setText(question.help().replace("&", "&&"));
        for (Control old : answerPlace.getChildren()) {
            old.dispose();
        }
        answer = AnswerField.of(answerPlace, question, review.answer(question));
        progress.setMaximum(all.size());
        progress.setSelection(place + 1);
        getButton(BACK).setEnabled(place > 0);
        Button next = getButton(NEXT);
        next.setText(TEXTS.text(place == all.size() - 1 ? "guidedReview.sign" : "guidedReview.next"));
        body.layout(true, true);
        answer.setFocus();
    }
}
