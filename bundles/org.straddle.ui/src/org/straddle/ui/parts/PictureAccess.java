package org.straddle.ui.parts;

import java.util.Optional;
import java.util.stream.IntStream;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;

/** Tells screen readers of a picture: a list whose entries are the things in it. */
public final class PictureAccess {

    /** What is in the picture; entries are numbered from 0. */
    public interface Entries {

        String title();

        /** What is selected, or what there is at all. */
        String description();

        int count();

        String words(int entry);

        /** Below 0 when nothing is selected. */
        int selected();

        /** Where an entry is on the control, pixels; empty when it is out of sight. */
        Optional<Rectangle> place(int entry);
    }

    private final Control picture;
    private final Entries entries;
    private final Accessible accessible;

    public PictureAccess(Control picture, Entries entries) {
        this.picture = picture;
        this.entries = entries;
        accessible = picture.getAccessible();
        accessible.addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = event.childID == ACC.CHILDID_SELF ? entries.title() : words(event.childID);
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = event.childID == ACC.CHILDID_SELF ? entries.description() : words(event.childID);
            }
        });
        accessible.addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
            }

            @Override
            public void getChildCount(AccessibleControlEvent event) {
                event.detail = entries.count();
            }

            @Override
            public void getChildren(AccessibleControlEvent event) {
                event.children = IntStream.range(0, entries.count()).boxed().toArray();
            }

            @Override
            public void getFocus(AccessibleControlEvent event) {
                event.childID = picture.isFocusControl() ? selectedChild() : ACC.CHILDID_NONE;
            }

            @Override
            public void getSelection(AccessibleControlEvent event) {
                event.childID = entries.selected() >= 0 ? selectedChild() : ACC.CHILDID_NONE;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | ACC.STATE_SELECTABLE;
                if (event.childID >= 0 && event.childID == selectedChild()) {
                    event.detail |= ACC.STATE_SELECTED | ACC.STATE_FOCUSED;
                }
            }

            @Override
            public void getLocation(AccessibleControlEvent event) {
                if (isEntry(event.childID)) {
                    entries.place(event.childID).ifPresent(place -> locate(event, place));
                }
            }
        });
    }

    /** There are other things in the picture. */
    public void changed() {
        accessible.selectionChanged();
    }

    /** Something else is selected. */
    public void selected() {
        accessible.selectionChanged();
        accessible.setFocus(selectedChild());
    }

    /** Something was said on the picture, and stands in its description. */
    public void said(String words) {
        if (!words.isEmpty()) {
            accessible.sendEvent(ACC.EVENT_DESCRIPTION_CHANGED, new Object[] {"", words});
        }
    }

    private boolean isEntry(int child) {
        return child >= 0 && child < entries.count();
    }

    private String words(int child) {
        return isEntry(child) ? entries.words(child) : "";
    }

    private int selectedChild() {
        return entries.selected() < 0 ? ACC.CHILDID_SELF : entries.selected();
    }

    private void locate(AccessibleControlEvent event, Rectangle place) {
        Rectangle onDisplay = picture.getDisplay().map(picture, null, place);
        event.x = onDisplay.x;
        event.y = onDisplay.y;
        event.width = onDisplay.width;
        event.height = onDisplay.height;
    }
}
