package org.straddle.daysheet.layout;

import java.util.List;
import java.util.Optional;

import org.straddle.daysheet.sheet.Lane;

/**
 * A lane.
 *
 * @param box    the head at the left, which does not scroll sideways
 * @param strip  the part along the time
 * @param number the square for the team's number on its hatch and colour
 */
public record LaneBox(Lane lane, Box box, Box strip, Box number, Optional<Label> name, Optional<Label> summary,
        Optional<MarkBox> mark, List<LightBox> light, List<SpanBox> spans, List<DriveBox> drives, List<StopBox> stops)
        implements SheetPart {
}
