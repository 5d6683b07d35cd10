package org.straddle.ui.workbench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.words.Catalogue;

/** Name, version and licence of every library that Straddle is packed with, from the file that was packed with it. */
final class ThirdParty extends Dialog {

    private static final Catalogue TEXTS = Catalogue.of(ThirdParty.class);

    private static final String FILE = "THIRD-PARTY.txt";
    private static final String TITLE = TEXTS.text("thirdParty.title");

    private final Path file;

    ThirdParty(Shell parent, Path file) {
        super(parent);
        this.file = file;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** None where the program was not packed. */
    static Optional<Path> file() {
        Location install = Platform.getInstallLocation();
        if (install == null || install.getURL() == null) {
            return Optional.empty();
        }
        Path file = new File(install.getURL().getPath(), FILE).toPath();
        return Files.isRegularFile(file) ? Optional.of(file) : Optional.empty();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(TITLE);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        GridLayoutFactory.fillDefaults().margins(12, 12).applyTo(area);
        Text text = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.BORDER | SWT.H_SCROLL | SWT.V_SCROLL);
        text.setFont(JFaceResources.getTextFont());
        text.setText(words());
        GridDataFactory.fillDefaults().grab(true, true).hint(900, 500).applyTo(text);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CLOSE_LABEL, true);
    }

    private String words() {
        try {
            return Files.readString(file);
        } catch (IOException failure) {
            return TEXTS.text("thirdParty.unreadable", "file", file, "reason", failure.getMessage());
        }
    }
}
