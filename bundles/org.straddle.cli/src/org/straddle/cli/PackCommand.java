package org.straddle.cli;

import java.util.List;

import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.model.InertText;
import org.straddle.model.Team;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code pack EVENT}: what each team takes along, and what it lacks. */
@Command(name = "pack")
final class PackCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(PackCommand.class);

    @Mixin
    private Rows rows;

    @Option(names = "--team", paramLabel = "T")
    private String team;

    @Override
    int work() throws Exception {
        List<Team> teams = opened.event().getTeams();
        if (team != null) {
            teams = List.of(OpenEvent.team(team, opened.event()));
        }
        if (rows.forPeople()) {
            for (Team each : teams) {
                PackingList list = PackingList.of(each);
                out().println(TEXTS.text("packCommand.team", "number", each.getNumber(), "each", InertText.line(each.getName())));
                rows.print(table(List.of(each)), out());
                out().println();
                list.remarks().forEach(remark -> out().println("! " + InertText.line(remark)));
                out().println(list.summary());
                out().println(list.energy().sentence());
                out().println();
            }
        } else {
            rows.print(table(teams), out());
        }
        return StraddleCommand.DONE;
    }

    private static Table table(List<Team> teams) {
        Table table = new Table(Table.column("team"), Table.column("item"),
                Table.column("count"), Table.column("role"), Table.column("modes"),
                Table.column("spareFor"), Table.column("weightKg"), Table.column("kit"),
                Table.column("packedBy"), Table.column("packedAt"));
        for (Team team : teams) {
            for (PackingRow row : PackingList.of(team).rows()) {
                table.row(team.getNumber(), row.name(), row.count(), row.role().getLiteral(), row.modesText(),
                        row.item().getSpareFor() == null ? null : row.item().getSpareFor().getName(),
                        row.item().getWeightKg(), row.kit(), row.packed().map(packed -> packed.by()).orElse(null),
                        row.packed().flatMap(packed -> packed.at()).orElse(null));
            }
        }
        return table;
    }
}
