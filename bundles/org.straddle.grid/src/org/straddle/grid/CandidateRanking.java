package org.straddle.grid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.straddle.words.Catalogue;

/**
 * Candidates in the order in which they are worth a look. Points are added up plainly, so that a user can
 * see from the numbers why one comes first: the demand of each square, from 0 to 1; minus
 * {@link #WALK_POINTS_PER_KM} for each kilometre that a corner lies farther from the road than the station
 * reaches; plus, for each role of {@link Surroundings}, its weight times (1 − distance / reach).
 *
 * <p>Same points: the longer band first, then from north-west to south-east.
 */
public final class CandidateRanking {

    private static final Catalogue TEXTS = Catalogue.of(CandidateRanking.class);

    /** Our own choice, no published source. */
    public static final double WALK_POINTS_PER_KM = 1;

    private CandidateRanking() {
    }

    /**
     * @param demand share of chasers that need a square, 0 to 1
     * @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled
     */
    public static List<RankedCandidate> rank(Collection<Candidate> candidates, ScoutReach reach,
            ToDoubleFunction<Square> demand, Collection<Surroundings> around, IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("candidateRanking.rankingPlaces"), candidates.size());
        List<RankedCandidate> ranked = new ArrayList<>();
        for (Candidate candidate : candidates) {
            progress.split(1);
            double served = candidate.squares().stream().mapToDouble(demand).sum();
            double walkM = Math.max(0, candidate.distanceM() - reach.halfSpanM());
            List<Nearness> near = new ArrayList<>();
            double points = served - WALK_POINTS_PER_KM * walkM / 1000;
            for (Surroundings surroundings : around) {
                surroundings.nearest(candidate.position(), candidate.road()).ifPresent(near::add);
            }
            points += near.stream().mapToDouble(Nearness::points).sum();
            ranked.add(new RankedCandidate(candidate, served, near, points));
        }
        // Rounded, so that what only rounding parts counts as the same.
        ranked.sort(Comparator.<RankedCandidate>comparingDouble(r -> Math.rint(r.points() * 1e6))
                .thenComparingDouble(r -> Math.rint(r.candidate().bandM() * 10)).reversed()
                .thenComparingDouble(r -> -r.candidate().position().latitudeDeg())
                .thenComparingDouble(r -> r.candidate().position().longitudeDeg()));
        return List.copyOf(ranked);
    }
}
