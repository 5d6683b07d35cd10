package org.straddle.ui.editors;

import org.straddle.model.Identified;

/** An editor that can lead the eye to a part of its thing: an item, a visit, a review. */
public interface Revealing {

    void reveal(Identified part);
}
