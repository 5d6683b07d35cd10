package org.straddle.ui.session;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** The one way from another thread to the UI thread. News for a window that is closed meanwhile is dropped, not thrown. */
public final class UiThread {

    private UiThread() {
    }

    /** Runs later on the UI thread, or not at all when the window is gone by then. */
    public static void later(Display display, Runnable news) {
        try {
            display.asyncExec(() -> {
                if (!display.isDisposed()) {
                    news.run();
                }
            });
        } catch (SWTException gone) {
            if (gone.code != SWT.ERROR_DEVICE_DISPOSED) {
                throw gone;
            }
        }
    }

    /** The same for news that only concerns a widget: dropped when the widget is gone, now or by then. */
    public static void later(Control concerned, Runnable news) {
        Display display;
        try {
            display = concerned.getDisplay();
        } catch (SWTException gone) {
            return;
        }
        later(display, () -> {
            if (!concerned.isDisposed()) {
                news.run();
            }
        });
    }
}
