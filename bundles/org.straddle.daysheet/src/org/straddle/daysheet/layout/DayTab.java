package org.straddle.daysheet.layout;

import java.util.Optional;

import org.straddle.daysheet.sheet.SheetDay;

/**
 * The heading of a day: a click on it, or its number's key, shows the day alone.
 *
 * @param number the square with the key, for the first nine days
 */
public record DayTab(SheetDay day, Box box, Optional<Box> number, Optional<Label> name) implements SheetPart {
}
