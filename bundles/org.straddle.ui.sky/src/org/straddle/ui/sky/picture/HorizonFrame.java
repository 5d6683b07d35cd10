package org.straddle.ui.sky.picture;

import org.straddle.ui.sky.pass.Arc;
import org.straddle.ui.sky.pass.ArcPoint;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SunSeen;

/**
 * The horizon unrolled on a rectangle, as one turns about: azimuth to the right, elevation up. The whole round is in
 * it once, with the arc in the middle, so that an arc over north is not torn; an arc that goes round more than once
 * makes it wider.
 *
 * @param leftDeg unrolled azimuth at the left edge
 * @param spanDeg from the left edge to the right one, at least 360
 */
record HorizonFrame(int left, int top, int width, int height, double leftDeg, double spanDeg, double bottomDeg,
        double topDeg) {

    /** Low passes look low. */
    private static final double LEAST_TOP_DEG = 30;

    static HorizonFrame of(PassSheet sheet, int left, int top, int width, int height) {
        Arc arc = sheet.arc();
        double middle = (arc.leastAzimuthDeg() + arc.mostAzimuthDeg()) / 2;
        double wide = arc.mostAzimuthDeg() - arc.leastAzimuthDeg();
        double span = wide > 340 ? wide + 20 : 360;
        double highest = Math.max(Math.max(LEAST_TOP_DEG - 8, sheet.horizon().highestDeg()),
                arc.points().mapToDouble(ArcPoint::elevationDeg).max().orElseThrow());
        SunSeen sun = sheet.tca().sun();
        if (sun.isUp()) {
            highest = Math.max(highest, sun.elevationDeg());
        }
        double lowest = Math.min(sheet.horizon().lowestDeg(),
                arc.points().mapToDouble(ArcPoint::elevationDeg).min().orElseThrow());
        return new HorizonFrame(left, top, width, height, middle - span / 2, span,
                lowest < -0.5 ? Math.floor(lowest / 5) * 5 : 0, Math.min(90, Math.ceil((highest + 8) / 10) * 10));
    }

    int right() {
        return left + width;
    }

    int bottom() {
        return top + height;
    }

    /** @param azimuthDeg unrolled */
    int x(double azimuthDeg) {
        return (int) Math.round(exactX(azimuthDeg));
    }

    int y(double elevationDeg) {
        return (int) Math.round(exactY(elevationDeg));
    }

    double exactX(double azimuthDeg) {
        return left + (azimuthDeg - leftDeg) / spanDeg * width;
    }

    double exactY(double elevationDeg) {
        double up = (elevationDeg - bottomDeg) / (topDeg - bottomDeg);
        return bottom() - Math.max(0, Math.min(1, up)) * height;
    }

    double azimuthDeg(int x) {
        return leftDeg + (double) (x - left) / width * spanDeg;
    }

    /** The first unrolled azimuth of a direction in the frame. */
    double inside(double azimuthDeg) {
        return azimuthDeg - 360 * Math.floor((azimuthDeg - leftDeg) / 360);
    }
}
