package org.straddle.sky.track;

/**
 * When a bird is highest, and when nearest, within a span of time. The greatest of the ends and of the
 * track's nodes between is found first: a slow or eccentric bird may have several tops in one pass. A
 * top lies beside it, where the slope turns.
 */
public final class Culmination {

    private final Track track;
    private final Sightline sight;
    private final Curve rising = new Rising();
    private final Curve nearing = new Nearing();
    private double highestS;
    private double nearestS;
    private double startAzimuth;
    private double endAzimuth;

    public Culmination(Track track, Sightline sight) {
        this.track = track;
        this.sight = sight;
    }

    public void of(Span span) {
        highestS = span.from();
        nearestS = span.from();
        sight.at(span.from());
        startAzimuth = sight.azimuth();
        double highest = sight.sinElevation();
        double nearest = sight.range();
        int firstNode = (int) Math.floor(span.from() / track.stepS()) + 1;
        int lastNode = (int) Math.ceil(span.to() / track.stepS()) - 1;
        for (int i = firstNode; i <= lastNode; i++) {
            sight.atNode(i);
            if (sight.nodeSinElevation() > highest) {
                highest = sight.nodeSinElevation();
                highestS = i * track.stepS();
            }
            if (sight.nodeRange() < nearest) {
                nearest = sight.nodeRange();
                nearestS = i * track.stepS();
            }
        }
        sight.at(span.to());
        endAzimuth = sight.azimuth();
        if (sight.sinElevation() > highest) {
            highestS = span.to();
        }
        if (sight.range() < nearest) {
            nearestS = span.to();
        }
        highestS = top(rising, highestS, span);
        nearestS = top(nearing, nearestS, span);
    }

    private double top(Curve slope, double best, Span span) {
        double atBest = slope.at(best);
        double bend = slope.slope();
        double top = atBest > 0
                ? Roots.topAfter(slope, best, atBest, bend, Math.min(span.to(), best + track.stepS()))
                : Roots.topBefore(slope, Math.max(span.from(), best - track.stepS()), best, atBest, bend);
        return Double.isNaN(top) ? best : top;
    }

    /** Time of the highest elevation, seconds. */
    public double highestS() {
        return highestS;
    }

    /** Time of the least distance, seconds. */
    public double nearestS() {
        return nearestS;
    }

    /** Radians, as the bird comes into the span. */
    public double startAzimuth() {
        return startAzimuth;
    }

    /** Radians, as it leaves. */
    public double endAzimuth() {
        return endAzimuth;
    }

    private final class Rising implements Curve {
        @Override
        public double at(double timeS) {
            return sight.at(timeS).rising();
        }

        @Override
        public double slope() {
            return sight.risingRate();
        }
    }

    private final class Nearing implements Curve {
        @Override
        public double at(double timeS) {
            return -sight.at(timeS).parting();
        }

        @Override
        public double slope() {
            return -sight.partingRate();
        }
    }
}
