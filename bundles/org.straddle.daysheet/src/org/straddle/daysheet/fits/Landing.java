package org.straddle.daysheet.fits;

import java.util.List;
import java.util.Optional;

import org.straddle.daysheet.edit.SheetEdit;
import org.straddle.sky.Window;

/**
 * What would come of letting go.
 *
 * @param teamId    of the lane
 * @param window    that the stop or turn would cover
 * @param edit      that puts it there; empty when it cannot be put there at all
 * @param obstacles what would be wrong with it; empty on a place that fits
 * @param notes     what else would happen, such as turns that leave the plan
 */
public record Landing(String teamId, Window window, Optional<SheetEdit> edit, List<Obstacle> obstacles,
        List<String> notes) {

    public Landing {
        obstacles = List.copyOf(obstacles);
        notes = List.copyOf(notes);
    }

    public boolean fits() {
        return edit.isPresent() && obstacles.isEmpty();
    }
}
