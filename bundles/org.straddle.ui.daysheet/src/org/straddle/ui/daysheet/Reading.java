package org.straddle.ui.daysheet;

import java.util.Optional;

import org.straddle.ui.daysheet.sheet.DaySheet;
import org.straddle.ui.session.Computed;

/** A computation and the sheet read from it; no sheet when there is no time to show. */
record Reading(Computed computed, Optional<DaySheet> sheet) {

    Wording wording() {
        return new Wording(computed.outlook(), computed.findings());
    }
}
