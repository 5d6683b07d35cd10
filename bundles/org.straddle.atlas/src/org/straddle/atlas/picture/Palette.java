package org.straddle.atlas.picture;

import org.straddle.atlas.scene.Attention;
import org.straddle.atlas.scene.SiteSpot;

/**
 * The colours of a map, 0xRRGGBB. The ground is pale, so that teams and findings stand out, and none of them is the
 * only mark of anything. Saturated ones are from the colour-blind-safe set of Okabe and Ito (Color Universal Design,
 * 2002).
 */
public final class Palette {

    public static final int PAPER = 0xFFFFFF;
    public static final int INK = 0x1E2A35;
    public static final int QUIET = 0x56646F;
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
    static final int REACH = 0x0072B2;
    public static final int CHOSEN = 0xF0E442;
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
            case INSIDE -> 0x009E73;
            case WEST_EAST, SOUTH_NORTH -> 0x56B4E9;
            case CORNER -> 0xD55E00;
        };
    }

    static int of(Attention attention) {
        return switch (attention) {
            case BLOCKER -> 0xD55E00;
            case WARNING -> 0xE69F00;
            case ADVICE -> 0x0072B2;
            case NONE -> PAPER;
        };
    }
}
