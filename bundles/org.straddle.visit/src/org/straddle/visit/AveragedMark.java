package org.straddle.visit;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.straddle.exchange.fixes.FixLog.Reading;
import org.straddle.grid.FixAveraging;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.Presence;
import org.straddle.model.PositionFix;
import org.straddle.model.Mark;
import org.straddle.model.MarkMethod;
import org.straddle.model.StraddleFactory;
import org.straddle.words.Catalogue;

/**
 * The mean of fixes as the mark of a site, and how good it is.
 *
 * <p>Readings of one minute are joined to one fix, since a receiver hardly moves its errors within it (common practice,
 * no source); so an hour of readings each second counts as sixty fixes and not as 3600. A reading that lies more than
 * 3.5 robust standard deviations off the median on either axis is an outlier (Iglewicz and Hoaglin 1993, from memory) and
 * is left out and named. Fixes are weighted by their reported errors where all report one. The mean is taken on the
 * ellipsoid around itself, so neither 180° nor a pole is special.
 *
 * <p>The error of the mean has a part that averaging makes smaller, the larger of what the receiver reports and what the
 * scatter of the fixes shows, and a part that all have in common ({@link FixAveraging}), which stays.
 *
 * @param position the mean
 * @param altitudeM mean height above the ellipsoid, metres; empty if no fix has one
 * @param r95M radius that holds the true position with 95 % probability, metres
 * @param scatterR95M the part of it that more fixes would make smaller, metres
 * @param commonR95M the part that they would not, metres
 * @param fixes what the mean was taken of, in order of time
 * @param readings how many readings they were joined from
 * @param outliers readings that were left out
 */
