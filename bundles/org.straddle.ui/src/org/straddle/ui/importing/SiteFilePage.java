package org.straddle.ui.importing;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.formats.Purpose;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.words.Catalogue;

/** The first step: a file, which is read when the user goes on. */
final class SiteFilePage extends WizardPage {

    private static final Catalogue TEXTS = Catalogue.of(SiteFilePage.class);

    private final SiteDraft draft;
    private final Path first;
    private Text path;
    /** What to do about a file that cannot be read: the head of the dialog has room for what is wrong alone. */
    private Label remedy;
    private String read = "";

    SiteFilePage(SiteDraft draft, Path first) {
        super("file");
        this.draft = draft;
        this.first = first;
        setTitle(TEXTS.text("siteFilePage.title"));
        setDescription(TEXTS.text("siteFilePage.explanation"));
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(3).margins(12, 12).spacing(10, 8).create());
        new Label(body, SWT.NONE).setText(TEXTS.text("siteFilePage.file"));
        path = new Text(body, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(path);
        path.addModifyListener(change -> typed());
        Button browse = new Button(body, SWT.PUSH);
        browse.setText(TEXTS.text("siteFilePage.browse"));
        browse.addListener(SWT.Selection, click -> browse());
        remedy = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).hint(500, SWT.DEFAULT).applyTo(remedy);
        Label help = new Label(body, SWT.WRAP);
        help.setText(TEXTS.text("siteFilePage.help"));
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).hint(500, SWT.DEFAULT).applyTo(help);
        setControl(body);
        if (first != null) {
            path.setText(first.toString());
        }
    }

    private void browse() {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
        dialog.setText(TEXTS.text("siteWizard.title"));
        dialog.setFilterExtensions(new String[] {Purpose.SITES.patterns(), "*"});
        dialog.setFilterNames(new String[] {Purpose.SITES.names(), TEXTS.text("siteFilePage.all")});
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
            SourceTable[] table = new SourceTable[1];
            getContainer().run(true, true, monitor -> {
                try {
                    table[0] = SourceTable.read(file, monitor);
                    // The event stands still while the wizard is open, so it can be compared here, too.
                    draft.take(table[0]);
                    draft.preview();
                } catch (ReadException e) {
                    throw new InvocationTargetException(e);
                } catch (OperationCanceledException e) {
                    throw new InterruptedException();
                }
            });
            read = wanted;
            complain(null, "");
            if (!table[0].remarks().isEmpty()) {
                setMessage(String.join(" ", table[0].remarks()), IMessageProvider.INFORMATION);
            }
            return true;
        } catch (InvocationTargetException e) {
            String[] lines = String.valueOf(e.getCause().getMessage()).split("\n", 2);
            complain(lines[0], lines.length > 1 ? lines[1] : "");
        } catch (InvalidPathException e) {
            complain(TEXTS.text("siteFilePage.noname", "text", wanted), "");
        } catch (InterruptedException e) {
            complain(TEXTS.text("siteFilePage.cancelled"), "");
        }
        return false;
    }
}
