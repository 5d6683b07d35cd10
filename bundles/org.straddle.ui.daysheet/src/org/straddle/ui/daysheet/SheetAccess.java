package org.straddle.ui.daysheet;

import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.straddle.ui.daysheet.layout.Box;
import org.straddle.ui.daysheet.sheet.DaySheet;
import org.straddle.ui.daysheet.sheet.SheetItem;

/** Tells screen readers of the sheet: a list whose entries are the stops and turns in reading order. */
final class SheetAccess {

    private final SheetCanvas sheet;
    private final Accessible accessible;

    SheetAccess(SheetCanvas sheet) {
        this.sheet = sheet;
        this.accessible = sheet.control().getAccessible();
        accessible.addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = event.childID == ACC.CHILDID_SELF ? "Day sheet" : words(event.childID);
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = event.childID == ACC.CHILDID_SELF ? description() : words(event.childID);
            }
        });
        accessible.addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
            }

            @Override
            public void getChildCount(AccessibleControlEvent event) {
                event.detail = items().size();
            }

            @Override
            public void getChildren(AccessibleControlEvent event) {
                event.children = IntStream.range(0, items().size()).boxed().toArray();
            }

            @Override
            public void getFocus(AccessibleControlEvent event) {
                event.childID = sheet.control().isFocusControl() ? selectedChild() : ACC.CHILDID_NONE;
            }

            @Override
            public void getSelection(AccessibleControlEvent event) {
                event.childID = sheet.selected().isPresent() ? selectedChild() : ACC.CHILDID_NONE;
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
                if (event.childID >= 0 && event.childID < items().size()) {
                    sheet.place(items().get(event.childID)).ifPresent(box -> place(event, box));
                }
            }
        });
    }

    /** The sheet has other stops and turns. */
    void changed() {
        accessible.selectionChanged();
    }

    void selected() {
        accessible.selectionChanged();
        accessible.setFocus(selectedChild());
    }

    /** Something was said on the sheet. */
    void said(String words) {
        if (!words.isEmpty()) {
            accessible.sendEvent(ACC.EVENT_DESCRIPTION_CHANGED, new Object[] {"", words});
        }
    }

    private String description() {
        String said = sheet.said().isEmpty() ? "" : sheet.said() + " ";
        return said + sheet.selected().flatMap(item -> sheet.wording().map(wording -> "Selected: " + wording.of(item)))
                .orElseGet(() -> sheet.sheet().map(shown -> shown.lanes().size() + " teams, " + items().size()
                        + " stops and turns. Tab goes from one to the next, Enter opens it.").orElse("Empty"));
    }

    private List<SheetItem> items() {
        return sheet.sheet().map(DaySheet::items).orElse(List.of());
    }

    private String words(int child) {
        return child < 0 || child >= items().size() ? ""
                : sheet.wording().map(wording -> wording.of(items().get(child))).orElse("");
    }

    private int selectedChild() {
        int index = sheet.selected().map(items()::indexOf).orElse(-1);
        return index < 0 ? ACC.CHILDID_SELF : index;
    }

    private void place(AccessibleControlEvent event, Box box) {
        Point corner = sheet.control().toDisplay(box.x(), box.y());
        event.x = corner.x;
        event.y = corner.y;
        event.width = box.width();
        event.height = box.height();
    }
}
