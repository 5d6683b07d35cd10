package org.straddle.daysheet.page;

import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.DaySheetLayout;
import org.straddle.daysheet.layout.Label;

/**
 * One page on paper: the lanes of some teams on one day.
 *
 * @param title  at the top
 * @param number at the right of the title: which page of how many
 * @param sheet  where the layout goes, below the title
 */
public record SheetPage(Label title, Label number, Box sheet, DaySheetLayout layout) {
}
