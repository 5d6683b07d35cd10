package org.straddle.ui.planning;

import java.io.IOException;
import java.time.Duration;
import java.util.Locale;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.straddle.model.Event;
import org.straddle.outlook.EarthSearch;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.event.EventPlanner;
import org.straddle.store.KeptFolder;
import org.straddle.ui.session.NewestJob;
import org.straddle.words.Catalogue;

/**
 * One search for a plan, behind the window.
 *
 * @param elements where the event may keep a file of Earth orientation
 * @param told     hears on the UI thread how the search gets on
 */
record SearchRun(Event snapshot, KeptFolder elements, PlanSettings settings, SearchRun.Told told) implements NewestJob.Work<Proposal> {

    private static final Catalogue TEXTS = Catalogue.of(SearchRun.class);

    /**
     * How the search stands.
     *
     * @param worth what the search makes as large as it can, of the best plan so far
     * @param bound no plan has more; not a number while none is known
     */
    record Stand(double seconds, double worth, double bound) {
    }

    /** Hears on the UI thread how the search gets on. */
    interface Told {
        void stands(Stand stand);
    }

    static final NewestJob.Kind KIND = new NewestJob.Kind(TEXTS.text("searchRun.name"), true, Job.LONG,
            TEXTS.text("searchRun.failed.log"));

    @Override
    public Proposal run(IProgressMonitor monitor, Consumer<Runnable> news) throws IOException {
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("searchRun.name"), 100);
        Outlook outlook = Outlook.of(snapshot, EarthSearch.in(elements), progress.split(20));
        SubMonitor search = progress.newChild(80, SubMonitor.SUPPRESS_NONE);
        return EventPlanner.standard().propose(outlook, settings, new Teller(search, news), search);
    }

    /** Why there is no plan, for the user. */
    static String sentence(Throwable failure) {
        return failure instanceof IOException ? failure.getMessage() : TEXTS.text("searchRun.failed");
    }

    static String stopped() {
        return TEXTS.text("searchRun.stopped");
    }

    private final class Teller implements PlanProgress {

        private final IProgressMonitor search;
        private final Consumer<Runnable> news;
        private double bound = Double.NaN;

        Teller(IProgressMonitor search, Consumer<Runnable> news) {
            this.search = search;
            this.news = news;
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

        @Override
        public void boundFailed(Throwable why) {
            ILog.of(SearchRun.class).error(Proposal.Way.BOUND_FAILED.sentence(), why);
        }

        private void tell(Stand stand) {
            search.subTask(TEXTS.text("searchRun.stand", "worth", stand.worth, "seconds", stand.seconds));
            news.accept(() -> told.stands(stand));
        }
    }
}
