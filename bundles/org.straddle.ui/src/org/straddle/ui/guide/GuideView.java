package org.straddle.ui.guide;

import java.util.ArrayDeque;
import java.util.Deque;

import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormText;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.forms.widgets.TableWrapData;
import org.eclipse.ui.forms.widgets.TableWrapLayout;
import org.eclipse.ui.part.ViewPart;
import org.straddle.check.Finding;
import org.straddle.guide.Guide;
import org.straddle.guide.GuidePage;
import org.straddle.words.Catalogue;

/** The page of the guide about the chosen finding, or the index of all pages. */
public final class GuideView extends ViewPart {

    private static final Catalogue TEXTS = Catalogue.of(GuideView.class);

    public static final String ID = "org.straddle.ui.guide";

    private static final String INDEX = "index";
    private static final String BACK = "back";
    private static final int MOST_BACK = 50;

    /** Pages that were shown before the present one, the newest first. */
    private final Deque<String> before = new ArrayDeque<>();
    private String present = "";

    private final ISelectionListener follow = (part, selection) -> {
        if (selection instanceof IStructuredSelection chosen && chosen.getFirstElement() instanceof Finding finding) {
            show(finding.rule());
        }
    };
    private FormToolkit toolkit;
    private ScrolledForm form;
    private FormText text;

    @Override
    public void createPartControl(Composite parent) {
        toolkit = new FormToolkit(parent.getDisplay());
        form = toolkit.createScrolledForm(parent);
        form.getBody().setLayout(new TableWrapLayout());
        text = toolkit.createFormText(form.getBody(), true);
        text.setLayoutData(new TableWrapData(TableWrapData.FILL_GRAB));
        text.addHyperlinkListener(new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent link) {
                follow(String.valueOf(link.getHref()));
            }
        });
        render(TEXTS.text("guideView.title"), "<p>" + escaped(TEXTS.text("guideView.start")) + "</p><p>"
                + link(INDEX, TEXTS.text("guideView.index")) + "</p>");
        getSite().getPage().addSelectionListener(follow);
    }

    /** @param page id of a rule; the index for all that is none */
    public void show(String page) {
        if (!page.equals(present) && !present.isEmpty()) {
            before.push(present);
            if (before.size() > MOST_BACK) {
                before.removeLast();
            }
        }
        turnTo(page);
    }

    private void follow(String link) {
        if (link.equals(BACK) && !before.isEmpty()) {
            turnTo(before.pop());
        } else if (!link.equals(BACK)) {
            show(link);
        }
    }

    private void turnTo(String page) {
        present = page;
        Guide.page(page).ifPresentOrElse(this::show, this::showIndex);
    }

    private void show(GuidePage page) {
        StringBuilder body = new StringBuilder();
        page.sections().forEach(section -> body.append("<p><b>").append(escaped(section.heading())).append("</b><br/>")
                .append(escaped(section.text())).append("</p>"));
        if (!page.seeAlso().isEmpty()) {
            body.append("<p><b>").append(Guide.SEE_ALSO).append("</b></p>");
            page.seeAlso().stream().flatMap(id -> Guide.page(id).stream()).forEach(other -> body.append(item(other)));
        }
        render(page.title(), body + "<p>" + link(INDEX, TEXTS.text("guideView.index")) + "</p>");
    }

    private void showIndex() {
        StringBuilder body = new StringBuilder();
        Guide.topics().forEach(page -> body.append(item(page)));
        Guide.index().forEach(page -> body.append(item(page)));
        render(TEXTS.text("guideView.index"), body.toString());
    }

    private void render(String title, String body) {
        form.setText(title.replace("&", "&&"));
        text.setText("<form>" + (before.isEmpty() ? "" : "<p>" + link(BACK, TEXTS.text("guideView.back")) + "</p>") + body + "</form>", true, false);
        form.setOrigin(0, 0);
        form.reflow(true);
    }

    private static String item(GuidePage page) {
        return "<li>" + link(page.rule(), page.title()) + "</li>";
    }

    private static String link(String page, String label) {
        return "<a href=\"" + page + "\">" + escaped(label) + "</a>";
    }

    private static String escaped(String plain) {
        return plain.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    @Override
    public void setFocus() {
        text.setFocus();
    }

    @Override
    public void dispose() {
        getSite().getPage().removeSelectionListener(follow);
        if (toolkit != null) {
            toolkit.dispose();
        }
        super.dispose();
    }
}
