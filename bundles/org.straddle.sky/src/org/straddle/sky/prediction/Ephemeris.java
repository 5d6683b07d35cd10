package org.straddle.sky.prediction;

import java.time.Instant;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.straddle.sky.ElementSet;
import org.straddle.sky.ElementSetException;
import org.straddle.sky.Horizon;
import org.straddle.sky.Illumination;
import org.straddle.sky.Look;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Subpoint;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;
import org.straddle.sky.Windows;
import org.straddle.sky.track.Culmination;
import org.straddle.sky.track.PassFinder;
import org.straddle.sky.track.Seconds;
import org.straddle.sky.track.Shadow;
import org.straddle.sky.track.Sightline;
import org.straddle.sky.track.Skyline;
import org.straddle.sky.track.Span;
import org.straddle.sky.track.Track;

/**
 * Where one bird is throughout a window, computed once and shared by all who ask: passes over any
 * place, directions, subpoints, shadow.
 *
 * <p>The states come from SGP4 on a grid fine enough that what lies between is good to about a metre
 * (see {@link Track}). Nothing here includes refraction or light time. Immutable; safe for use by
 * many threads.
 */
public final class Ephemeris {

    private final ElementSet elements;
    private final Window window;
    private final EarthOrientation orientation;
    private final Track track;

    /** @param track the states, from the start of the window on */
    Ephemeris(ElementSet elements, Window window, EarthOrientation orientation, Track track) {
        this.elements = elements;
        this.window = window;
        this.orientation = orientation;
        this.track = track;
    }

    /** As {@link #of(ElementSet, Window, EarthOrientation, IProgressMonitor)}, without Earth orientation data. */
    public static Ephemeris of(ElementSet elements, Window window, IProgressMonitor monitor) {
        return of(elements, window, EarthOrientation.none(), monitor);
    }

    /**
     * Propagates a bird through a window.
     *
     * @param monitor asked for cancellation only; may be null
     * @throws ElementSetException if the model refuses the elements. A bird that comes down within
     *                             the window is no such case: see {@link #predictionEnd()}
     * @throws IllegalArgumentException if the window is longer than 400 days
     * @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor is cancelled
     */
    public static Ephemeris of(ElementSet elements, Window window, EarthOrientation orientation,
            IProgressMonitor monitor) {
        IProgressMonitor asked = monitor == null ? new NullProgressMonitor() : monitor;
        return new Ephemeris(elements, window, orientation, Track.of(elements, window, orientation.frames(), asked));
    }

    public ElementSet elements() {
        return elements;
    }

    public Window window() {
        return window;
    }

    public EarthOrientation orientation() {
        return orientation;
    }

    /**
     * The instant within the window from which there is no prediction, because the element set leads
     * the bird below 100 km or the model fails; empty when the whole window is predicted. Equal to the
     * window's start when nothing is.
     */
    public Optional<Instant> predictionEnd() {
        return track.endReason() == null ? Optional.empty() : Optional.of(instant(track.lengthS()));
    }

    /** Why there is a {@link #predictionEnd()}, as a sentence for the user. */
    public Optional<String> predictionEndReason() {
        return Optional.ofNullable(track.endReason());
    }

    /** Direction, distance and its rate from a place. @throws IllegalArgumentException outside the predicted time */
    public Look lookAt(Place place, Instant instant) {
        return new Sightline(place, track).at(seconds(instant)).look();
    }

    /** The point below the bird. @throws IllegalArgumentException outside the predicted time */
    public Subpoint subpoint(Instant instant) {
        return orientation.frames().subpoint(position(seconds(instant)));
    }

    /** Whether the bird stands higher than an elevation. @throws IllegalArgumentException outside the predicted time */
    public boolean above(Place place, Instant instant, double minElevationDeg) {
        return new Sightline(place, track).at(seconds(instant)).elevation() > Math.toRadians(minElevationDeg);
    }

    /** The times within a window, clipped to the predicted time, at which the bird stands above an elevation. */
    public List<Window> above(Place place, Window within, double minElevationDeg) {
        return above(place, within, Horizon.flat(minElevationDeg));
    }

    /** The times within a window, clipped to the predicted time, at which the bird stands above a mask. */
    public List<Window> above(Place place, Window within, Horizon horizon) {
        return predicted(within).map(w -> PassFinder.spans(track, new Sightline(place, track), horizon,
                seconds(w.start()), seconds(w.end())).stream().map(this::window).toList()).orElse(List.of());
    }

    /** The times at which both places have the bird above an elevation: when they can work each other. */
    public List<Window> commonVisibility(Place a, Place b, Window within, double minElevationDeg) {
        return Windows.common(above(a, within, minElevationDeg), above(b, within, minElevationDeg));
    }

    /** The passes over a place, by time; {@link #visibility} also tells why there are none. */
    public List<Pass> passes(Place place, Horizon horizon) {
        return track.isEmpty() ? List.of() : passes(new Sightline(place, track), horizon);
    }

