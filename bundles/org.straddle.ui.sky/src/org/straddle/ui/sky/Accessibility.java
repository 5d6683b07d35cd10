package org.straddle.ui.sky;

import java.util.function.Supplier;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Names and words for those who hear the window instead of seeing it. */
final class Accessibility {

    private Accessibility() {
    }

    static void name(Control control, String name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                if (event.childID == ACC.CHILDID_SELF) {
                    event.result = name;
                }
            }
        });
    }

    /** A drawing with a name, a description of what it shows, and where the reader points as its value. */
    static void picture(Control control, String name, Supplier<String> description, Supplier<String> value) {
        name(control, name);
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = description.get();
            }
        });
        control.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_GRAPHIC;
            }

            @Override
            public void getValue(AccessibleControlEvent event) {
                event.result = value.get();
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (control.isFocusControl() ? ACC.STATE_FOCUSED : 0);
            }
        });
    }
}
