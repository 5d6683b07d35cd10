package org.straddle.ui.workbench;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
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
import org.straddle.ui.things.Icons;

/** What one can do while no event is open. */
public final class WelcomePage extends EditorPart {

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
        layout.marginWidth = 48;
        layout.marginHeight = 40;
        layout.horizontalSpacing = 20;
        layout.verticalSpacing = 12;
        body.setLayout(layout);

        Label mark = toolkit.createLabel(body, "");
        mark.setImage(ApplicationImages.image(64));
        Label title = toolkit.createLabel(body, "Plan a group rove");
        title.setFont(JFaceResources.getHeaderFont());
        toolkit.createLabel(body, "");
        Label lead = toolkit.createLabel(body, "Several teams, one plan: who stands on which square, line or corner"
                + " when which bird comes by. Everything about one rove is an event, and an event is a folder.",
                SWT.WRAP);
        GridData width = new GridData(SWT.FILL, SWT.TOP, false, false);
        width.widthHint = 560;
        lead.setLayoutData(width);

        first = link(toolkit, body, "open", "Open event folder…", "Go on with an event that is on this computer.",
                () -> EventDialogs.open(getSite().getShell()));
        link(toolkit, body, "new", "New event…", "Start with a name, days and a time zone.",
                () -> EventDialogs.createNew(getSite().getShell()));
        link(toolkit, body, "demo", "Make the demo event…",
                "Look around in an invented rove with three teams, mistakes included.",
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
        Label heading = toolkit.createLabel(body, "Opened last");
        heading.setFont(JFaceResources.getBannerFont());
        for (Path path : recent) {
            link(toolkit, body, "event", path.getFileName().toString(), path.toString(),
                    () -> OpenEvent.open(getSite().getShell(), path));
        }
    }

    private static ImageHyperlink link(FormToolkit toolkit, Composite body, String icon, String text,
            String explanation, Runnable action) {
        Label image = toolkit.createLabel(body, "");
        image.setImage(Icons.image(icon));
        image.setLayoutData(new GridData(SWT.END, SWT.TOP, false, false));
        Composite words = toolkit.createComposite(body);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        words.setLayout(layout);
        ImageHyperlink link = toolkit.createImageHyperlink(words, SWT.NONE);
        link.setText(text);
        link.setUnderlined(true);
        link.addHyperlinkListener(new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent click) {
                action.run();
            }
        });
        toolkit.createLabel(words, explanation)
                .setForeground(body.getDisplay().getSystemColor(SWT.COLOR_DARK_GRAY));
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
            return "Welcome";
        }

        @Override
        public IPersistableElement getPersistable() {
            return null;
        }

        @Override
        public String getToolTipText() {
            return "Welcome";
        }

        @Override
        public <T> T getAdapter(Class<T> type) {
            return null;
        }
    }
}
