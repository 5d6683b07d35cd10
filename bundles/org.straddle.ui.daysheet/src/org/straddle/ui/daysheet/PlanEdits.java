package org.straddle.ui.daysheet;

import org.eclipse.emf.common.command.Command;
import org.straddle.daysheet.edit.RefusedEdit;
import org.straddle.daysheet.edit.SheetEdit;
import org.straddle.daysheet.fits.Landing;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;
import org.straddle.words.Sentence;

/** Runs edits on the event of the window, each as one step, and tells on the sheet what came of them. */
final class PlanEdits {

    private static final Catalogue TEXTS = Catalogue.of(PlanEdits.class);

    private final EventSession session;
    private final SheetCanvas sheet;

    PlanEdits(EventSession session, SheetCanvas sheet) {
        this.session = session;
        this.sheet = sheet;
    }

    /** False if it was refused. */
    boolean run(SheetEdit edit) {
        if (!session.isOpen()) {
            return false;
        }
        session.commitPendingEdits();
        try {
            Command command = edit.command(session.editingDomain(), session.event());
            String label = command.getLabel();
            if (session.execute(command)) {
                sheet.say(TEXTS.text("planEdits.done", "what", label), false);
                return true;
            }
            sheet.say(TEXTS.text("planEdits.cannotDoneAs", "label", label), true);
        } catch (RefusedEdit refusal) {
            sheet.say(refusal.getMessage(), true);
        }
        return false;
    }

    /** Puts something down, and says what is wrong with its place. */
    boolean run(Landing landing) {
        if (landing.edit().isEmpty()) {
            sheet.say(TEXTS.text("planEdits.nothingChanged", "line", LandingWords.line(landing)), true);
            return false;
        }
        boolean done = run(landing.edit().get());
        String words = LandingWords.line(landing);
        if (done && !words.isEmpty()) {
            sheet.say(TEXTS.text("planEdits.done", "what", Sentence.begun(words)), !landing.fits());
        }
        return done;
    }
}
