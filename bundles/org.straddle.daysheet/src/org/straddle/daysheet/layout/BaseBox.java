package org.straddle.daysheet.layout;

import java.util.Optional;

/** A base at an edge of the time in which a team may be out: a house and, where there is room, its name. */
public record BaseBox(Box house, Optional<Label> name) {

    Box whole() {
        return Box.between(house.x(), name.map(label -> label.box().right()).orElse(house.right()), house.y(),
                house.height());
    }
}
