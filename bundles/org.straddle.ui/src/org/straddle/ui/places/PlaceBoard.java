package org.straddle.ui.places;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.swt.widgets.Display;

/**
 * The places along roads that the user is looking through, for all views at once. The view that found them pins them
 * here with {@link #show} and takes them off with {@link #clear} when they no longer hold (also when the event is
 * closed); a map draws {@link #places()}, marks {@link #chosen()}, and calls {@link #choose} when one is clicked. Neither
 * knows the other. Choosing says nothing twice, so views may answer a choice with the same choice.
 *
 * <p>A map that is opened later reads what is on show from here. All methods belong to the UI thread.
 */
public final class PlaceBoard {

    private static final PlaceBoard CURRENT = new PlaceBoard();

    private final List<PlaceListener> listeners = new CopyOnWriteArrayList<>();
    private List<ShownPlace> places = List.of();
    private Optional<ShownPlace> chosen = Optional.empty();

    PlaceBoard() {
    }

    /** The board of this application. */
    public static PlaceBoard current() {
        if (Display.getCurrent() == null) {
            throw new IllegalStateException("not on the UI thread");
        }
        return CURRENT;
    }

    public void addListener(PlaceListener listener) {
        listeners.add(listener);
    }

    public void removeListener(PlaceListener listener) {
        listeners.remove(listener);
    }

    /** What is on show, best first; may be empty. */
    public List<ShownPlace> places() {
        return places;
    }

    public Optional<ShownPlace> chosen() {
        return chosen;
    }

    /** @param found best first */
    public void show(List<ShownPlace> found) {
        places = List.copyOf(found);
        chosen = Optional.empty();
        listeners.forEach(listener -> listener.placesShown(places));
    }

    public void clear() {
        if (!places.isEmpty()) {
            show(List.of());
        }
    }

    /**
     * Chooses one of the places on show.
     *
     * @param place may be null, for none; one that is not on show counts as none
     */
    public void choose(ShownPlace place) {
        Optional<ShownPlace> now = Optional.ofNullable(place).filter(places::contains);
        if (!now.equals(chosen)) {
            chosen = now;
            listeners.forEach(listener -> listener.placeChosen(chosen));
        }
    }

    /** Chooses a place and asks all views to bring it into sight. */
    public void seek(ShownPlace place) {
        choose(place);
        chosen.ifPresent(one -> listeners.forEach(listener -> listener.placeSought(one)));
    }
}
