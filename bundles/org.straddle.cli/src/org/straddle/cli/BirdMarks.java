package org.straddle.cli;

import java.util.List;

import org.straddle.model.Bird;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/** What to say beside a pass of a bird that does not answer, or not all the time. */
final class BirdMarks {

    private static final Catalogue TEXTS = Catalogue.of(BirdMarks.class);

    /** No mark is longer, in characters. */
    static final int WIDEST = 14;

    private BirdMarks() {
    }

    /** Empty for a bird that is expected to answer through all of a time. */
    static String of(Outlook outlook, Bird bird, Window during) {
        if (Outlook.isNotWorking(bird)) {
            return TEXTS.text("birdMarks.notWorking");
        }
        List<Window> on = outlook.switchedOn(bird, during);
        if (on.isEmpty()) {
            return TEXTS.text("birdMarks.off");
        }
        List<Window> workable = outlook.workable(bird, during);
        if (workable.isEmpty()) {
            return TEXTS.text("birdMarks.dark");
        }
        return workable.equals(List.of(during)) ? "" : TEXTS.text("birdMarks.part");
    }
}
