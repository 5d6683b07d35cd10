package org.straddle.ui.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.straddle.check.Checks;
import org.straddle.check.Finding;
import org.straddle.model.Event;
import org.straddle.outlook.EarthSearch;
import org.straddle.outlook.Outlook;

/** Passes and findings of one snapshot, worked out off the UI thread. */
final class Computation extends Job {

    private final Event snapshot;
    private final Path elementsFolder;
    private final Consumer<Computed> done;

    /** @param elementsFolder where the event may keep a file of Earth orientation */
    Computation(Event snapshot, Path elementsFolder, Consumer<Computed> done) {
        super("Passes and checks");
        this.snapshot = snapshot;
        this.elementsFolder = elementsFolder;
        this.done = done;
        setPriority(DECORATE);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            SubMonitor progress = SubMonitor.convert(monitor, "Passes and checks", 100);
            Outlook outlook = Outlook.of(snapshot, EarthSearch.in(elementsFolder), progress.split(70));
            List<Finding> findings = Checks.standard().run(outlook, progress.split(30));
            done.accept(new Computed(snapshot, outlook, findings));
            return Status.OK_STATUS;
        } catch (OperationCanceledException cancelled) {
            return Status.CANCEL_STATUS;
        } catch (IOException failure) {
            return Status.error(failure.getMessage(), failure);
        } catch (RuntimeException failure) {
            return Status.error("The passes and checks could not be worked out. The event is unharmed; "
                    + "save it, and undo the last change if this repeats.", failure);
        }
    }

    @Override
    public boolean belongsTo(Object family) {
        return family == Computation.class;
    }
}
