package org.straddle.grid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.words.Catalogue;

/**
 * Finds, on a net of roads, every place where a line between squares can be straddled: all crossings,
 * stretches alongside a line, and passes of a corner.
 *
 * <p>Nearly all of a net is nowhere near a line, and lines are known by their degrees. So no index of the
 * roads is made: whether an edge can be near a line shows by comparing its ends with whole degrees, for
 * millions of edges a second, and only the few that are get the geodesics of {@link Crossings}, which are
 * exact to a tenth of a metre and better. What a road crosses does not depend on how long its edges are.
 *
 * <p>Roads within half a degree of a pole are left out: there all meridians are near.
 */
public final class LineScout {

    private static final Catalogue TEXTS = Catalogue.of(LineScout.class);

    private static final int EDGES_BETWEEN_REPORTS = 1 << 10;

    private LineScout() {
    }

    /**
     * @param roads features that are not lines are passed over
     * @return in the order of the roads; on one road, as stretches end
     * @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled
     */
    public static List<Candidate> candidates(Collection<MapFeature> roads, ScoutReach reach, IProgressMonitor monitor) {
        long edges = 0;
        for (MapFeature road : roads) {
            edges += road.size();
        }
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("lineScout.scoutingRoads"), (int) (edges / EDGES_BETWEEN_REPORTS) + 1);
        List<Candidate> found = new ArrayList<>();
        int sinceReport = 0;
        for (MapFeature road : roads) {
            if (road.shape() != MapFeature.Shape.LINES) {
                continue;
            }
            for (Trace trace : road.parts()) {
                RoadScout scout = new RoadScout(road, trace, reach, found);
                for (int edge = 0; edge + 1 < trace.size(); edge++) {
                    if (++sinceReport == EDGES_BETWEEN_REPORTS) {
                        progress.split(1);
                        sinceReport = 0;
                    }
                    scout.look(edge);
                }
                scout.end();
            }
        }
        progress.checkCanceled();
        return List.copyOf(found);
    }
}
