package org.straddle.ui.daysheet;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Rectangle;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.SheetItem;
import org.straddle.ui.parts.PictureAccess;
import org.straddle.words.Catalogue;

/** The stops and turns of the sheet in reading order, for screen readers. */
record SheetEntries(SheetCanvas sheet) implements PictureAccess.Entries {

    private static final Catalogue TEXTS = Catalogue.of(SheetEntries.class);

    @Override
    public String title() {
        return TEXTS.text("paperPrint.daySheet");
    }

    @Override
    public String description() {
        String said = sheet.said().isEmpty() ? "" : sheet.said() + " ";
        return said + sheet.selected().flatMap(item -> sheet.wording().map(wording -> TEXTS.text("sheetEntries.selected", "item", wording.of(item))))
                .orElseGet(() -> sheet.sheet().map(shown -> TEXTS.text("sheetEntries.teamsStopsTurns",
                        "lanes", shown.lanes().size(), "count", count())).orElse(TEXTS.text("sheetEntries.empty")));
    }

    @Override
    public int count() {
        return items().size();
    }

    @Override
    public String words(int entry) {
        return sheet.wording().map(wording -> wording.of(items().get(entry))).orElse("");
    }

    @Override
    public int selected() {
        return sheet.selected().map(items()::indexOf).orElse(-1);
    }

    @Override
    public Optional<Rectangle> place(int entry) {
        return sheet.place(items().get(entry)).map(box -> new Rectangle(box.x(), box.y(), box.width(), box.height()));
    }

    private List<SheetItem> items() {
        return sheet.sheet().map(DaySheet::items).orElse(List.of());
    }
}
