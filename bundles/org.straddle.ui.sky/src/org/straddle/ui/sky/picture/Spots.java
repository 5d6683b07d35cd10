package org.straddle.ui.sky.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;


/** Where words may stand: beside what they name, within the picture, not over one another. */
final class Spots {

    private static final int GAP = 7;
    private static final int NEAR = 2;
    private static final int FAR = 9;

    private final Box bounds;
    private final List<Box> taken = new ArrayList<>();

    Spots(Box bounds) {
        this.bounds = bounds;
    }

    void take(Box place) {
        taken.add(new Box(place.x() - 4, place.y() - 1, place.width() + 8, place.height() + 2));
    }

    /** A free place for words of a size close to an anchor, if there is one; it is taken then. */
    Optional<Box> free(int x, int y, Size size) {
        return free(x, y, size, NEAR);
    }

    private Optional<Box> free(int x, int y, Size size, int farthest) {
        Optional<Box> found = beside(x, y, size, farthest).stream().filter(this::isFree).findFirst();
        found.ifPresent(this::take);
        return found;
    }

    /** The same for words that must stand somewhere: over others if need be. */
    Box some(int x, int y, Size size) {
        return free(x, y, size, FAR).orElseGet(() -> {
            Box first = beside(x, y, size, 1).get(0);
            Box within = new Box(Math.max(bounds.x(), Math.min(first.x(), bounds.x() + bounds.width() - size.width())),
                    Math.max(bounds.y(), Math.min(first.y(), bounds.y() + bounds.height() - size.height())),
                    first.width(), first.height());
            take(within);
            return within;
        });
    }

    private static List<Box> beside(int x, int y, Size size, int farthest) {
        List<Box> places = new ArrayList<>();
        for (int far = 1; far <= farthest; far++) {
            int gap = GAP * far;
            int centred = x - size.width() / 2;
            int left = x - size.width() - gap;
            int right = x + gap;
            places.add(new Box(centred, y - size.height() - gap, size.width(), size.height()));
            places.add(new Box(left, y - size.height() - gap / 2, size.width(), size.height()));
            places.add(new Box(right, y - size.height() - gap / 2, size.width(), size.height()));
            places.add(new Box(right, y - size.height() / 2, size.width(), size.height()));
            places.add(new Box(left, y - size.height() / 2, size.width(), size.height()));
            places.add(new Box(centred, y + gap, size.width(), size.height()));
            places.add(new Box(right, y + gap / 2, size.width(), size.height()));
            places.add(new Box(left, y + gap / 2, size.width(), size.height()));
        }
        return places;
    }

    private boolean isFree(Box place) {
        return place.x() >= bounds.x() && place.y() >= bounds.y() && place.x() + place.width() <= bounds.x() + bounds.width()
                && place.y() + place.height() <= bounds.y() + bounds.height()
                && taken.stream().noneMatch(place::meets);
    }
}
