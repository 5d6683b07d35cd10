package org.straddle.daysheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.daysheet.fits.FittingPlace;
import org.straddle.daysheet.fits.Landing;
import org.straddle.drawing.Face;
import org.straddle.sky.Window;

/** Lays out what lies over the lanes: places that fit, what is carried, and a message. */
public final class OverlayLayout {

    private static final int PAD = 7;
    private static final int MARK = 11;
    private static final int MOST_BALLOON = 560;

    private final DaySheetLayout sheet;
    private final TextMeasure measure;

    private OverlayLayout(DaySheetLayout sheet, TextMeasure measure) {
        this.sheet = sheet;
        this.measure = measure;
    }

    /** @param trouble whether the message tells of trouble; no message when the words are empty */
    public static Overlay of(DaySheetLayout sheet, Optional<Carry> carry, String message, boolean trouble,
            TextMeasure measure) {
        OverlayLayout layout = new OverlayLayout(sheet, measure);
        return new Overlay(carry.map(layout::lit).orElse(List.of()), carry.flatMap(layout::ghost),
                layout.message(message, trouble));
    }

    private List<Box> lit(Carry carry) {
        List<Box> lit = new ArrayList<>();
        for (FittingPlace place : carry.places()) {
            lane(place.teamId()).ifPresent(lane -> {
                Box room = carry.turn() ? within(lane, place.window()) : lane.strip().inset(0, 2);
                Box box = across(place.window(), room);
                if (!box.common(sheet.body()).isEmpty()) {
                    lit.add(box);
                }
            });
        }
        return lit;
    }

    private Optional<Overlay.Ghost> ghost(Carry carry) {
        return carry.landing().flatMap(landing -> lane(landing.teamId())
                .map(lane -> ghost(lane, carry, landing)));
    }

    private Overlay.Ghost ghost(LaneBox lane, Carry carry, Landing landing) {
        Box room = carry.turn() ? within(lane, landing.window()) : lane.strip().inset(0, PAD);
        int top = carry.turn() ? room.y() + StopLayout.titleHeight(measure) + 1 : room.y();
        int height = carry.turn() ? StopLayout.turnHeight(measure) : StopLayout.height(1, measure);
        Box box = across(landing.window(), new Box(room.x(), top, room.width(), height));
        int lineHeight = measure.height(Face.SMALL) + 2;
        int most = Math.min(MOST_BALLOON, Math.max(0, sheet.body().width() - MARK - 4 * PAD));
        List<String> words = carry.words().stream().flatMap(line -> Label.folded(line, most, Face.SMALL, measure).stream()).toList();
        int width = Math.min(most, words.stream().mapToInt(line -> measure.width(line, Face.SMALL)).max().orElse(0));
        int balloonHeight = words.size() * lineHeight + PAD;
        int balloonWidth = width + MARK + 3 * PAD;
        int x = Math.max(sheet.body().x() + 2, Math.min(box.x(), sheet.body().right() - balloonWidth - 2));
        int below = box.bottom() + 6;
        int y = below + balloonHeight <= sheet.body().bottom() ? below
                : Math.max(sheet.body().y(), box.y() - 6 - balloonHeight);
        Box balloon = new Box(x, y, balloonWidth, balloonHeight);
        List<Label> lines = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            Label.clipped(words.get(i), new Box(x + MARK + 2 * PAD, y + PAD / 2 + i * lineHeight, width,
                    lineHeight), Face.SMALL, measure).ifPresent(lines::add);
        }
        Box mark = new Box(x + PAD, y + PAD / 2 + (lineHeight - MARK) / 2, MARK, MARK);
        return new Overlay.Ghost(box, landing.fits(), balloon, mark, List.copyOf(lines));
    }

    private Optional<Overlay.Message> message(String words, boolean trouble) {
        if (words.isEmpty()) {
            return Optional.empty();
        }
        int lineHeight = measure.height(Face.PLAIN) + 6;
        Box body = sheet.body();
        int width = Math.max(0, body.width() - MARK - 3 * PAD);
        List<String> folded = Label.folded(words, width, Face.PLAIN, measure);
        int top = body.bottom() - folded.size() * lineHeight;
        List<Label> lines = new ArrayList<>();
        for (int i = 0; i < folded.size(); i++) {
            Label.clipped(folded.get(i), new Box(body.x() + MARK + 2 * PAD, top + i * lineHeight, width, lineHeight),
                    Face.PLAIN, measure).ifPresent(lines::add);
        }
        int right = lines.stream().mapToInt(line -> line.box().right()).max().orElse(body.x());
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Overlay.Message(
                new Box(body.x(), top, Math.min(body.width(), right + PAD - body.x()), body.bottom() - top),
                new Box(body.x() + PAD, top + (lineHeight - MARK) / 2, MARK, MARK), List.copyOf(lines), trouble));
    }

    private Optional<LaneBox> lane(String teamId) {
        return sheet.lanes().stream().filter(lane -> lane.lane().team()
                .filter(team -> team.getId().equals(teamId)).isPresent()).findFirst();
    }

    /** The stop that the window lies in, else the lane. */
    private static Box within(LaneBox lane, Window window) {
        return lane.stops().stream().filter(stop -> stop.stop().window().overlaps(window)).findFirst()
                .map(StopBox::box).orElse(lane.strip().inset(0, PAD));
    }

    private Box across(Window window, Box room) {
        int left = sheet.body().x() + sheet.view().scale().x(window.start());
        int right = sheet.body().x() + sheet.view().scale().x(window.end());
        return Box.between(left, Math.max(left + 3, right), room.y(), room.height());
    }
}
