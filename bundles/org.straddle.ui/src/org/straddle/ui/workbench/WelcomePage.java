package org.straddle.ui.workbench;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IPersistableElement;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ImageHyperlink;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.part.EditorPart;
import org.straddle.ui.folder.EventDialogs;
import org.straddle.ui.folder.OpenEvent;
import org.straddle.ui.folder.RecentEvents;
import org.straddle.ui.start.NewEventWizard;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/** What one can do while no event is open. */
public final class WelcomePage extends EditorPart {

    private static final Catalogue TEXTS = Catalogue.of(WelcomePage.class);

    static final String ID = "org.straddle.ui.welcome";
    static final IEditorInput INPUT = new Input();

    private ImageHyperlink first;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        FormToolkit toolkit = new FormToolkit(parent.getDisplay());
        parent.addDisposeListener(gone -> toolkit.dispose());
        ScrolledForm form = toolkit.createScrolledForm(parent);
        Composite body = form.getBody();
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 32;
        layout.marginHeight = 20;
        layout.horizontalSpacing = 18;
        layout.verticalSpacing = 18;
        body.setLayout(layout);

        Label mark = toolkit.createLabel(body, "");
        mark.setImage(ApplicationImages.image(64));
        mark.setLayoutData(new GridData(SWT.BEGINNING, SWT.TOP, false, false));
        Composite words = column(toolkit, body);
        toolkit.createLabel(words, TEXTS.text("welcomePage.title")).setFont(JFaceResources.getHeaderFont());
        Label text = toolkit.createLabel(words, TEXTS.text("welcomePage.text"), SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(480, SWT.DEFAULT).applyTo(text);

        toolkit.createLabel(body, "");
        Composite ways = toolkit.createComposite(body);
        ways.setLayout(new GridLayout(3, false));
        ((GridLayout) ways.getLayout()).horizontalSpacing = 36;
        ((GridLayout) ways.getLayout()).marginWidth = 0;
        first = link(toolkit, ways,
                "open", TEXTS.text("welcomePage.open"), TEXTS.text("welcomePage.open.text"),
                () -> EventDialogs.open(getSite().getShell()));
        link(toolkit, ways, "new", TEXTS.text("welcomePage.new"), TEXTS.text("welcomePage.new.text"),
                () -> NewEventWizard.ask(getSite().getShell()));
        link(toolkit, ways, "demo", TEXTS.text("welcomePage.demo"),
                TEXTS.text("welcomePage.demo.text"),
                () -> EventDialogs.makeDemo(getSite().getShell()));
        recent(toolkit, body);
        form.reflow(true);
    }

    private void recent(FormToolkit toolkit, Composite body) {
        List<Path> recent = RecentEvents.list();
        if (recent.isEmpty()) {
            return;
        }
        toolkit.createLabel(body, "");
        Composite words = column(toolkit, body);
        toolkit.createLabel(words, TEXTS.text("welcomePage.recent")).setFont(JFaceResources.getBannerFont());
        for (Path path : recent) {
            link(toolkit, words, "event", path.getFileName().toString(), path.toString(),
                    () -> OpenEvent.open(getSite().getShell(), path));
        }
    }

    private static Composite column(FormToolkit toolkit, Composite parent) {
        Composite column = toolkit.createComposite(parent);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 6;
        column.setLayout(layout);
        return column;
    }

    private static ImageHyperlink link(FormToolkit toolkit, Composite parent, String icon, String text,
            String explanation, Runnable action) {
        Composite words = column(toolkit, parent);
        words.setLayoutData(new GridData(SWT.BEGINNING, SWT.TOP, false, false));
        ((GridLayout) words.getLayout()).verticalSpacing = 1;
        ImageHyperlink link = toolkit.createImageHyperlink(words, SWT.NONE);
        link.setImage(Icons.image(icon));
        link.setText(text);
        link.setUnderlined(true);
        link.addHyperlinkListener(new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent click) {
                action.run();
            }
        });
        Label small = toolkit.createLabel(words, explanation);
        small.setForeground(parent.getDisplay().getSystemColor(SWT.COLOR_DARK_GRAY));
        GridData place = new GridData();
        place.horizontalIndent = 22;
        small.setLayoutData(place);
        return link;
    }

    @Override
    public void setFocus() {
        first.setFocus();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // Nothing is edited here.
    }

    @Override
    public void doSaveAs() {
        // Nothing is edited here.
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    private static final class Input implements IEditorInput {

        @Override
        public boolean exists() {
            return true;
        }

        @Override
        public ImageDescriptor getImageDescriptor() {
            return Icons.descriptor("event");
        }

        @Override
        public String getName() {
            return TEXTS.text("welcomePage.name");
        }

        @Override
        public IPersistableElement getPersistable() {
            return null;
        }

        @Override
        public String getToolTipText() {
            return TEXTS.text("welcomePage.name");
        }

        @Override
        public <T> T getAdapter(Class<T> type) {
            return null;
        }
    }
}
