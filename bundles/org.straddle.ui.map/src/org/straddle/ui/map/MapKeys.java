package org.straddle.ui.map;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.TraverseEvent;
import org.straddle.atlas.scene.SiteSpot;

/**
 * Keys on the map. Tab goes from site to site and leaves behind the last; arrows move the map, or what is being placed:
 * by 1 m, with Shift by 10 m, with Ctrl by 0.1 m. P goes from place to place of those that the line scout found.
 */
final class MapKeys {

    private static final double STEP_PX = 80;
    private static final double FINE_STEP_PX = 10;
    static final double ZOOM = 1.5;

    private final MapHands hands;
    private final MapCanvas map;
    private final Runnable goTo;

    MapKeys(MapHands hands, Runnable goTo) {
        this.hands = hands;
        this.map = hands.map();
        this.goTo = goTo;
        map.control().addTraverseListener(this::traverse);
        map.control().addKeyListener(KeyListener.keyPressedAdapter(this::press));
    }

    private void traverse(TraverseEvent event) {
        boolean next = event.detail == SWT.TRAVERSE_TAB_NEXT;
        if (!next && event.detail != SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = event.detail == SWT.TRAVERSE_PAGE_NEXT || event.detail == SWT.TRAVERSE_PAGE_PREVIOUS;
            return;
        }
        if (map.placing().isPresent()) {
            event.doit = false;
            return;
        }
        Optional<SiteSpot> to = beside(next ? 1 : -1);
        event.doit = to.isEmpty();
        if (to.isPresent()) {
            hands.choose(to);
        }
    }

    /** The site so many further in the order of the event. */
    private Optional<SiteSpot> beside(int step) {
        List<SiteSpot> sites = map.sites();
        int now = map.selectedSite().map(sites::indexOf).orElse(step > 0 ? -1 : sites.size());
        int wanted = now + step;
        return wanted >= 0 && wanted < sites.size() ? Optional.of(sites.get(wanted)) : Optional.empty();
    }

    private void press(KeyEvent event) {
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> arrow(event, -1, 0);
            case SWT.ARROW_RIGHT -> arrow(event, 1, 0);
            case SWT.ARROW_UP -> arrow(event, 0, 1);
            case SWT.ARROW_DOWN -> arrow(event, 0, -1);
            case SWT.PAGE_UP -> map.zoom(ZOOM);
            case SWT.PAGE_DOWN -> map.zoom(1 / ZOOM);
            case SWT.HOME -> map.fitAll();
            case SWT.CR, SWT.KEYPAD_CR -> {
                if (map.placing().isPresent()) {
                    hands.putDown();
                } else {
                    hands.open();
                }
            }
            case SWT.ESC -> {
                if (map.placing().isPresent()) {
                    hands.giveUp();
                } else {
                    hands.choose(Optional.empty());
                }
            }
            default -> type(event);
        }
    }

    private void type(KeyEvent event) {
        if ((event.stateMask & (SWT.MOD1 | SWT.MOD3)) != 0) {
            return;
        }
        switch (Character.toLowerCase(event.character)) {
            case '+', '=' -> map.zoom(ZOOM);
            case '-' -> map.zoom(1 / ZOOM);
            case '0' -> map.fitAll();
            case 'f' -> map.fitSelection();
            case 'm' -> hands.move();
            case 'n' -> hands.newSite();
            case 'g' -> goTo.run();
            case 'l' -> hands.snapToLine();
            case 'c' -> hands.snapToCorner();
            case 'p' -> map.found().step((event.stateMask & SWT.SHIFT) != 0 ? -1 : 1);
            default -> { }
        }
    }

    private void arrow(KeyEvent event, int east, int north) {
        boolean shift = (event.stateMask & SWT.SHIFT) != 0;
        boolean ctrl = (event.stateMask & SWT.MOD1) != 0;
        if (map.placing().isPresent()) {
            double metres = ctrl ? 0.1 : shift ? 10 : 1;
            hands.nudge(north * metres, east * metres);
        } else {
            double px = shift || ctrl ? FINE_STEP_PX : STEP_PX;
            map.pan(east * px, -north * px);
        }
    }
}
