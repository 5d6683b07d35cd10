package org.straddle.cli;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.kit.Bags;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.kit.team.Resilience;
import org.straddle.kit.team.ResilienceText;
import org.straddle.kit.team.TeamEnergy;
import org.straddle.kit.work.Answer;
import org.straddle.kit.work.Gear;
import org.straddle.kit.work.Task;
import org.straddle.model.InertText;
import org.straddle.model.KitItem;
import org.straddle.model.Team;
import org.straddle.model.Tick;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.itinerary.Itinerary;
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

    @Option(names = "--single-points")
    private boolean singlePoints;

    @Override
    int work() throws Exception {
        List<Team> teams = opened.event().getTeams();
        if (team != null) {
            teams = List.of(OpenEvent.team(team, opened.event()));
        }
        if (singlePoints) {
            return singlePoints(teams);
        }
        if (rows.forPeople()) {
            Itinerary itinerary = Itinerary.of(opened.event());
            for (Team each : teams) {
                PackingList list = PackingList.of(each);
                out().println(TEXTS.text("packCommand.team", "number", each.getNumber(), "each", InertText.line(each.getName())));
                rows.print(table(List.of(each)), out());
                out().println();
                list.remarks().forEach(remark -> out().println("! " + InertText.line(remark)));
                out().println(list.summary());
                out().println(list.energy().sentence());
                Bags.lines(list.rows().stream().map(PackingRow::item).toList()).forEach(line -> out().println(InertText.line(line)));
                TeamEnergy.of(each, itinerary, PolicyFigures.of(opened.event().getPolicies()), Outlook.zoneOf(opened.event())).stream()
                        .flatMap(supply -> supply.lines().stream()).forEach(line -> out().println(InertText.line(line)));
                out().println();
            }
        } else {
            rows.print(whole(teams), out());
        }
        return StraddleCommand.DONE;
    }

    private int singlePoints(List<Team> teams) throws Exception {
        Itinerary itinerary = Itinerary.of(opened.event());
        if (rows.forPeople()) {
            for (Team each : teams) {
                out().println(TEXTS.text("packCommand.team", "number", each.getNumber(), "each", InertText.line(each.getName())));
                ResilienceText text = new ResilienceText(Resilience.of(each, itinerary));
                (itinerary.of(each).isEmpty() ? List.of(TEXTS.text("packCommand.noWork")) : text.lines())
                        .forEach(line -> out().println(InertText.line(line)));
                out().println();
            }
            return StraddleCommand.DONE;
        }
        Table table = new Table(Table.column("team"), Table.column("work"), Table.column("uplink"), Table.column("downlink"),
                Table.column("possible"), Table.column("order"), Table.column("items"), Table.column("remedy"));
        for (Team each : teams) {
            Resilience resilience = Resilience.of(each, itinerary);
            Stream.concat(resilience.planned().stream(), resilience.further().stream())
                    .forEach(answer -> rows(each, resilience, answer, table));
        }
        rows.print(table, out());
        return StraddleCommand.DONE;
    }

    private static void rows(Team team, Resilience resilience, Answer answer, Table table) {
        Task task = answer.task();
        if (!answer.possible() || answer.single().isEmpty() && answer.pairs().isEmpty()) {
            table.row(team.getNumber(), task.work().name(), task.uplink(), task.downlink(), answer.possible(), 0, null, null);
        }
        answer.single().forEach(gear -> table.row(team.getNumber(), task.work().name(), task.uplink(), task.downlink(), true, 1,
                gear.name(), resilience.remedy(answer, gear).map(Gear::name).orElse(null)));
        answer.pairs().forEach(pair -> table.row(team.getNumber(), task.work().name(), task.uplink(), task.downlink(), true, 2,
                pair.gear().stream().map(Gear::name).collect(Collectors.joining("; ")), null));
    }

    /** For programs: what people would find too wide too. */
    private static Table whole(List<Team> teams) {
        Table table = new Table(Table.column("team"), Table.column("item"), Table.column("count"), Table.column("role"),
                Table.column("modes"), Table.column("spareFor"), Table.column("weightKg"), Table.column("kit"),
                Table.column("packedBy"), Table.column("packedAt"), Table.column("bag"), Table.column("owner"),
                Table.column("serial"), Table.column("checkedBy"), Table.column("checkedAt"), Table.column("testedBy"),
                Table.column("testedAt"), Table.column("returnedBy"), Table.column("returnedAt"));
        for (Team team : teams) {
            for (PackingRow row : PackingList.of(team).rows()) {
                KitItem item = row.item();
                table.row(team.getNumber(), row.name(), row.count(), row.role().getLiteral(), row.modesText(),
                        item.getSpareFor() == null ? null : item.getSpareFor().getName(), item.getWeightKg(), row.kit(),
                        by(item.getTick()), at(item.getTick()), item.getBag(), item.getOwner(), item.getSerial(),
                        by(item.getChecked()), at(item.getChecked()), by(item.getTestedOnAir()), at(item.getTestedOnAir()),
                        by(item.getReturned()), at(item.getReturned()));
            }
        }
        return table;
    }

    private static String by(Tick tick) {
        return tick == null ? null : tick.getBy();
    }

    private static Instant at(Tick tick) {
        return tick == null ? null : tick.getAt();
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
