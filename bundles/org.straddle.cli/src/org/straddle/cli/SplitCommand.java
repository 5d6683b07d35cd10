package org.straddle.cli;

import java.util.List;

import org.straddle.grid.Square;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;
import org.straddle.worth.split.SplitTable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code split EVENT}: which team holds which square on which day, how often it is worked, and the other place if one fails. */
@Command(name = "split")
final class SplitCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(SplitCommand.class);

    @Mixin
    private Rows rows;

    @Option(names = "--team", paramLabel = "T")
    private String team;

    @Override
    int work() throws Exception {
        Team only = team == null ? null : OpenEvent.team(team, opened.event());
        Outlook outlook = opened.outlook(err());
        SplitTable split = SplitTable.of(outlook);
        Table table = new Table(Table.column("square"), Table.column("day"), Table.column("team"), Table.column("site"),
                Table.column("passes"), Table.column("passesInAll"), Table.column("served"), Table.column("wanted"),
                Table.column("often"), Table.column("planB"), Table.column("planBTurns"), Table.column("planBMinutes"));
        for (SplitTable.Row row : split.rows()) {
            if (only == null || only == row.team()) {
                SplitTable.OfSquare all = split.of(row.square());
                table.row(row.square().name(), row.day(), row.team().getNumber(), row.site().getName(), row.passes(),
                        all.passes(), Rounded.tenths(all.served()), Rounded.tenths(all.wanted()),
                        all.isWorkedTooOften() ? TEXTS.text("splitCommand.often") : null,
                        row.planB().map(other -> other.site().getName()).orElse(null),
                        row.planB().map(other -> other.turns().size()).orElse(null),
                        row.planB().map(other -> other.drive().toMinutes()).orElse(null));
            }
        }
        rows.print(table, out());
        if (rows.forPeople()) {
            List<String> open = split.squares().stream().filter(all -> all.passes() == 0).map(SplitTable.OfSquare::square)
                    .map(Square::name).toList();
            out().println(TEXTS.text("splitCommand.summary", "squares", split.squares().size() - open.size(),
                    "open", open.size(), "names", open));
        }
        return StraddleCommand.DONE;
    }
}
