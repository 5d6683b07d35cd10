package org.straddle.ui.sky.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;

import org.straddle.grid.Square;
import org.straddle.model.Region;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.Reach;
import org.straddle.outlook.Reach.PassReach;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.AreaReach;
import org.straddle.sky.prediction.CommonView;
import org.straddle.sky.prediction.Ephemeris;
import org.straddle.ui.sky.pass.TimeGrain;
import org.straddle.words.Catalogue;

/**
 * Whom one pass reaches, and when: everybody, the regions, and the squares of each region that are reached. Worked
 * out once; not for the UI thread.
 *
 * @param leastDeg elevation that counts at the far end
 * @param squares  how many squares the regions name
 */
public record ReachSheet(SitePass found, TimeGrain grain, double leastDeg, List<Slice> slices, List<ReachRow> rows,
        int squares) {

    private static final Catalogue TEXTS = Catalogue.of(ReachSheet.class);

    /** Works out the rows of one pass. */
    private static final class Reading {

        private final Outlook outlook;
        private final Reach reach;
        private final SitePass found;
        private final Ephemeris bird;
        private final List<Window> times;
        private final List<Optional<PassReach>> parts;

        Reading(Outlook outlook, SitePass found) {
            this.outlook = outlook;
            this.reach = outlook.reach();
            this.found = found;
            this.bird = outlook.ephemeris(found.pass());
            this.times = Slice.cut(found.pass().window());
            this.parts = times.stream().map(time -> reach.of(found, time)).toList();
        }

        List<Slice> slices() {
            return times.stream().map(time -> new Slice(time,
                    bird.lookAt(outlook.place(found.site()), Slice.middle(time)).elevationDeg())).toList();
        }

        ReachRow everybody(PassReach whole) {
            return new ReachRow(ReachRow.Kind.EVERYBODY, TEXTS.text("reachSheet.allChasers"), 100,
                    parts.stream().map(part -> percent(part.map(PassReach::mean))).toList(), List.of(), whole.mean(),
                    whole.ever());
        }

        ReachRow region(Region region, AreaReach whole) {
            String name = Naming.name(region);
            return new ReachRow(ReachRow.Kind.REGION, name, region.getSharePercent(), parts.stream()
                    .map(part -> percent(part.map(known -> known.byRegion().get(region).mean()))).toList(),
                    within(reach.views(found.site(), found.bird(), region)), whole.mean(), whole.ever());
        }

        Optional<ReachRow> square(Square square) {
            List<CommonView> views = within(reach.views(found.site(), found.bird(), square));
            Place middle = Place.of(square.centre().latitudeDeg(), square.centre().longitudeDeg());
            return views.isEmpty() ? Optional.empty() : Optional.of(new ReachRow(ReachRow.Kind.SQUARE, square.name(),
                    Double.NaN, times.stream().map(time -> elevation(middle, time, views)).toList(), views, Double.NaN,
                    Double.NaN));
        }

        private OptionalDouble elevation(Place place, Window time, List<CommonView> views) {
            return views.stream().flatMap(view -> view.window().intersection(time).stream()).findFirst()
                    .map(both -> OptionalDouble.of(bird.lookAt(place, Slice.middle(both)).elevationDeg()))
                    .orElse(OptionalDouble.empty());
        }

        private List<CommonView> within(List<CommonView> views) {
            return views.stream().filter(view -> view.window().overlaps(found.pass().window())).toList();
        }

        private static OptionalDouble percent(Optional<Double> part) {
            return part.filter(p -> p > 0).map(p -> OptionalDouble.of(100 * p)).orElse(OptionalDouble.empty());
        }
    }

    /** Empty when the event does not say where chasers live. */
    public static Optional<ReachSheet> of(Outlook outlook, SitePass found) {
        return outlook.reach().of(found).map(whole -> of(outlook, found, whole));
    }

    private static ReachSheet of(Outlook outlook, SitePass found, PassReach whole) {
        Reading reading = new Reading(outlook, found);
        List<ReachRow> rows = new ArrayList<>(List.of(reading.everybody(whole)));
        int squares = 0;
        for (Region region : outlook.reach().regions()) {
            rows.add(reading.region(region, whole.byRegion().get(region)));
            SortedSet<Square> named = squares(region);
            squares += named.size();
            named.stream().flatMap(square -> reading.square(square).stream())
                    .sorted(Comparator.comparing(ReachRow::lasts).reversed()).forEach(rows::add);
        }
        return new ReachSheet(found, TimeGrain.of(outlook.error(found.pass()).timeErrorS()), outlook.reach().leastDeg(),
                reading.slices(), List.copyOf(rows), squares);
    }

    private static SortedSet<Square> squares(Region region) {
        SortedSet<Square> squares = new TreeSet<>();
        for (String name : region.getSquares()) {
            try {
                squares.add(Square.parse(name));
            } catch (IllegalArgumentException noSquare) {
                // The outlook tells of names that are no squares.
                continue;
            }
        }
        return squares;
    }

    public long squaresReached() {
        return rows.stream().filter(row -> row.kind() == ReachRow.Kind.SQUARE).count();
    }
}
