package org.straddle.ui.editors;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Widget;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.ISaveablePart2;
import org.eclipse.ui.forms.IMessage;
import org.eclipse.ui.forms.ManagedForm;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.part.EditorPart;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Identified;
import org.straddle.model.naming.Naming;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.WhileSeen;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.Kind;
import org.straddle.words.Catalogue;

/**
 * A form over one thing of the event. Edits go straight into the event as commands, so an editor is never dirty and
 * can be closed at any time; the event as a whole is saved. It closes itself when its thing is gone.
 */
public abstract class ThingEditor<T extends Identified> extends EditorPart
        implements SessionListener, ISaveablePart2 {

    private static final Catalogue TEXTS = Catalogue.of(ThingEditor.class);

    private final EventSession session = EventSession.current();
    private final Class<T> type;
    private ManagedForm managed;
    private FieldForm form;
    private Control last;
    private WhileSeen hearing;

    /** What the form shows; its tab and whether there is still something to show are told by the editor itself. */
    private final class Shown implements SessionListener {

        @Override
        public void edited(EventSession edited) {
            form.refresh();
            entitle();
        }

        @Override
        public void computed(EventSession from, Computed computed) {
            form.refresh();
            tellFindings();
        }
    }

    ThingEditor(Class<T> type) {
        this.type = type;
    }

    /** Says which fields the form has. */
    abstract void fields(FieldForm form, T thing);

    final T thing() {
        return type.cast(((ThingInput) getEditorInput()).thing());
    }

    final EventSession session() {
        return session;
    }

    final FieldForm form() {
        return form;
    }

    @Override
    public final void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public final void createPartControl(Composite parent) {
        FormToolkit toolkit = new FormToolkit(parent.getDisplay());
        ScrolledForm scrolled = toolkit.createScrolledForm(parent);
        // Title and messages would lay it out while it has no room, every field a few pixels wide.
        scrolled.setLayoutDeferred(true);
        OnceSized.run(scrolled, () -> scrolled.setLayoutDeferred(false));
        toolkit.decorateFormHeading(scrolled.getForm());
        managed = new ManagedForm(toolkit, scrolled);
        form = new FieldForm(session, managed);
        fields(form, thing());
        form.refresh();
        form.onTyping(() -> firePropertyChange(ISaveablePart2.PROP_DIRTY));
        scrolled.getForm().addMessageHyperlinkListener(new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent click) {
                showMessages();
            }
        });
        Listener focused = gained -> remember(gained.widget);
        parent.getDisplay().addFilter(SWT.FocusIn, focused);
        getSite().setSelectionProvider(new FixedSelection(new StructuredSelection(thing())));
        session.addListener(this);
        hearing = WhileSeen.hear(this, new Shown());
        parent.addDisposeListener(gone -> {
            parent.getDisplay().removeFilter(SWT.FocusIn, focused);
            session.removeListener(this);
            hearing.stop();
            managed.dispose();
            toolkit.dispose();
        });
        retitle();
        entitle();
        tellFindings();
        scrolled.reflow(true);
    }

    @Override
    public void edited(EventSession edited) {
        if (session.live(thing().getId()).isEmpty()) {
            close();
            return;
        }
        retitle();
    }

    @Override
    public final void closed(EventSession closed) {
        close();
    }

    /** The cursor stays where the user left it. */
    @Override
    public void setFocus() {
        if (last == null || last.isDisposed() || !last.setFocus()) {
            form.focus();
        }
    }

    @Override
    public final void doSave(IProgressMonitor monitor) {
        // The event as a whole is saved.
    }

    @Override
    public final void doSaveAs() {
        // The event as a whole is saved.
    }

    /** Only text that cannot be read is in the form alone; all else is in the event, which is saved as a whole. */
    @Override
    public final boolean isDirty() {
        return form != null && !form.unread().isEmpty();
    }

    /** Text that cannot be read goes with the form, so the user decides. */
    @Override
    public final int promptToSaveOnClose() {
        int answer = MessageDialog.open(MessageDialog.WARNING, getSite().getShell(), TEXTS.text("thingEditor.close",
                "form", getPartName()),
                TEXTS.text("thingEditor.close.question", "unread", form.unread()),
                SWT.NONE, TEXTS.text("thingEditor.close.back"), TEXTS.text("thingEditor.close.lose"));
        return answer == 1 ? ISaveablePart2.NO : ISaveablePart2.CANCEL;
    }

    @Override
    public final boolean isSaveAsAllowed() {
        return false;
    }

    private void remember(Widget focused) {
        for (Control at = focused instanceof Control control ? control : null; at != null; at = at.getParent()) {
            if (at == managed.getForm().getBody()) {
                last = (Control) focused;
            }
        }
    }

    private void close() {
        getSite().getPage().closeEditor(this, false);
    }

    /** The tab, which is seen even while the form is not. */
    private void retitle() {
        String name = Naming.name(thing());
        if (!name.equals(getPartName())) {
            setPartName(name);
        }
        Image icon = Icons.image(Kind.icon(thing()));
        if (icon != getTitleImage()) {
            setTitleImage(icon);
        }
    }

    /** The head of the form; it lays the form out, so it is left alone while it stays the same. */
    private void entitle() {
        String name = Naming.name(thing()).replace("&", "&&");
        if (!name.equals(managed.getForm().getText())) {
            managed.getForm().setText(name);
        }
        Image icon = Icons.image(Kind.icon(thing()));
        if (icon != managed.getForm().getImage()) {
            managed.getForm().setImage(icon);
        }
    }

    /** The head of the form says how many findings name this thing; a click shows them. */
    private void tellFindings() {
        List<Finding> findings = findings();
        managed.getMessageManager().removeMessage(this);
        if (!findings.isEmpty()) {
            managed.getMessageManager().addMessage(this, words(findings), null,
                    messageType(findings.get(0).severity()));
        }
    }

    private List<Finding> findings() {
        return session.computed().map(computed -> computed.byThing().open(thing().getId())).orElse(List.of());
    }

    private static String words(List<Finding> findings) {
        return TEXTS.text("thingEditor.findings", "count", findings.size());
    }

    private void showMessages() {
        List<MessageLines.Line> lines = new ArrayList<>();
        for (IMessage message : managed.getForm().getForm().getChildrenMessages()) {
            if (message.getKey() != this) {
                lines.add(new MessageLines.Line(Icons.image("blocker"), message.getMessage()));
            }
        }
        findings().forEach(finding -> lines.add(new MessageLines.Line(Icons.of(finding.severity()),
                finding.sentence())));
        new MessageLines(getSite().getShell(), lines).open();
    }

    private static int messageType(Severity severity) {
        return switch (severity) {
            case BLOCKER -> IMessageProvider.ERROR;
            case WARNING -> IMessageProvider.WARNING;
            case ADVICE -> IMessageProvider.INFORMATION;
        };
    }
}
