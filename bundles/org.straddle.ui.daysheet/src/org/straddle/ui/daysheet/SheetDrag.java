package org.straddle.ui.daysheet;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.jobs.Job;
import org.straddle.daysheet.fits.Carried;
import org.straddle.daysheet.fits.FittingPlace;
import org.straddle.daysheet.fits.Grip;
import org.straddle.daysheet.fits.Landing;
import org.straddle.daysheet.layout.Carry;
import org.straddle.daysheet.layout.DaySheetLayout;
import org.straddle.daysheet.layout.LaneBox;
import org.straddle.daysheet.sheet.SheetItem;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.ui.session.NewestJob;
import org.straddle.words.Catalogue;

/**
 * One stop or turn, or an end of it, from being lifted to being put down. The places that fit light up as soon as they
 * are found; what would be wrong is told with every move.
 */
final class SheetDrag {

    private static final Catalogue TEXTS = Catalogue.of(SheetDrag.class);

    private static final int SNAP_PX = 8;
    /** Where a pixel is more than this, five minutes are as fine as a hand can go. */
    private static final double COARSE_S_PER_PX = 90;

    private final SheetCanvas sheet;
    private final SheetItem item;
    private final Carried carried;
    private final Duration offset;
    private final NewestJob<List<FittingPlace>> search;
    private List<FittingPlace> places = List.of();
    private boolean searched;
    private Landing landing;
    private Team team;
    private Instant wanted;
    private Duration reach = Duration.ZERO;

    /** @param grabbed where the hand took hold */
    SheetDrag(SheetCanvas sheet, SheetItem item, Carried carried, Instant grabbed) {
        this.sheet = sheet;
        this.item = item;
        this.carried = carried;
        this.offset = Duration.between(carried.grip() == Grip.END ? item.window().end() : item.window().start(), grabbed);
        this.search = new NewestJob<>(sheet.control().getDisplay(), new NewestJob.Kind(
                TEXTS.text("placeSearch.placesFit"), false, Job.INTERACTIVE,
                TEXTS.text("sheetDrag.placesFitCould")));
        search.run(carried::everywhere, this::light, failure -> { });
    }

    /**
     * The hand is over a point.
     *
     * @param free snaps to nothing but minutes
     */
    void move(DaySheetLayout layout, int x, int y, boolean free) {
        Optional<Team> over = layout.lane(y).map(LaneBox::lane).flatMap(lane -> lane.team());
        double secondsPerPixel = layout.view().scale().secondsPerPixel();
        Instant held = layout.view().scale().at(x - layout.body().x()).minus(offset);
        Duration grid = Duration.ofMinutes(secondsPerPixel > COARSE_S_PER_PX ? 5 : 1);
        wanted = rounded(held, grid);
        team = over.orElse(team);
        reach = free ? Duration.ZERO : Duration.ofSeconds(Math.round(SNAP_PX * secondsPerPixel));
        land();
    }

    Optional<Landing> landing() {
        return Optional.ofNullable(landing);
    }

    List<FittingPlace> places() {
        return places;
    }

    Carry carry() {
        List<String> words = landing == null ? List.of()
                : new ArrayList<>(LandingWords.lines(landing, sheet.sheet().orElseThrow().zone()));
        if (searched && places.isEmpty() && landing != null) {
            words.add(TEXTS.text("sheetDrag.placeSheetFits"));
        }
        return new Carry(item.thing() instanceof Turn, places, landing(), words);
    }

    /** Ends the search, whether it was put down or let fall. */
    void end() {
        search.stop();
    }

    private void light(List<FittingPlace> found) {
        places = found;
        searched = true;
        land();
        sheet.dragged(this);
    }

    private void land() {
        if (team != null) {
            landing = carried.land(team, wanted, places, reach);
        }
    }

    private static Instant rounded(Instant instant, Duration grid) {
        long step = grid.toSeconds();
        Instant second = instant.truncatedTo(ChronoUnit.SECONDS);
        return Instant.ofEpochSecond(Math.floorDiv(second.getEpochSecond() + step / 2, step) * step);
    }
}
