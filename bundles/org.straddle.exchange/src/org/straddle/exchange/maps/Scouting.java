package org.straddle.exchange.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.exchange.ReadException;
import org.straddle.grid.Candidate;
import org.straddle.grid.CandidateRanking;
import org.straddle.grid.LineScout;
import org.straddle.grid.MapFeature;
import org.straddle.grid.OneAPlace;
import org.straddle.grid.MapRole;
import org.straddle.grid.RankedCandidate;
import org.straddle.grid.ScoutReach;
import org.straddle.grid.Square;
import org.straddle.grid.Surroundings;
import org.straddle.grid.Trace;
import org.straddle.words.Catalogue;

/**
 * The line scout over maps: every place where a road crosses a line between squares or passes a corner, ranked by the
 * demand that it serves and by what is around.
 *
 * @param places  best first
 * @param around  roles of what distances are told of, the roads themselves included
 * @param roads   how many there were
 * @param roadsKm their length, up to 0.6 % off
 * @param remarks sentences on what was left out of the maps
 */
public record Scouting(List<RankedCandidate> places, List<MapRole> around, int roads, double roadsKm, List<String> remarks) {

    private static final Catalogue TEXTS = Catalogue.of(Scouting.class);

    /**
     * What is asked for.
     *
     * @param weights of roles that shall count otherwise than usual (see {@link Surroundings#usual})
     */
    public record Question(ScoutReach reach, ScoutRegion region, Map<MapRole, Surroundings.Weight> weights) {
    }

    public Scouting {
        places = List.copyOf(places);
        around = List.copyOf(around);
        remarks = List.copyOf(remarks);
    }

    /**
     * Scouts maps that were read.
     *
     * @param demand share of chasers that need a square, 0 to 1
     * @param monitor may be null
     * @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled
     */
    public static Scouting of(MapLayers maps, Question question, ToDoubleFunction<Square> demand, IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("scouting.scoutingRoads"), 100);
        List<MapFeature> roads = maps.roads();
        List<Candidate> found = LineScout.candidates(roads, question.reach(), progress.split(40)).stream().filter(question.region()::holds).toList();
        List<Surroundings> around = new ArrayList<>();
        SubMonitor indexing = progress.split(20).setWorkRemaining(maps.around().size());
        maps.around().forEach((role, things) -> {
            around.add(Surroundings.of(role, question.weights().getOrDefault(role, Surroundings.usual(role)), things));
            indexing.split(1);
        });
        List<RankedCandidate> ranked = CandidateRanking.rank(found, question.reach(), demand, around, progress.split(40));
        double km = roads.stream().flatMap(road -> road.parts().stream()).mapToDouble(Trace::roughLengthKm).sum();
        return new Scouting(OneAPlace.of(ranked), around.stream().map(Surroundings::role).toList(), roads.size(), km, maps.remarks());
    }

    /**
     * Reads the layers of an event and scouts them; long work, for any thread.
     *
     * @throws ReadException on the first layer that cannot be read
     */
    public static Scouting of(List<LayerSource> layers, Question question, ToDoubleFunction<Square> demand, IProgressMonitor monitor)
            throws ReadException {
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("scouting.lookingPlacesAlong"), 100);
        SubMonitor reading = progress.split(60).setWorkRemaining(layers.size());
        MapLayers maps = new MapLayers();
        for (LayerSource layer : layers) {
            // What is only to be looked at need not be read.
            if (!layer.role().equals(LayerRole.PLAIN)) {
                reading.subTask(layer.title());
                maps.addLayer(layer, layer.read(reading.split(1)));
            }
        }
        return of(maps, question, demand, progress.split(40));
    }
}
