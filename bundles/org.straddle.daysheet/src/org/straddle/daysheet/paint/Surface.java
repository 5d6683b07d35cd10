package org.straddle.daysheet.paint;

import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.Face;

/** What the sheet is drawn on: a screen, a printer, or a page of a file. Pixels from the top left corner. */
public interface Surface {

    /** Of all that follows, 0 to 255. */
    void setAlpha(int alpha);

    /** For what is filled. */
    void setBackground(Ink ink);

    /** For lines. */
    void setLine(Ink ink, int width, Stroke stroke);

    void drawLine(int x1, int y1, int x2, int y2);

    /** @param points x and y in turn */
    void drawPolyline(int[] points);

    void drawPolygon(int[] points);

    void fillPolygon(int[] points);

    void drawRectangle(int x, int y, int width, int height);

    void fillRectangle(int x, int y, int width, int height);

    void drawRoundRectangle(int x, int y, int width, int height, int arc);

    void fillRoundRectangle(int x, int y, int width, int height, int arc);

    void fillOval(int x, int y, int width, int height);

    /** From the top left corner of the words. */
    void drawText(String text, Face face, Ink ink, int x, int y);

    Box clip();

    void setClip(Box box);
}
