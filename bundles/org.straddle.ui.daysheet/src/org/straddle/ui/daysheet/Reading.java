package org.straddle.ui.daysheet;

import java.util.Optional;

import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.ui.session.Computed;

/**
 * A computation and the sheet read from it; no sheet when there is no time to show.
 *
 * @param ahead whether it is read ahead of the computation, right after an edit: times and passes are those of the
 *              event as it is now, findings still those from before
 */
record Reading(Computed computed, Optional<DaySheet> sheet, boolean ahead) {

    Wording wording() {
        return new Wording(computed.outlook(), computed.findings());
    }
}
