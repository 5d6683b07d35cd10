package org.straddle.ui.start;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.straddle.exchange.start.EventStart;
import org.straddle.exchange.start.ReadLines;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.start.NewEventDraft.Lines;
import org.straddle.words.Catalogue;

/** Puts many things into the event that is open, written or pasted one on a line; one undo takes them out. */
public final class AddSeveral extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(AddSeveral.class);

    private final NewEventDraft draft = new NewEventDraft();
    private final List<Sort> sorts = List.of(
            new Sort(Lines.OPERATORS, TEXTS.text("newEventWizard.operators"), TEXTS.text("newEventWizard.operators.example"),
                    Literals.EVENT__OPERATORS, EventStart::readOperators),
            new Sort(Lines.BASES, TEXTS.text("newEventWizard.bases"), TEXTS.text("newEventWizard.bases.example"),
                    Literals.EVENT__BASES, EventStart::readBases),
            new Sort(Lines.SITES, TEXTS.text("sitesPage.title"), TEXTS.text("sitesPage.example"), Literals.EVENT__SITES,
                    EventStart::readSites),
            new Sort(Lines.DEMAND, TEXTS.text("newEventWizard.demand"), TEXTS.text("newEventWizard.demand.example"),
                    Literals.EVENT__DEMANDS, EventStart::readDemand));
    private final List<LinesBox> boxes = new ArrayList<>();
    private Combo sort;

    /** What may be added, and where it goes. */
    private record Sort(Lines kind, String name, String example, EReference list, Function<EventStart, ReadLines<?>> reader) {

        /** A line of demand has several squares. */
        List<EObject> things(EventStart start) {
            List<EObject> all = new ArrayList<>();
            for (Object thing : reader.apply(start).things()) {
                if (thing instanceof List<?> several) {
                    several.forEach(one -> all.add((EObject) one));
                } else {
                    all.add((EObject) thing);
                }
            }
            return all;
        }
    }

    private AddSeveral(Shell parent) {
        super(parent, TEXTS.text("addSeveral.title"), TEXTS.text("addSeveral.explanation"), TEXTS.text("addSeveral.add"), 2);
    }

    public static void ask(Shell shell) {
        EventSession session = EventSession.current();
        session.commitPendingEdits();
        AddSeveral dialog = new AddSeveral(shell);
        if (session.event().getPolicies() != null) {
            dialog.draft.stationSpanM = session.event().getPolicies().getStationSpanM();
        }
        if (dialog.open() == OK) {
            session.execute(dialog.command(session));
        }
    }

    private Command command(EventSession session) {
        EventStart start = draft.start();
        List<Command> commands = sorts.stream().filter(one -> !one.things(start).isEmpty()).map(one -> AddCommand.create(
                session.editingDomain(), session.event(), one.list, one.things(start))).toList();
        return Edit.together(TEXTS.text("addSeveral.title"), commands);
    }

    @Override
    protected void fields(Composite body) {
        new Label(body, SWT.NONE).setText(TEXTS.text("addSeveral.what"));
        sort = new Combo(body, SWT.READ_ONLY);
        sorts.forEach(one -> sort.add(one.name));
        Composite pages = new Composite(body, SWT.NONE);
        StackLayout stack = new StackLayout();
        pages.setLayout(stack);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(pages);
        List<Composite> frames = new ArrayList<>();
        for (Sort one : sorts) {
            Composite frame = new Composite(pages, SWT.NONE);
            frame.setLayout(new GridLayout());
            frames.add(frame);
            boxes.add(new LinesBox(frame, draft, one.kind, one.reader, one.example, this::answered));
        }
        sort.addListener(SWT.Selection, choice -> {
            stack.topControl = frames.get(sort.getSelectionIndex());
            pages.layout();
            boxes.get(sort.getSelectionIndex()).setFocus();
        });
        sort.select(0);
        stack.topControl = frames.get(0);
        boxes.get(0).setFocus();
    }

    @Override
    protected boolean complete() {
        String problem = boxes.stream().map(LinesBox::problem).filter(told -> told != null).findFirst().orElse(null);
        setErrorMessage(problem);
        return problem == null && draft.isBegun();
    }
}