    /**
     * The passes of several birds over a viewpoint, of each bird one after the other, searched when they are asked for:
     * for somebody who wants the first passes of very many viewpoints. Each walk is for one thread at a time.
     *
     * @return one for each bird, in the order given
     */
    public static List<Iterator<Pass>> walks(Viewpoint viewpoint, List<Ephemeris> birds) {
        Skyline shared = new Skyline(viewpoint.horizon());
        return birds.stream().map(bird -> bird.walk(viewpoint.place(), shared)).toList();
    }

    private Iterator<Pass> walk(Place place, Skyline skyline) {
        return track.isEmpty() ? Collections.emptyIterator() : new Walk(new Sightline(place, track), skyline);
    }

    private PassList passes(Sightline sight, Horizon horizon) {
        List<Span> spans = PassFinder.spans(track, sight, horizon, 0, track.lengthS());
        PassList passes = new PassList(elements, window.start(), track.lengthS(), spans.size());
        Culmination culmination = new Culmination(track, sight);
        spans.forEach(span -> add(span, passes, sight, culmination));
        return passes;
    }

    private static void add(Span span, PassList passes, Sightline sight, Culmination culmination) {
        culmination.of(span);
        double minRangeKm = sight.at(culmination.nearestS()).range() / 1000;
        sight.at(culmination.highestS());
        passes.add(span, culmination.highestS(), Math.toDegrees(culmination.startAzimuth()),
                Math.toDegrees(sight.azimuth()), Math.toDegrees(culmination.endAzimuth()),
                Math.toDegrees(sight.elevation()), minRangeKm, sight.movesNorth());
    }

    private final class Walk implements Iterator<Pass> {
        private final Sightline sight;
        private final Culmination culmination;
        private final PassFinder finder;
        private Span next;
        private boolean looked;

        Walk(Sightline sight, Skyline skyline) {
            this.sight = sight;
            this.culmination = new Culmination(track, sight);
            this.finder = new PassFinder(track, sight, skyline, 0, track.lengthS());
        }

        @Override
        public boolean hasNext() {
            if (!looked) {
                next = finder.next();
                looked = true;
            }
            return next != null;
        }

        @Override
        public Pass next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            // By way of the list that packs passes, so that both ways round alike.
            PassList one = new PassList(elements, window.start(), track.lengthS(), 1);
            add(next, one, sight, culmination);
            looked = false;
            return one.get(0);
        }
    }

    /** The passes over a place, or which case there is instead of passes. */
    public Visibility visibility(Place place, Horizon horizon) {
        if (track.isEmpty()) {
            return new Visibility.Decayed(instant(track.lengthS()), List.of(), track.endReason());
        }
        Sightline sight = new Sightline(place, track);
        PassList passes = passes(sight, horizon);
        if (track.endReason() != null) {
            return new Visibility.Decayed(instant(track.lengthS()), passes, track.endReason());
        }
        if (passes.isEmpty()) {
            Culmination culmination = new Culmination(track, sight);
            culmination.of(new Span(0, track.lengthS()));
            return new Visibility.DownThroughout(Math.toDegrees(sight.at(culmination.highestS()).elevation()));
        }
        return passes.size() == 1 && passes.get(0).startsBefore() && passes.get(0).endsAfter()
                ? new Visibility.UpThroughout(passes.get(0)) : new Visibility.RisesAndSets(passes);
    }

    /** The times within a window at which the whole disc of the sun shines on the bird. */
    public List<Window> sunlit(Window within) {
        return illuminated(within, Illumination.SUNLIT);
    }

    /** The times within a window, clipped to the predicted time, of one state of light. */
    public List<Window> illuminated(Window within, Illumination illumination) {
        return predicted(within).map(w -> new Shadow(track, orientation.frames(), window.start())
                .windows(seconds(w.start()), seconds(w.end()), illumination).stream().map(this::window).toList())
                .orElse(List.of());
    }

    /** The light on the bird. @throws IllegalArgumentException outside the predicted time */
    public Illumination illumination(Instant instant) {
        return new Shadow(track, orientation.frames(), window.start()).at(seconds(instant));
    }

    private Optional<Window> predicted(Window within) {
        return track.isEmpty() ? Optional.empty()
                : new Window(window.start(), instant(track.lengthS())).intersection(within);
    }

    private Vector3D position(double timeS) {
        double[] state = new double[6];
        track.state(timeS, state);
        return new Vector3D(state[0], state[1], state[2]);
    }

    private Window window(Span span) {
        return new Window(instant(span.from()), instant(span.to()));
    }

    Instant instant(double timeS) {
        return Seconds.after(window.start(), timeS);
    }

    /** Seconds since the window began. @throws IllegalArgumentException outside the predicted time */
    double seconds(Instant instant) {
        double t = Seconds.between(window.start(), instant);
        if (t < 0 || t > track.lengthS() || track.isEmpty()) {
            throw new IllegalArgumentException(track.endReason() != null && t >= 0 ? track.endReason()
                    : instant + " lies outside the predicted time " + window);
        }
        return t;
    }

    Track track() {
        return track;
    }

    /** Grid nodes held, a measure of size for caches. */
    int nodeCount() {
        return track.nodeCount();
    }
}
