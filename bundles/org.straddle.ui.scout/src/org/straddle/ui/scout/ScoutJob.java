package org.straddle.ui.scout;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.maps.LayerSource;
import org.straddle.exchange.maps.Scouting;
import org.straddle.outlook.Demands;

/** Looks for places along the roads of an event off the UI thread; tells how it ended, once. */
final class ScoutJob extends Job {

    /** How the search ended. */
    sealed interface Ending permits Found, Failed, Cancelled {
    }

    record Found(Scouting scouting, List<LayerSource> layers, double seconds) implements Ending {
    }

    /** @param sentence what is wrong, where, and what to do */
    record Failed(String sentence) implements Ending {
    }

    record Cancelled() implements Ending {
    }

    private final List<LayerSource> layers;
    private final Scouting.Question question;
    private final Demands demands;
    private final Consumer<Ending> ended;

    /** @param ended called on the job's thread */
    ScoutJob(List<LayerSource> layers, Scouting.Question question, Demands demands, Consumer<Ending> ended) {
        super("Looking for places along roads");
        this.layers = layers;
        this.question = question;
        this.demands = demands;
        this.ended = ended;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        long begun = System.nanoTime();
        try {
            Scouting found = Scouting.of(layers, question, demands::of, monitor);
            ended.accept(new Found(found, layers, (System.nanoTime() - begun) / 1e9));
        } catch (OperationCanceledException e) {
            ended.accept(new Cancelled());
            return Status.CANCEL_STATUS;
        } catch (ReadException e) {
            ended.accept(new Failed(e.getMessage()));
        } catch (OutOfMemoryError e) {
            ended.accept(new Failed("The layers are too large for the memory of this program.\nCut them to the region of the event."));
        } catch (RuntimeException e) {
            ended.accept(new Failed("The search failed. The event is unharmed.\nTry with fewer layers to find the one to blame."));
            return Status.error("Looking for places along roads failed.", e);
        }
        return Status.OK_STATUS;
    }
}
