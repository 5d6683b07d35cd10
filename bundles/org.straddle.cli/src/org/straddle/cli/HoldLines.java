package org.straddle.cli;

import java.io.PrintWriter;
import java.util.List;

import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.keeping.PlanKeeping;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;
import org.straddle.worth.EventWorth;
import org.straddle.worth.split.ToDo;

/** How likely a plan holds, which drives matter most, and what to settle before departure. */
final class HoldLines {

    private static final Catalogue TEXTS = Catalogue.of(HoldLines.class);

    private static final int MOST_DRIVES = 5;

    private HoldLines() {
    }

    /** Nothing without turns. */
    static void print(Outlook outlook, PrintWriter out) {
        PlanKeeping keeping = PlanKeeping.of(outlook);
        int turns = keeping.chances().size();
        if (turns == 0) {
            return;
        }
        out.println(TEXTS.text("holdLines.keeping", "expected", Math.round(10 * keeping.expected()) / 10.0, "turns", turns,
                "whole", (int) Math.floor(100 * keeping.whole())));
        List<PlanKeeping.UnknownDrive> drives = keeping.drives();
        if (!drives.isEmpty()) {
            out.println(TEXTS.text("holdLines.drives"));
            drives.stream().limit(MOST_DRIVES).forEach(each -> out.println(TEXTS.text("holdLines.drive",
                    "from", Naming.name(each.drive().from()), "to", Naming.name(each.drive().to()),
                    "team", each.drive().team().getNumber(), "gain", each.gain())));
        }
        toDo(EventWorth.of(outlook), out);
    }

    /** What to settle at the sites of the event's plan, what unlocks most first. */
    static void toDo(EventWorth worth, PrintWriter out) {
        List<ToDo> open = ToDo.of(worth);
        if (open.isEmpty()) {
            return;
        }
        out.println(TEXTS.text("holdLines.toDo"));
        open.forEach(each -> out.println(TEXTS.text("holdLines.toDoAt", "site", Naming.name(each.site()),
                "lacks", each.lacks().stream().sorted().map(lack -> TEXTS.text("lack." + lack.name())).toList(),
                "first", TimeText.of(worth.outlook().zone()).at(each.first()), "unlocks", each.unlocks())));
    }
}
