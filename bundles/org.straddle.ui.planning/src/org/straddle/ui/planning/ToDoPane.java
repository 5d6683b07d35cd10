package org.straddle.ui.planning;

import java.util.List;
import java.util.function.Supplier;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.NewestJob;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;
import org.straddle.worth.EventWorth;
import org.straddle.worth.ExpectedPlan;
import org.straddle.worth.SiteReadiness;
import org.straddle.worth.split.ToDo;

/** What to settle before departure at the sites of the event's plan, what brings most first. */
final class ToDoPane {

    private static final Catalogue TEXTS = Catalogue.of(ToDoPane.class);

    private static final NewestJob.Kind KIND = new NewestJob.Kind(TEXTS.text("toDoPane.job"), false, Job.SHORT,
            TEXTS.text("toDoPane.failed"));

    private final EventSession session = EventSession.current();
    private final Composite frame;
    private final Label words;
    private final Rows<ToDo> rows;
    private NewestJob<List<ToDo>> job;

    ToDoPane(Composite parent) {
        frame = new Composite(parent, SWT.NONE);
        frame.setLayout(GridLayoutFactory.fillDefaults().spacing(0, 2).create());
        words = new Label(frame, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).hint(200, SWT.DEFAULT).applyTo(words);
        Supplier<TimeText> times = () -> TimeText.of(Outlook.zoneOf(session.event()));
        rows = new Rows<ToDo>(frame, SWT.NONE)
                .column(TEXTS.text("toDoPane.site"), 35, 120, toDo -> Naming.name(toDo.site()))
                .column(TEXTS.text("toDoPane.lacks"), 30, 110,
                        toDo -> String.join(", ", toDo.lacks().stream().sorted().map(SiteReadiness.Lack::word).toList()))
                .column(TEXTS.text("toDoPane.unlocks"), 10, 60, toDo -> TEXTS.text("toDoPane.unlocks.of", "unlocks", toDo.unlocks()))
                .column(TEXTS.text("toDoPane.first"), 25, 130, toDo -> times.get().at(toDo.first()));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(rows.frame());
        rows.viewer().addOpenListener(opening -> session.live(((ToDo) rows.viewer().getStructuredSelection().getFirstElement())
                .site().getId()).ifPresent(session::reveal));
    }

    Composite control() {
        return frame;
    }

    /** Works it out behind the window. */
    void work(Outlook outlook) {
        if (job == null) {
            job = new NewestJob<>(frame.getDisplay(), KIND);
        }
        boolean planned = outlook.event().getPlan() != null && !outlook.event().getPlan().getStops().isEmpty();
        job.run(monitor -> ToDo.of(ExpectedPlan.of(EventWorth.of(outlook))), found -> show(found, planned),
                failure -> say(TEXTS.text("toDoPane.failed")));
    }

    private void show(List<ToDo> found, boolean planned) {
        rows.viewer().setInput(found);
        say(!planned ? TEXTS.text("toDoPane.noplan") : found.isEmpty() ? TEXTS.text("toDoPane.none") : TEXTS.text("toDoPane.explanation"));
    }

    /** Nothing is known of the event yet. */
    void clear() {
        stop();
        rows.viewer().setInput(List.of());
        say(TEXTS.text("toDoPane.computing"));
    }

    private void say(String told) {
        if (!words.getText().equals(told)) {
            words.setText(told);
            frame.layout(true);
        }
    }

    void stop() {
        if (job != null) {
            job.stop();
        }
    }
}
