package org.straddle.ui.parts;

import org.eclipse.jface.action.Action;
import org.straddle.ui.things.Icons;

/** A menu or toolbar entry that runs a piece of code. */
public final class Act extends Action {

    private final Runnable run;

    /** @param text with mnemonic, and the key behind a tab if there is one */
    public Act(String text, String icon, Runnable run) {
        super(text, Icons.descriptor(icon));
        this.run = run;
        setToolTipText(text.replace("&", "").replaceAll("\t.*", ""));
    }

    @Override
    public void run() {
        run.run();
    }
}
