package org.straddle.ui.daysheet;

import java.util.function.Consumer;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.LightMemory;
import org.straddle.model.Event;
import org.straddle.outlook.EarthSearch;
import org.straddle.outlook.Outlook;
import org.straddle.store.KeptFolder;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.NewestJob;
import org.straddle.words.Catalogue;

/**
 * Reads sheets off the UI thread, because the light of many days takes a while; only the newest is of interest.
 *
 * <p>After an edit it can read ahead of the checks: the passes are remembered, so what was dragged stands in its new
 * place at once, with the findings from before until the new ones are there.
 */
final class SheetReader {

    private static final Catalogue TEXTS = Catalogue.of(SheetReader.class);

    private final LightMemory light = new LightMemory();
    private final NewestJob<Reading> job;
    private final Consumer<Reading> done;

    /** @param done called on the UI thread */
    SheetReader(Display display, Consumer<Reading> done) {
        this.job = new NewestJob<>(display, new NewestJob.Kind(
                TEXTS.text("paperPrint.daySheet"), false, Job.INTERACTIVE, TEXTS.text("sheetReader.daySheetCould")));
        this.done = done;
    }

    void read(Computed computed) {
        read(monitor -> reading(computed, false));
    }

    /** Reads a newer snapshot with the findings of the last computation. */
    void readAhead(Event newer, Computed last, KeptFolder elements) {
        read(monitor -> reading(new Computed(newer, Outlook.of(newer, EarthSearch.in(elements), monitor), last.findings(), last.byThing(),
                last.gates()), true));
    }

    /** A reading that is under way will not be told. */
    void forget() {
        job.stop();
    }

    private void read(NewestJob.QuietWork<Reading> work) {
        job.run(work, done, failure -> {
            // A file that cannot be read is met by the computation too, which tells the user; the rest is logged.
        });
    }

    private Reading reading(Computed computed, boolean ahead) {
        return new Reading(computed, DaySheet.of(computed.outlook(), computed.findings(), light), ahead);
    }
}
