package org.straddle.ui.planning;

import java.io.IOException;
import java.time.Duration;
import java.util.Locale;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.straddle.model.Event;
import org.straddle.outlook.EarthSearch;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.event.EventPlanner;
import org.straddle.store.KeptFolder;
import org.straddle.ui.session.UiThread;
import org.straddle.words.Catalogue;

/** One search for a plan, behind the window. What it tells arrives on the UI thread. */
final class SearchRun extends Job {

    private static final Catalogue TEXTS = Catalogue.of(SearchRun.class);

    /**
     * How the search stands.
     *
     * @param worth what the search makes as large as it can, of the best plan so far
     * @param bound no plan has more; not a number while none is known
     */
    record Stand(double seconds, double worth, double bound) {
    }

    /** Hears on the UI thread how the search gets on, and at last what it found. */
    interface Told {

        void stands(SearchRun run, Stand stand);

        void found(SearchRun run, Proposal proposal);

        void failed(SearchRun run, String sentence);
    }

    private final Display display;
    private final Event snapshot;
    private final KeptFolder elements;
    private final PlanSettings settings;
    private final Told told;

    SearchRun(Display display, Event snapshot, KeptFolder elements, PlanSettings settings, Told told) {
        super(TEXTS.text("searchRun.name"));
        this.display = display;
        this.snapshot = snapshot;
        this.elements = elements;
        this.settings = settings;
        this.told = told;
    }

    /** Of which event. */
    String eventId() {
        return snapshot.getId();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("searchRun.name"), 100);
        try {
            Outlook outlook = Outlook.of(snapshot, EarthSearch.in(elements), progress.split(20));
            SubMonitor search = progress.newChild(80, SubMonitor.SUPPRESS_NONE);
            Proposal proposal = EventPlanner.standard().propose(outlook, settings, new Teller(search), search);
            later(heard -> heard.found(this, proposal));
            return Status.OK_STATUS;
        } catch (OperationCanceledException stopped) {
            later(heard -> heard.failed(this, TEXTS.text("searchRun.stopped")));
            return Status.CANCEL_STATUS;
        } catch (IOException failure) {
            later(heard -> heard.failed(this, failure.getMessage()));
            return Status.error(failure.getMessage(), failure);
        } catch (RuntimeException failure) {
            later(heard -> heard.failed(this, TEXTS.text("searchRun.failed")));
            return Status.error(TEXTS.text("searchRun.failed.log"), failure);
        }
    }

    private void later(Consumer<Told> event) {
        if (!display.isDisposed()) {
            UiThread.later(display, () -> event.accept(told));
        }
    }

    private final class Teller implements PlanProgress {

        private final IProgressMonitor search;
        private double bound = Double.NaN;

        Teller(IProgressMonitor search) {
            this.search = search;
        }

        @Override
        public void improved(double worth, long iterations, Duration elapsed) {
            tell(new Stand(elapsed.toMillis() / 1000.0, worth, bound));
        }

        @Override
        public void bounded(double upperBound, double worth, Duration elapsed) {
            bound = upperBound;
            tell(new Stand(elapsed.toMillis() / 1000.0, worth, bound));
        }

        private void tell(Stand stand) {
            search.subTask(TEXTS.text("searchRun.stand", "worth", stand.worth, "seconds", stand.seconds));
            later(heard -> heard.stands(SearchRun.this, stand));
        }
    }
}
