package org.straddle.ui.map;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.straddle.atlas.picture.MapPicture;
import org.straddle.atlas.picture.Sight;
import org.straddle.drawing.Mark;
import org.straddle.ui.drawing.GcPen;
import org.straddle.ui.drawing.ScreenLetters;

/**
 * The map as an image that is a little larger than the window. A frame only copies it, moved or stretched to where the
 * map is now; meanwhile the next image is drawn in slices of a few milliseconds and takes its place when it is done.
 * Frames so take the same short time however much is on the map. UI thread only.
 */
final class Backdrop {

    private final Display display;
    private final ScreenLetters letters;
    private Image shown;
    private Sight shownSight;
    private Drawing next;

    /** An image that is being drawn. */
    private static final class Drawing {
        private final Sight sight;
        private final Image image;
        private final GC gc;
        private final GcPen pen;
        private final List<Mark> marks;
        private int done;

        Drawing(Display display, MapPicture picture, ScreenLetters letters) {
            sight = picture.sight();
            marks = picture.marks();
            image = new Image(display, sight.width(), sight.height());
            gc = new GC(image);
            pen = new GcPen(gc, letters);
        }

        void drop() {
            gc.dispose();
            image.dispose();
        }
    }

    Backdrop(Display display, ScreenLetters letters) {
        this.display = display;
        this.letters = letters;
    }

    /** Begins to draw a picture; one that is being drawn is dropped. */
    void draw(MapPicture picture) {
        if (next != null) {
            next.drop();
        }
        next = new Drawing(display, picture, letters);
    }

    boolean isDrawing() {
        return next != null;
    }

    /** Draws on until the time is used up; true when the image has just been finished. */
    boolean drawFor(long nanos) {
        if (next == null) {
            return false;
        }
        long until = System.nanoTime() + nanos;
        while (next.done < next.marks.size()) {
            next.marks.get(next.done++).draw(next.pen);
            if (System.nanoTime() > until) {
                return false;
            }
        }
        next.gc.dispose();
        if (shown != null) {
            shown.dispose();
        }
        shown = next.image;
        shownSight = next.sight;
        next = null;
        return true;
    }

    /** The sight of the image that is shown. */
    Optional<Sight> sight() {
        return Optional.ofNullable(shownSight);
    }

    /** Copies the image to where it belongs on a sight. */
    void paint(GC gc, Sight now) {
        if (shown == null) {
            return;
        }
        Rectangle whole = shown.getBounds();
        double scale = shownSight.metresPerPx() / now.metresPerPx();
        double left = now.pxX(shownSight.at(0, 0));
        double top = now.pxY(shownSight.at(0, 0));
        if (scale == 1) {
            gc.drawImage(shown, (int) Math.round(left), (int) Math.round(top));
            return;
        }
        // Only what is in sight is stretched.
        int fromX = (int) Math.max(0, Math.floor(-left / scale));
        int fromY = (int) Math.max(0, Math.floor(-top / scale));
        int toX = (int) Math.min(whole.width, Math.ceil((now.width() - left) / scale));
        int toY = (int) Math.min(whole.height, Math.ceil((now.height() - top) / scale));
        if (toX > fromX && toY > fromY) {
            gc.setInterpolation(SWT.NONE);
            gc.drawImage(shown, fromX, fromY, toX - fromX, toY - fromY, (int) Math.round(left + fromX * scale),
                    (int) Math.round(top + fromY * scale), (int) Math.max(1, Math.round((toX - fromX) * scale)),
                    (int) Math.max(1, Math.round((toY - fromY) * scale)));
        }
    }

    void forget() {
        if (next != null) {
            next.drop();
            next = null;
        }
        if (shown != null) {
            shown.dispose();
            shown = null;
            shownSight = null;
        }
    }
}
