package org.straddle.sky.prediction;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

import org.straddle.sky.ElementSet;
import org.straddle.sky.Horizon;
import org.straddle.sky.Invented;
import org.straddle.sky.Place;

/** Birds, places and masks that properties are tried on. */
final class InventedSky extends DomainContextBase {

    /** A mask, and one that is nowhere lower. */
    record Raised(Horizon low, Horizon high) {
    }

    /** @param within how far between its left and its right neighbour's sector a corner stands, 0 to 0.9 */
    private record Corner(double within, double elevationDeg, double raisedDeg) {
    }

    /** Low and round, low and eccentric: none so high that SGP4 takes sun and moon into account, which know the date. */
    @Provide
    Arbitrary<ElementSet> birds() {
        return Combinators.combine(number(300, 1400), Arbitraries.oneOf(number(0, 30), number(0, 30), number(100, 8000)),
                edged(0, 180), number(0, 359.9), number(0, 359.9), number(0, 359.9)).as((perigeeKm, higherKm, inclination,
                        node, perigee, anomaly) -> Invented.orbit("Auk", perigeeKm, perigeeKm + higherKm, inclination, node,
                                perigee, anomaly));
    }

    @Provide
    Arbitrary<Place> places() {
        return Combinators.combine(edged(-85, 85), number(-179, 179), number(0, 3000)).as(Place::new);
    }

    @Provide
    Arbitrary<Horizon> masks() {
        return corners().map(corners -> mask(corners, Corner::elevationDeg));
    }

    @Provide
    Arbitrary<Raised> raisedMasks() {
        return corners().map(corners -> new Raised(mask(corners, Corner::elevationDeg),
                mask(corners, corner -> corner.elevationDeg + corner.raisedDeg)));
    }

    private static Arbitrary<List<Corner>> corners() {
        return Combinators.combine(number(0, 0.9), number(-1, 30), Arbitraries.oneOf(Arbitraries.just(0.0), number(0, 30)))
                .as(Corner::new).list().ofMinSize(1).ofMaxSize(20);
    }

    private static Horizon mask(List<Corner> corners, ToDoubleFunction<Corner> elevationDeg) {
        List<Horizon.Point> points = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            points.add(new Horizon.Point((i + corners.get(i).within) * 360 / corners.size(),
                    elevationDeg.applyAsDouble(corners.get(i))));
        }
        return new Horizon(points);
    }

    private static Arbitrary<Double> number(double least, double most) {
        return Arbitraries.doubles().between(least, most).ofScale(6).withoutEdgeCases();
    }

    /** The least, the most and the middle are tried often: equator and poles are special. */
    private static Arbitrary<Double> edged(double least, double most) {
        return Arbitraries.doubles().between(least, most).ofScale(6)
                .edgeCases(edges -> edges.includeOnly(least, most).add((least + most) / 2));
    }
}
