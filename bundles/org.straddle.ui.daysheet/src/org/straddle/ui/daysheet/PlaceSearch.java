package org.straddle.ui.daysheet;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.straddle.daysheet.fits.Carried;
import org.straddle.daysheet.fits.FittingPlace;

/** Finds the places where what is carried fits, while it is already in the hand. */
final class PlaceSearch extends Job {

    private final Carried carried;
    private final Consumer<List<FittingPlace>> found;

    /** @param found called on the job's thread, unless the search is cancelled */
    PlaceSearch(Carried carried, Consumer<List<FittingPlace>> found) {
        super("Places that fit");
        this.carried = carried;
        this.found = found;
        setSystem(true);
        setPriority(INTERACTIVE);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            List<FittingPlace> places = carried.everywhere(monitor);
            if (!monitor.isCanceled()) {
                found.accept(places);
            }
            return Status.OK_STATUS;
        } catch (OperationCanceledException cancelled) {
            return Status.CANCEL_STATUS;
        }
    }
}
