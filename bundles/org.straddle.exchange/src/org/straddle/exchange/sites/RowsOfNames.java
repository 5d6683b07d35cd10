package org.straddle.exchange.sites;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.words.Catalogue;

/** Collects points that each name what they say, and lays them out as rows under all names that came up. */
final class RowsOfNames {

    private static final Catalogue TEXTS = Catalogue.of(RowsOfNames.class);

    private final MapSource source;
    private final Set<String> names = new LinkedHashSet<>();
    private final List<Map<String, String>> points = new ArrayList<>();
    private final List<Integer> lines = new ArrayList<>();

    RowsOfNames(MapSource source) {
        this.source = source;
    }

    /** Blank values count as not said. */
    void add(int line, Map<String, String> said) throws ReadException {
        Map<String, String> kept = new LinkedHashMap<>();
        said.forEach((name, value) -> {
            if (!value.isBlank()) {
                kept.put(name, value.length() > SourceTable.LONGEST_VALUE ? value.substring(0, SourceTable.LONGEST_VALUE) : value);
            }
        });
        names.addAll(kept.keySet());
        if (names.size() > SourceTable.MOST_COLUMNS) {
            throw source.refuse(line, TEXTS.text("rowsOfNames.pointsHaveMore", "mostColumns", SourceTable.MOST_COLUMNS),
                    TEXTS.text("rowsOfNames.keepThoseTell"));
        }
        points.add(kept);
        lines.add(line);
        SourceTable.refuseTooMany(source, points.size(), line);
    }

    SourceTable toTable(List<String> remarks) {
        List<String> columns = List.copyOf(names);
        List<SourceTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Map<String, String> point = points.get(i);
            rows.add(new SourceTable.Row(lines.get(i), columns.stream().map(name -> point.getOrDefault(name, "")).toList()));
        }
        return new SourceTable(source.name(), columns, rows, remarks);
    }
}
