package org.straddle.ui.importing;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.straddle.exchange.ReadException;
import org.straddle.words.Catalogue;

/** The first step of an import: a file, which is read when the user goes on. */
final class ImportFilePage extends WizardPage {

    private static final Catalogue TEXTS = Catalogue.of(ImportFilePage.class);

    /** What the step says of the files it takes; patterns as dialogs for files want them. */
    record Words(String what, String explanation, String help, String formats, String patterns) {
    }

    /** Reads a file into the draft of the wizard, on another thread. */
    @FunctionalInterface
    interface Reading {

        /** @return what is worth saying of a file that could be read */
        List<String> read(Path file, IProgressMonitor monitor) throws ReadException;
    }

    private final Words words;
    private final Reading reading;
    private final Path first;
    private Text path;
    /** What to do about a file that cannot be read: the head of the dialog has room for what is wrong alone. */
    private Label remedy;
    private String read = "";

    /** @param first the file to begin with; may be null */
    ImportFilePage(Words words, Reading reading, Path first) {
        super("file");
        this.words = words;
        this.reading = reading;
        this.first = first;
        setTitle(TEXTS.text("importFilePage.title"));
        setDescription(words.explanation());
        setPageComplete(false);
    }

    /** One that cannot be read goes no further. */
    static void readOnTheWay(WizardDialog dialog) {
        dialog.addPageChangingListener(change -> {
            if (change.getCurrentPage() instanceof ImportFilePage page && change.getTargetPage() == page.getNextPage()) {
                change.doit = page.read();
            }
        });
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(3).margins(12, 12).spacing(10, 8).create());
        new Label(body, SWT.NONE).setText(TEXTS.text("importFilePage.file"));
        path = new Text(body, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(path);
        path.addModifyListener(change -> typed());
        Button browse = new Button(body, SWT.PUSH);
        browse.setText(TEXTS.text("importFilePage.browse"));
        browse.addListener(SWT.Selection, click -> browse());
        remedy = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).hint(500, SWT.DEFAULT).applyTo(remedy);
        Label help = new Label(body, SWT.WRAP);
        help.setText(words.help());
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).hint(500, SWT.DEFAULT).applyTo(help);
        setControl(body);
        if (first != null) {
            path.setText(first.toString());
        }
    }

    private void browse() {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
        dialog.setText(words.what());
        dialog.setFilterExtensions(new String[] {words.patterns(), "*"});
        dialog.setFilterNames(new String[] {words.formats(), TEXTS.text("importFilePage.all")});
        String chosen = dialog.open();
        if (chosen != null) {
            path.setText(chosen);
        }
    }

    private void typed() {
        read = "";
        complain(null, "");
        setMessage(null);
        setPageComplete(!path.getText().isBlank());
    }

    private void complain(String what, String whatToDo) {
        setErrorMessage(what);
        remedy.setText(whatToDo);
        remedy.requestLayout();
    }

    /** Reads the file, with progress, while the window waits; true if it could be read. */
    boolean read() {
        String wanted = path.getText().strip();
        if (wanted.equals(read)) {
            return true;
        }
        try {
            Path file = Path.of(wanted);
            List<String> remarks = new ArrayList<>();
            getContainer().run(true, true, monitor -> {
                try {
                    // The event stands still while the wizard is open, so it can be compared here, too.
                    remarks.addAll(reading.read(file, monitor));
                } catch (ReadException e) {
                    throw new InvocationTargetException(e);
                } catch (OperationCanceledException e) {
                    throw new InterruptedException();
                }
            });
            read = wanted;
            complain(null, "");
            if (!remarks.isEmpty()) {
                setMessage(String.join(" ", remarks), IMessageProvider.INFORMATION);
            }
            return true;
        } catch (InvocationTargetException e) {
            String[] lines = String.valueOf(e.getCause().getMessage()).split("\n", 2);
            complain(lines[0], lines.length > 1 ? lines[1] : "");
        } catch (InvalidPathException e) {
            complain(TEXTS.text("importFilePage.noname", "text", wanted), "");
        } catch (InterruptedException e) {
            complain(TEXTS.text("importFilePage.cancelled"), "");
        }
        return false;
    }
}
