package org.straddle.ui.sky.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** Where words may stand: beside what they name, within the picture, not over one another. */
final class Spots {

    private static final int GAP = 7;
    private static final int NEAR = 2;
    private static final int FAR = 9;

    private final Rectangle bounds;
    private final List<Rectangle> taken = new ArrayList<>();

    Spots(Rectangle bounds) {
        this.bounds = bounds;
    }

    void take(Rectangle place) {
        taken.add(new Rectangle(place.x - 4, place.y - 1, place.width + 8, place.height + 2));
    }

    /** A free place for words of a size close to an anchor, if there is one; it is taken then. */
    Optional<Rectangle> free(int x, int y, Point size) {
        return free(x, y, size, NEAR);
    }

    private Optional<Rectangle> free(int x, int y, Point size, int farthest) {
        Optional<Rectangle> found = beside(x, y, size, farthest).stream().filter(this::isFree).findFirst();
        found.ifPresent(this::take);
        return found;
    }

    /** The same for words that must stand somewhere: over others if need be. */
    Rectangle some(int x, int y, Point size) {
        return free(x, y, size, FAR).orElseGet(() -> {
            Rectangle first = beside(x, y, size, 1).get(0);
            first.x = Math.max(bounds.x, Math.min(first.x, bounds.x + bounds.width - size.x));
            first.y = Math.max(bounds.y, Math.min(first.y, bounds.y + bounds.height - size.y));
            take(first);
            return first;
        });
    }

    private static List<Rectangle> beside(int x, int y, Point size, int farthest) {
        List<Rectangle> places = new ArrayList<>();
        for (int far = 1; far <= farthest; far++) {
            int gap = GAP * far;
            int centred = x - size.x / 2;
            int left = x - size.x - gap;
            int right = x + gap;
            places.add(new Rectangle(centred, y - size.y - gap, size.x, size.y));
            places.add(new Rectangle(left, y - size.y - gap / 2, size.x, size.y));
            places.add(new Rectangle(right, y - size.y - gap / 2, size.x, size.y));
            places.add(new Rectangle(right, y - size.y / 2, size.x, size.y));
            places.add(new Rectangle(left, y - size.y / 2, size.x, size.y));
            places.add(new Rectangle(centred, y + gap, size.x, size.y));
            places.add(new Rectangle(right, y + gap / 2, size.x, size.y));
            places.add(new Rectangle(left, y + gap / 2, size.x, size.y));
        }
        return places;
    }

    private boolean isFree(Rectangle place) {
        return place.x >= bounds.x && place.y >= bounds.y && place.x + place.width <= bounds.x + bounds.width
                && place.y + place.height <= bounds.y + bounds.height
                && taken.stream().noneMatch(place::intersects);
    }
}
