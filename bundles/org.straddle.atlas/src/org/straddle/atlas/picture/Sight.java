package org.straddle.atlas.picture;

import org.locationtech.jts.geom.Envelope;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.drawing.Frame;

/**
 * Which part of the plane is in sight, and how large.
 *
 * @param centreX of the middle, metres on the plane
 * @param centreY of the middle, metres on the plane
 * @param metresPerPx of the plane
 * @param width pixels
 * @param height pixels
 */
public record Sight(double centreX, double centreY, double metresPerPx, int width, int height) {

    /** A square metre fills the window: nearer there is nothing to see. */
    public static final double NEAREST = 0.002;

    public Sight {
        if (!(metresPerPx > 0) || width < 1 || height < 1) {
            throw new IllegalArgumentException("A sight has a size and a scale: " + metresPerPx + ", " + width + " × " + height);
        }
    }

    public double pxX(double x) {
        return (x - centreX) / metresPerPx + width / 2.0;
    }

    public double pxY(double y) {
        return (centreY - y) / metresPerPx + height / 2.0;
    }

    public double pxX(PlanePoint point) {
        return pxX(point.x());
    }

    public double pxY(PlanePoint point) {
        return pxY(point.y());
    }

    /** The point of the plane under a pixel. */
    public PlanePoint at(double pxX, double pxY) {
        return new PlanePoint(centreX + (pxX - width / 2.0) * metresPerPx, centreY - (pxY - height / 2.0) * metresPerPx);
    }

    /** What is in sight, metres on the plane. */
    public Envelope box() {
        double halfWidth = width / 2.0 * metresPerPx;
        double halfHeight = height / 2.0 * metresPerPx;
        return new Envelope(centreX - halfWidth, centreX + halfWidth, centreY - halfHeight, centreY + halfHeight);
    }

    public Frame frame() {
        return new Frame(0, 0, width, height);
    }

    /** Moves the map under the window, so that what was at the pixel (x, y) is then at (0, 0). */
    public Sight moved(double pxX, double pxY) {
        return new Sight(centreX + pxX * metresPerPx, centreY - pxY * metresPerPx, metresPerPx, width, height);
    }

    public Sight centredOn(PlanePoint point) {
        return new Sight(point.x(), point.y(), metresPerPx, width, height);
    }

    /** Larger by a factor, or smaller below 1, with what is under a pixel staying there. */
    public Sight zoomed(double factor, double pxX, double pxY) {
        PlanePoint held = at(pxX, pxY);
        double scale = metresPerPx / factor;
        return new Sight(held.x() - (pxX - width / 2.0) * scale, held.y() + (pxY - height / 2.0) * scale, scale, width,
                height);
    }

    /** The same middle and scale in another window. */
    public Sight sized(int newWidth, int newHeight) {
        return new Sight(centreX, centreY, metresPerPx, Math.max(1, newWidth), Math.max(1, newHeight));
    }

    /** The whole of a box with some room around it; a point gets a scale of its own. */
    public Sight fitting(Envelope box, double leastMetresPerPx) {
        double scale = Math.max(leastMetresPerPx, 1.25 * Math.max(box.getWidth() / width, box.getHeight() / height));
        return new Sight(box.centre().x, box.centre().y, scale, width, height);
    }

    /** Drawn with more around it, so that moving it shows what is there already. */
    public Sight withMargin(int px) {
        return new Sight(centreX, centreY, metresPerPx, width + 2 * px, height + 2 * px);
    }

    /** Kept within a map of this radius in metres, and between the nearest and the widest scale. */
    public Sight within(double rimM) {
        double widest = 2.4 * rimM / Math.min(width, height);
        double scale = Math.max(NEAREST, Math.min(widest, metresPerPx));
        double away = Math.hypot(centreX, centreY);
        double pull = away > rimM ? rimM / away : 1;
        return new Sight(centreX * pull, centreY * pull, scale, width, height);
    }
}
