package org.straddle.ui.session;

import java.io.IOException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.straddle.check.run.Checked;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.outlook.EarthSearch;
import org.straddle.outlook.Outlook;
import org.straddle.sky.PassSearch;
import org.straddle.store.KeptFolder;
import org.straddle.words.Catalogue;

/** Passes and findings of one snapshot, worked out off the UI thread. */
final class Computation extends Job {

    private static final Catalogue TEXTS = Catalogue.of(Computation.class);

    private final Event snapshot;
    private final KeptFolder elements;
    private final Checked before;
    private final Consumer<Computed> done;
    private volatile Checked checked;

    /**
     * @param elements where the event may keep a file of Earth orientation
     * @param before         of an earlier state of the event, from which everything is taken that did not change; or null
     */
    Computation(Event snapshot, KeptFolder elements, Checked before, Consumer<Computed> done) {
        super(TEXTS.text("computation.name"));
        this.snapshot = snapshot;
        this.elements = elements;
        this.before = before;
        this.done = done;
        setPriority(DECORATE);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("computation.name"), 100);
            PassSearch search = EarthSearch.in(elements);
            Outlook outlook = before == null ? Outlook.of(snapshot, search, progress.split(70))
                    : Outlook.after(before.outlook(), snapshot, search, progress.split(70));
            checked = before == null ? Checks.standard().check(outlook, progress.split(30))
                    : before.again(outlook, progress.split(30));
            done.accept(new Computed(snapshot, outlook, checked.findings()));
            return Status.OK_STATUS;
        } catch (OperationCanceledException cancelled) {
            return Status.CANCEL_STATUS;
        } catch (IOException failure) {
            return Status.error(failure.getMessage(), failure);
        } catch (RuntimeException failure) {
            return Status.error(TEXTS.text("computation.failed"), failure);
        }
    }

    /** What the next state of the event can be checked from; null until this is done. */
    Checked checked() {
        return checked;
    }

    @Override
    public boolean belongsTo(Object family) {
        return family == Computation.class;
    }
}
