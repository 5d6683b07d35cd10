package org.straddle.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.sites.SiteChange;
import org.straddle.exchange.sites.SiteField;
import org.straddle.exchange.sites.SiteImport;
import org.straddle.exchange.sites.SiteKey;
import org.straddle.exchange.sites.SiteMapping;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.store.EventFolder;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Option;

/** The part of {@link ImportCommand} that brings in sites: prints what changes, line by line, and does it. */
final class SiteImportRun {

    private static final Catalogue TEXTS = Catalogue.of(SiteImportRun.class);

    private static final String PASSED_OVER = "none";

    @Option(names = "--map", paramLabel = "COLUMN=FIELD")
    private Map<String, String> map = Map.of();

    @Option(names = "--match", paramLabel = "name|id|METRES")
    private String match;

    @Option(names = "--partial")
    private boolean partial;

    /** Whether lines that cannot be used are left out, rather than stop the import. */
    boolean isPartial() {
        return partial;
    }

    private Rows rows;

    /** @param swap null when the user says nothing of it */
    int run(EventFolder folder, List<Path> files, Boolean swap, boolean dryRun, Rows printed, PrintWriter out, PrintWriter err)
            throws Exception {
        rows = printed;
        for (Path file : files) {
            run(folder, file, swap, out, err);
        }
        if (!dryRun) {
            folder.save();
        } else if (rows.forPeople()) {
            out.println(TEXTS.text("importCommand.nothingChanged"));
        }
        return StraddleCommand.DONE;
    }

    private void run(EventFolder folder, Path file, Boolean swap, PrintWriter out, PrintWriter err) throws Exception {
        SourceTable table = SourceTable.read(file, new ConsoleProgress(err));
        table.remarks().forEach(remark -> err.println(table.name() + ": " + remark));
        SiteMapping mapping = mapping(table);
        SiteImport found = found(folder, table, mapping, Boolean.TRUE.equals(swap) ? CoordinateOrder.SWAPPED : CoordinateOrder.OF_THE_FORMAT);
        if (rows.forPeople()) {
            out.println(TEXTS.text("siteImportRun.columns", "told", told(table, mapping)));
        }
        rows.print(preview(found), out);
        if (rows.forPeople()) {
            out.println(found.summary());
        }
        if (swap == null && found.swapOffered()) {
            throw new WrongInput(TEXTS.text("siteImportRun.latitudeLongitudeSeem", "table", table.name()));
        }
        if (!found.refused().isEmpty() && !partial) {
            SiteChange.Refused first = found.refused().get(0);
            throw new WrongInput(TEXTS.text("siteImportRun.lineNothingChanged", "table", table.name(),
                    "line", first.line(), "reason", first.reason(), "refused", found.refused().size()));
        }
        Edit.execute(found::command);
    }

    private SiteImport found(EventFolder folder, SourceTable table, SiteMapping mapping, CoordinateOrder order) {
        try {
            return SiteImport.of(folder.event(), table, mapping, order, match == null ? mapping.usualKey() : SiteKey.parse(match));
        } catch (IllegalArgumentException e) {
            throw new WrongInput(TEXTS.text("siteImportRun.useMapColumn", "table", table.name(),
                    "reason", e.getMessage(), "columns", String.join(", ", table.columns())));
        }
    }

    private SiteMapping mapping(SourceTable table) {
        SiteMapping mapping = SiteMapping.guess(table);
        for (Map.Entry<String, String> each : map.entrySet()) {
            String column = table.columns().stream().filter(name -> name.equalsIgnoreCase(each.getKey().strip())).findFirst()
                    .orElseThrow(() -> new WrongInput(TEXTS.text("siteImportRun.hasColumnColumns",
                            "table", table.name(), "each", each.getKey(), "columns", String.join(", ", table.columns()))));
            try {
                mapping = mapping.with(column, each.getValue().equalsIgnoreCase(PASSED_OVER) ? null : SiteField.parse(each.getValue()));
            } catch (IllegalArgumentException e) {
                throw new WrongInput(TEXTS.text("siteImportRun.map", "each", each.getKey(), "each2", each.getValue(),
                        "reason", e.getMessage()));
            }
        }
        return mapping;
    }

    private static String told(SourceTable table, SiteMapping mapping) {
        Map<Boolean, List<String>> parted = table.columns().stream().collect(Collectors.partitioningBy(
                column -> mapping.field(column).isPresent()));
        String used = parted.get(true).stream().map(column -> column + " → " + mapping.field(column).orElseThrow().word())
                .collect(Collectors.joining(", "));
        return used + (parted.get(false).isEmpty() ? "" : TEXTS.text("siteImportRun.passedOver",
                "parted", String.join(", ", parted.get(false))));
    }

    private static Table preview(SiteImport found) {
        Table table = new Table(Table.column("line"), Table.column("change"), Table.column("site"),
                Table.column("field"), Table.column("was"), Table.column("now"));
        for (SiteChange change : found.changes()) {
            if (change instanceof SiteChange.New added) {
                details(table, change.line(), "new", added.name(), added.details());
            } else if (change instanceof SiteChange.Changed changed) {
                details(table, change.line(), "changed", changed.name(), changed.details());
            } else if (change instanceof SiteChange.Unchanged) {
                table.row(change.line(), "unchanged", change.name(), null, null, null);
            } else if (change instanceof SiteChange.Refused refused) {
                table.row(change.line(), "refused", change.name(), null, null, refused.reason());
            }
        }
        return table;
    }

    private static void details(Table table, int line, String change, String site, List<SiteChange.Detail> details) {
        details.forEach(detail -> table.row(line, change, site, detail.field().word(), detail.was(), detail.now()));
    }
}
