package org.straddle.ui.workbench;

import org.eclipse.core.runtime.IProduct;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;
import org.straddle.words.Catalogue;

/** What this program is, and which version of it runs: the text can be copied into a report. */
final class AboutDialog extends Dialog {

    private static final Catalogue TEXTS = Catalogue.of(AboutDialog.class);

    private static final String NAME = "Straddle";
    private static final String NOTICES = TEXTS.text("aboutDialog.libraries");

    private AboutDialog(Shell parent) {
        super(parent);
    }

    static void show(Shell parent) {
        new AboutDialog(parent).open();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(TEXTS.text("aboutDialog.title", "name", NAME));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(18, 18).spacing(18, 8).applyTo(area);
        Label image = new Label(area, SWT.NONE);
        image.setImage(ApplicationImages.image(128));
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.TOP).span(1, 3).applyTo(image);
        Label name = new Label(area, SWT.NONE);
        name.setText(NAME);
        name.setFont(JFaceResources.getHeaderFont());
        text(area, TEXTS.text("aboutDialog.version", "version", version(), "java", Runtime.version(),
                "system", System.getProperty("os.name"), "release", System.getProperty("os.version")));
        text(area, words());
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        if (ThirdParty.file().isPresent()) {
            createButton(parent, IDialogConstants.DETAILS_ID, NOTICES, false);
        }
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CLOSE_LABEL, true).setFocus();
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == IDialogConstants.DETAILS_ID) {
            ThirdParty.file().ifPresent(file -> new ThirdParty(getShell(), file).open());
        } else {
            super.buttonPressed(id);
        }
    }

    private static void text(Composite area, String words) {
        Text text = new Text(area, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY);
        text.setBackground(area.getBackground());
        text.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).hint(400, SWT.DEFAULT).applyTo(text);
    }

    private static String words() {
        IProduct product = Platform.getProduct();
        return product == null || product.getProperty("aboutText") == null ? "" : product.getProperty("aboutText");
    }

    private static String version() {
        Version version = FrameworkUtil.getBundle(AboutDialog.class).getVersion();
        String number = version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
        return version.getQualifier().isEmpty() ? number : TEXTS.text("aboutDialog.build", "number", number,
                "qualifier", version.getQualifier());
    }
}
