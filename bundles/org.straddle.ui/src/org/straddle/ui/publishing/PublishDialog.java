package org.straddle.ui.publishing;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.publish.NextRevision;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;

/** Asks for the number of the revision and the folder of the sheets, which may be typed or chosen. */
final class PublishDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(PublishDialog.class);

    private final NextRevision next;
    private final Path offered;
    private Text number;
    private Text folder;
    private int chosenNumber;
    private Path chosenFolder;

    PublishDialog(Shell parent, NextRevision next, Path offered) {
        super(parent, TEXTS.text("publishEvent.title"), TEXTS.text("publishDialog.explanation"),
                TEXTS.text("publishDialog.next"), 3);
        this.next = next;
        this.offered = offered;
    }

    int number() {
        return chosenNumber;
    }

    Path folder() {
        return chosenFolder;
    }

    @Override
    protected void fields(Composite body) {
        number = text(body, TEXTS.text("publishDialog.revision"), Integer.toString(next.number()), 2);
        folder = text(body, TEXTS.text("publishDialog.folder"), offered.toString(), 1);
        Button choose = new Button(body, SWT.PUSH);
        choose.setText(TEXTS.text("publishDialog.choose"));
        choose.addListener(SWT.Selection, click -> choose());
    }

    private Text text(Composite body, String label, String value, int columns) {
        Text text = line(body, label, value, 380);
        ((GridData) text.getLayoutData()).horizontalSpan = columns;
        text.addModifyListener(change -> answered());
        return text;
    }

    private void choose() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setText(TEXTS.text("publishEvent.title"));
        dialog.setMessage(TEXTS.text("publishEvent.folder"));
        dialog.setFilterPath(folder.getText());
        String chosen = dialog.open();
        if (chosen != null) {
            folder.setText(chosen);
        }
    }

    @Override
    protected boolean complete() {
        String problem = problem();
        setErrorMessage(problem);
        return problem == null;
    }

    /** What is wrong with the answer; null when nothing is. */
    private String problem() {
        String digits = number.getText().strip();
        if (!digits.matches("\\d{1,6}")) {
            return TEXTS.text("publishEvent.revision.wrong", "next", next.number());
        }
        chosenNumber = Integer.parseInt(digits);
        if (next.whyNot(chosenNumber).isPresent()) {
            return next.whyNot(chosenNumber).get().replace('\n', ' ');
        }
        try {
            chosenFolder = Path.of(folder.getText().strip());
        } catch (InvalidPathException wrong) {
            return TEXTS.text("publishDialog.folder.noname", "name", folder.getText());
        }
        if (!chosenFolder.isAbsolute()) {
            return TEXTS.text("publishDialog.folder.relative");
        }
        return Files.exists(chosenFolder) && !Files.isDirectory(chosenFolder)
                ? TEXTS.text("publishDialog.folder.file", "folder", chosenFolder) : null;
    }
}
