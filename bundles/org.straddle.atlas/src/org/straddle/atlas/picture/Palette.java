package org.straddle.atlas.picture;

import org.straddle.atlas.scene.Attention;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.drawing.Paper;

/**
 * The colours of a map, 0xRRGGBB. The ground is pale, so that teams and findings stand out, and none of them is the
 * only mark of anything.
 */
public final class Palette {

    public static final int PAPER = Paper.WHITE;
    public static final int INK = Paper.INK;
    public static final int QUIET = Paper.QUIET;
    static final int OFF_MAP = 0xE3E6E8;
    static final int SEA = 0xE9F0F4;
    static final int LAND = 0xF8F6EF;
    static final int COAST = 0x8CA0AD;
    static final int BORDER = 0x9C8FA6;
    static final int STATE = 0xB9B1BF;
    static final int FIELD = 0x40566B;
    static final int SQUARE = 0x7F93A6;
    static final int SUBSQUARE = 0xC0CBD4;
    static final int DEMAND = 0x8C7FB0;
    static final int DEMAND_WORDS = 0x4B3D74;
    static final int REGION = 0x00694E;
    static final int REACH = Paper.BLUE;
    public static final int CHOSEN = Paper.YELLOW;
    static final int ROAD = 0xA98C5B;
    static final int POWER_LINE = 0xB04A9A;
    static final int BUILDING = 0x7C7C7C;
    static final int RAILWAY = 0x555555;
    static final int QUARRY = 0x8A6B4A;
    static final int OTHER = 0x4E7F78;

    private Palette() {
    }

    static int of(SiteSpot.Kind kind) {
        return switch (kind) {
            case INSIDE -> Paper.BLUISH_GREEN;
            case WEST_EAST, SOUTH_NORTH -> Paper.SKY_BLUE;
            case CORNER -> Paper.VERMILLION;
        };
    }

    static int of(Attention attention) {
        return switch (attention) {
            case BLOCKER -> Paper.VERMILLION;
            case WARNING -> Paper.ORANGE;
            case ADVICE -> Paper.BLUE;
            case NONE -> PAPER;
        };
    }
}
