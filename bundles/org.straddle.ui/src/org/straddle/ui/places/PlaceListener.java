package org.straddle.ui.places;

import java.util.List;
import java.util.Optional;

/** Hears which places are on show. All calls come on the UI thread. */
public interface PlaceListener {

    /** Other places are on show now, or none; none of them is chosen yet. */
    default void placesShown(List<ShownPlace> places) {
    }

    /** One place was chosen, in whatever view, or none. */
    default void placeChosen(Optional<ShownPlace> place) {
    }

    /** The user asks to see where the chosen place lies: bring it into sight. */
    default void placeSought(ShownPlace place) {
    }
}
