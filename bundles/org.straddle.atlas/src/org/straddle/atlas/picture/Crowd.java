package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.straddle.drawing.Frame;

/** Room on a picture: who comes first takes it. Boxes are kept by tiles, so that asking stays quick. */
final class Crowd {

    private static final int TILE_PX = 80;

    private final Map<Long, List<Frame>> taken = new HashMap<>();

    /** Takes the room if all of it is free. */
    boolean claim(Frame box) {
        if (!isFree(box)) {
            return false;
        }
        take(box);
        return true;
    }

    /** Takes the room, free or not. */
    void take(Frame box) {
        for (long tile : tiles(box)) {
            taken.computeIfAbsent(tile, unused -> new ArrayList<>()).add(box);
        }
    }

    private boolean isFree(Frame box) {
        for (long tile : tiles(box)) {
            for (Frame other : taken.getOrDefault(tile, List.of())) {
                if (other.meets(box)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static List<Long> tiles(Frame box) {
        List<Long> tiles = new ArrayList<>(4);
        for (long row = tile(box.top()); row <= tile(box.bottom()); row++) {
            for (long column = tile(box.left()); column <= tile(box.right()); column++) {
                tiles.add(row << 32 ^ column & 0xFFFFFFFFL);
            }
        }
        return tiles;
    }

    private static long tile(double px) {
        return (long) Math.floor(px / TILE_PX);
    }
}
