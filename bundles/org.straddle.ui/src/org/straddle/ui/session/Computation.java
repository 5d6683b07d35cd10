package org.straddle.ui.session;

import java.io.IOException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.straddle.check.run.Checked;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.outlook.EarthSearch;
import org.straddle.outlook.Outlook;
import org.straddle.sky.prediction.PassSearch;
import org.straddle.store.KeptFolder;
import org.straddle.words.Catalogue;

/**
 * Passes and findings of one snapshot, worked out off the UI thread.
 *
 * @param elements where the event may keep a file of Earth orientation
 * @param before   of an earlier state of the event, from which everything is taken that did not change; or null
 */
record Computation(Event snapshot, KeptFolder elements, Checked before) implements NewestJob.Work<Computation.Result> {

    private static final Catalogue TEXTS = Catalogue.of(Computation.class);

    static final NewestJob.Kind KIND = new NewestJob.Kind(TEXTS.text("computation.name"), true, Job.DECORATE,
            TEXTS.text("computation.failed"));

    /** @param checked what the next state of the event can be checked from */
    record Result(Checked checked, Computed computed) {
    }

    @Override
    public Result run(IProgressMonitor monitor, Consumer<Runnable> news) throws IOException {
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("computation.name"), 100);
        PassSearch search = EarthSearch.in(elements);
        Outlook outlook = before == null ? Outlook.of(snapshot, search, progress.split(70))
                : Outlook.after(before.outlook(), snapshot, search, progress.split(70));
        Checked checked = before == null ? Checks.standard().check(outlook, progress.split(30))
                : before.again(outlook, progress.split(30));
        return new Result(checked, new Computed(snapshot, outlook, checked.findings()));
    }
}
