package org.straddle.cli;

import java.util.List;

import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.model.Team;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code pack EVENT}: what each team takes along, and what it lacks. */
@Command(name = "pack", description = "Print the packing list of each team, with missing spares.")
final class PackCommand extends EventCommand {

    @Mixin
    private Rows rows;

    @Option(names = "--team", paramLabel = "T", description = "Only this team: its number or (a part of) its name.")
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
                out().printf("Team %d  %s%n%n", each.getNumber(), each.getName());
                rows.print(table(List.of(each)), out());
                out().println();
                list.remarks().forEach(remark -> out().println("! " + remark));
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
        Table table = new Table(Table.column("team", "Team"), Table.column("item", "Item"),
                Table.column("count", "Count"), Table.column("role", "Role"), Table.column("modes", "For"),
                Table.column("spareFor", "Spare for"), Table.column("weightKg", "kg each"), Table.column("kit", "Kit"),
                Table.column("packedBy", "Packed by"), Table.column("packedAt", "at (UTC)"));
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