public record AveragedMark(GeoPosition position, OptionalDouble altitudeM, double r95M, double scatterR95M,
        double commonR95M, List<Reading> fixes, int readings, List<Outlier> outliers) {

    private static final Catalogue TEXTS = Catalogue.of(AveragedMark.class);

    /** A reading that was left out, and how far it is from the mean. */
    public record Outlier(Reading reading, double distanceM) {
    }

    /** Readings that do not say when they were taken are taken for one a second once there are more than this. */
    private static final int UNTIMED_JOINED = 60;
    private static final Duration JOINED = Duration.ofMinutes(1);

    private static final double OUTLIER_Z = 3.5;
    private static final int LEAST_FOR_OUTLIERS = 5;
    /** Receivers print steps of decimetres: a scatter of zero would make everything else an outlier. */
    private static final double LEAST_SPREAD_M = 0.2;

    /** Readings farther apart are of different places. */
    private static final double ONE_PLACE_M = 300;

    /** Fewer fixes do not show their scatter: then one fix is taken to be as bad as GPS was specified in 2008, 9 m. */
    private static final int LEAST_FOR_SCATTER = 5;
    private static final double ASSUMED_R95_M = 9;
    private static final double SETTLED_M = 1e-4;

    public AveragedMark {
        fixes = List.copyOf(fixes);
        outliers = List.copyOf(outliers);
    }

    /**
     * @param readings of one receiver on one spot; at least one
     * @throws IllegalArgumentException with a sentence for the user if there are none, or they lie too far apart to be
     *     of one spot
     */
    public static AveragedMark of(List<Reading> readings) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException(TEXTS.text("averagedMark.thereFixesAverage"));
        }
        GeoPosition middle = median(readings);
        List<Reading> good = new ArrayList<>();
        List<Reading> bad = new ArrayList<>();
        double[] spread = spread(readings, middle);
        for (Reading reading : readings) {
            double[] off = offset(middle, reading.position());
            boolean outlier = readings.size() >= LEAST_FOR_OUTLIERS
                    && (Math.abs(off[0]) > OUTLIER_Z * spread[0] || Math.abs(off[1]) > OUTLIER_Z * spread[1]);
            (outlier ? bad : good).add(reading);
        }
        double widest = good.stream().mapToDouble(reading -> Geodesic.distanceM(middle, reading.position())).max().orElse(0);
        if (widest > ONE_PLACE_M) {
            throw new IllegalArgumentException(TEXTS.text("averagedMark.fixesLieUp", "widest", widest));
        }
        List<Reading> fixes = joined(good);
        double[] weights = weights(fixes);
        GeoPosition mean = mean(fixes, weights);
        return withError(mean, fixes, weights, good.size(), bad.stream()
                .map(reading -> new Outlier(reading, Geodesic.distanceM(mean, reading.position()))).toList());
    }

    private static AveragedMark withError(GeoPosition mean, List<Reading> fixes, double[] weights, int readings,
            List<Outlier> outliers) {
        int n = fixes.size();
        double squares = 0;
        double reported = 0;
        double common = 0;
        for (int i = 0; i < n; i++) {
            squares += Math.pow(Geodesic.distanceM(mean, fixes.get(i).position()), 2);
            double one = fixes.get(i).r95M().orElse(n < LEAST_FOR_SCATTER ? ASSUMED_R95_M : FixAveraging.COMMON_R95_M);
            double shared = Math.min(one, FixAveraging.COMMON_R95_M);
            common += weights[i] * shared;
            reported += weights[i] * weights[i] * (one * one - shared * shared);
        }
        double shown = n < 2 ? 0 : Presence.R95_PER_SIGMA * Presence.R95_PER_SIGMA * squares / (2 * (n - 1)) / n;
        double random = Math.sqrt(Math.max(reported, shown));
        OptionalDouble altitude = fixes.stream().filter(fix -> fix.altitudeM().isPresent())
                .mapToDouble(fix -> fix.altitudeM().getAsDouble()).average();
        return new AveragedMark(mean, altitude, Math.hypot(random, common), random, common, fixes, readings, outliers);
    }

    /** By the inverse square of the reported errors where all report one, else alike; together 1. */
    private static double[] weights(List<Reading> fixes) {
        boolean all = fixes.stream().allMatch(fix -> fix.r95M().orElse(0) > 0);
        double[] weights = fixes.stream().mapToDouble(fix -> all ? 1 / Math.pow(fix.r95M().getAsDouble(), 2) : 1).toArray();
        double sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(weight -> weight / sum).toArray();
    }

    private static GeoPosition mean(List<Reading> fixes, double[] weights) {
        GeoPosition centre = fixes.get(0).position();
        for (int turn = 0; turn < 20; turn++) {
            double east = 0;
            double north = 0;
            for (int i = 0; i < fixes.size(); i++) {
                double[] off = offset(centre, fixes.get(i).position());
                east += weights[i] * off[0];
                north += weights[i] * off[1];
            }
            double way = Math.hypot(east, north);
            centre = Geodesic.destination(centre, Math.toDegrees(Math.atan2(east, north)), way);
            if (way < SETTLED_M) {
                break;
            }
        }
        return centre;
    }

    private static List<Reading> joined(List<Reading> readings) {
        boolean many = readings.size() > UNTIMED_JOINED;
        Map<Object, List<Reading>> groups = new LinkedHashMap<>();
        for (int i = 0; i < readings.size(); i++) {
            int index = i;
            Object key = readings.get(i).at().<Object>map(at -> at.getEpochSecond() / JOINED.toSeconds())
                    .orElseGet(() -> TEXTS.text("averagedMark.untimed", "index", many ? index / UNTIMED_JOINED : index));
            groups.computeIfAbsent(key, none -> new ArrayList<>()).add(readings.get(i));
        }
        return groups.values().stream().map(AveragedMark::joinedToOne).toList();
    }

    private static Reading joinedToOne(List<Reading> group) {
        if (group.size() == 1) {
            return group.get(0);
        }
        double[] alike = new double[group.size()];
        Arrays.fill(alike, 1.0 / group.size());
        boolean all = group.stream().allMatch(reading -> reading.r95M().isPresent());
        OptionalDouble meanSquare = group.stream().filter(reading -> all)
                .mapToDouble(reading -> Math.pow(reading.r95M().getAsDouble(), 2)).average();
        return new Reading(group.get(0).at(), mean(group, alike), group.stream().filter(reading -> reading.altitudeM().isPresent())
                .mapToDouble(reading -> reading.altitudeM().getAsDouble()).average(),
                meanSquare.isPresent() ? OptionalDouble.of(Math.sqrt(meanSquare.getAsDouble())) : OptionalDouble.empty());
    }

    /** East and north of a place in metres, on the geodesic to it. */
    private static double[] offset(GeoPosition from, GeoPosition to) {
        Geodesic way = Geodesic.between(from, to);
        double bearing = Math.toRadians(way.initialBearingDeg());
        return new double[] {way.distanceM() * Math.sin(bearing), way.distanceM() * Math.cos(bearing)};
    }

    private static GeoPosition median(List<Reading> readings) {
        GeoPosition first = readings.get(0).position();
        double east = medianOf(readings.stream().mapToDouble(reading -> offset(first, reading.position())[0]).toArray());
        double north = medianOf(readings.stream().mapToDouble(reading -> offset(first, reading.position())[1]).toArray());
        return Geodesic.destination(first, Math.toDegrees(Math.atan2(east, north)), Math.hypot(east, north));
    }

    /** Standard deviations east and north by the median of the absolute deviations, 1.4826 of it for normal errors. */
    private static double[] spread(List<Reading> readings, GeoPosition middle) {
        double[] spread = new double[2];
        for (int axis = 0; axis < 2; axis++) {
            int along = axis;
            spread[axis] = Math.max(LEAST_SPREAD_M, 1.4826 * medianOf(readings.stream()
                    .mapToDouble(reading -> Math.abs(offset(middle, reading.position())[along])).toArray()));
        }
        return spread;
    }

    private static double medianOf(double[] values) {
        Arrays.sort(values);
        int half = values.length / 2;
        return values.length % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
    }

    /**
     * As a part of a visit.
     *
     * @param otherwiseAltitudeM height for a mean without one, metres
     */
    public Mark mark(double otherwiseAltitudeM) {
        Mark mark = StraddleFactory.eINSTANCE.createMark();
        mark.setLatitudeDeg(position.latitudeDeg());
        mark.setLongitudeDeg(position.longitudeDeg());
        mark.setAltitudeM(rounded(altitudeM.orElse(otherwiseAltitudeM)));
        mark.setErrorM(Math.ceil(r95M * 100) / 100);
        mark.setMethod(MarkMethod.AVERAGED);
        for (Reading reading : fixes) {
            PositionFix fix = StraddleFactory.eINSTANCE.createPositionFix();
            fix.setAt(reading.at().orElse(null));
            fix.setLatitudeDeg(reading.position().latitudeDeg());
            fix.setLongitudeDeg(reading.position().longitudeDeg());
            fix.setAltitudeM(rounded(reading.altitudeM().orElse(0)));
            fix.setErrorM(rounded(reading.r95M().orElse(0)));
            mark.getFixes().add(fix);
        }
        return mark;
    }

    private static double rounded(double metres) {
        return Math.round(metres * 100) / 100.0;
    }

    /** What was done, in plain sentences. */
    public List<String> sentences() {
        List<String> said = new ArrayList<>();
        said.add(TEXTS.text("averagedMark.mean", "fixes", count(fixes.size(), "fix", "fixes"),
                "readings", readings > fixes.size() ? TEXTS.text("averagedMark.joinedFromReadings",
                "readings", readings) : "."));
        said.add(TEXTS.text("averagedMark.error", "r95M", r95M, "scatterR95M", scatterR95M, "commonR95M", commonR95M));
        if (fixes.size() < LEAST_FOR_SCATTER && fixes.stream().anyMatch(fix -> fix.r95M().isEmpty())) {
            said.add(TEXTS.text("averagedMark.soFewFixes", "assumedR95M", ASSUMED_R95_M));
        }
        if (!outliers.isEmpty()) {
            said.add(TEXTS.text("averagedMark.leftOutAs", "outliers", count(outliers.size(), "outlier", "outliers"),
                    "limit", String.join(", ", outliers.stream().limit(5).map(AveragedMark::named).toList()),
                    "case", outliers.size() > 5));
        }
        return said;
    }

    private static String named(Outlier outlier) {
        Optional<Instant> at = outlier.reading.at();
        return TEXTS.text("averagedMark.off", "at", at.map(instant -> instant + " ").orElse(""),
                "distanceM", outlier.distanceM);
    }

    private static String count(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }
}
