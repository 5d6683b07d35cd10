package org.straddle.ui.sky.picture;

import java.util.List;

import org.straddle.drawing.Lettering;
import org.straddle.drawing.pdf.PdfPages.Page;

/** A sheet on paper. */
public interface SkyPaper {

    String title();

    /** What is drawn on its pages; the first says all that a picture of its own has to say. */
    List<Page> pages(Lettering letters);
}
