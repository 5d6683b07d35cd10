package org.straddle.ui.kit;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.kit.table.KitTemplates;
import org.straddle.model.Event;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;

/** Asks from which template a kit is made, and what it is called. */
final class TemplateDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(TemplateDialog.class);

    private final List<KitTemplates.Template> templates;
    private final Event event;
    private org.eclipse.swt.widgets.List list;
    private Text name;
    private KitTemplates.Template chosen;
    private String named = "";

    TemplateDialog(Shell parent, List<KitTemplates.Template> templates, Event event) {
        super(parent, TEXTS.text("template.title"), TEXTS.text("template.explanation"), TEXTS.text("template.make"), 2);
        this.templates = templates;
        this.event = event;
    }

    @Override
    protected void fields(Composite body) {
        Label from = new Label(body, SWT.NONE);
        from.setText(TEXTS.text("template.from"));
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.TOP).applyTo(from);
        list = new org.eclipse.swt.widgets.List(body, SWT.BORDER | SWT.V_SCROLL | SWT.SINGLE);
        templates.forEach(template -> list.add(TEXTS.text("template.line", "label", template.label(), "items", template.table().rows().size())));
        GridDataFactory.fillDefaults().grab(true, true).hint(380, 150).applyTo(list);
        name = line(body, TEXTS.text("template.name"), "", SWT.DEFAULT);
        list.addListener(SWT.Selection, change -> read());
        name.addModifyListener(change -> read());
        list.select(0);
        read();
    }

    private void read() {
        chosen = templates.get(Math.max(0, list.getSelectionIndex()));
        named = name.getText().strip();
        setErrorMessage(isTaken() ? TEXTS.text("template.taken", "name", named) : null);
        answered();
    }

    private boolean isTaken() {
        return event.getKits().stream().anyMatch(kit -> kit.getName() != null && kit.getName().strip().equalsIgnoreCase(named));
    }

    @Override
    protected boolean complete() {
        return !named.isEmpty() && !isTaken();
    }

    KitTemplates.Template template() {
        return chosen;
    }

    String name() {
        return named;
    }
}
