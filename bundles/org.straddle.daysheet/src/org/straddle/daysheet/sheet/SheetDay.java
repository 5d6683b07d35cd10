package org.straddle.daysheet.sheet;

import java.time.LocalDate;

import org.straddle.sky.Window;

/**
 * One local day of the sheet.
 *
 * @param number from 1
 * @param window from local midnight to local midnight, which is not always 24 hours
 * @param busy   the part in which teams are out or stop, the whole day if they do not
 */
public record SheetDay(int number, LocalDate date, Window window, Window busy) {
}
