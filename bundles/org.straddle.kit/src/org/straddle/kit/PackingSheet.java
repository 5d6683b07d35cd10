package org.straddle.kit;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.InertText;
import org.straddle.model.Role;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.Language;

/**
 * A packing list to print: tick boxes, and room for the name of who packed an item and the time, filled in where the
 * event already knows them. As plain text for a message or a terminal, or as one HTML page without scripts, pictures
 * or other files. Boxes are drawn as characters, so that they print when the browser drops backgrounds.
 */
public final class PackingSheet {

    private static final String STYLE = """
            body{font:11pt/1.35 sans-serif;color:#000;background:#fff;margin:1.5em}
            table{border-collapse:collapse;width:100%}
            caption{text-align:left;padding:.3em 0}
            th,td{border:1px solid #555;padding:.25em .45em;text-align:left;vertical-align:top}
            th{font-weight:600}
            thead{display:table-header-group}
            tr{break-inside:avoid}
            .box{font-size:1.4em;line-height:1;text-align:center}
            .figure{text-align:right}
            .pen{min-width:7em}
            @media print{body{margin:0}}
            """;

    private static final Catalogue TEXTS = Catalogue.of(PackingSheet.class);

    private final PackingList list;
    private final DateTimeFormatter time;

    private PackingSheet(PackingList list, ZoneId zone) {
        this.list = list;
        this.time = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withZone(zone);
    }

    /** Plain text, lines ended by a line feed; times are local to the zone. */
    public static String text(PackingList list, ZoneId zone) {
        return InertText.lines(new PackingSheet(list, zone).text());
    }

    /** A whole HTML page in UTF-8; times are local to the zone. */
    public static String html(PackingList list, ZoneId zone) {
        return InertText.lines(new PackingSheet(list, zone).html());
    }

    private String title() {
        return list.teamNumber() > 0 ? TEXTS.text("sheet.titleNumber", "number", list.teamNumber(), "team", list.team())
                : TEXTS.text("sheet.title", "team", list.team());
    }

    private String by(PackingRow row) {
        return row.packed().map(Packed::by).orElse("");
    }

    private String at(PackingRow row) {
        return row.packed().flatMap(Packed::at).map(time::format).orElse("");
    }

    private String text() {
        StringBuilder text = new StringBuilder(oneLine(title())).append('\n');
        if (list.isEmpty()) {
            return text.append('\n').append(TEXTS.text("sheet.empty")).append('\n').toString();
        }
        List<PackingRow> rows = list.rows();
        int width = rows.stream().mapToInt(row -> countedName(row).length()).max().orElse(0);
        Role role = null;
        for (PackingRow row : rows) {
            if (row.role() != role) {
                role = row.role();
                text.append('\n').append(Naming.of(role)).append('\n');
            }
            String name = countedName(row);
            text.append(row.packed().isPresent() ? "[x] " : "[ ] ").append(name)
                    .append(" ".repeat(width - name.length())).append("  ")
                    .append(row.packed().isPresent() ? penned(row) : TEXTS.text("sheet.pen"));
            String details = details(row);
            text.append(details.isEmpty() ? "" : "\n    " + details).append('\n');
        }
        text.append('\n').append(oneLine(list.summary())).append('\n').append(oneLine(list.energy().sentence())).append('\n');
        list.remarks().forEach(remark -> text.append("! ").append(oneLine(remark)).append('\n'));
        return text.toString();
    }

    private String countedName(PackingRow row) {
        return oneLine(row.count() + " × " + row.name());
    }

    private String penned(PackingRow row) {
        return oneLine((by(row) + " " + at(row)).strip());
    }

    private String details(PackingRow row) {
        return Stream.of(
                row.modes().isEmpty() ? "" : TEXTS.text("sheet.for", "modes", row.modesText()),
                row.spareFor().map(name -> TEXTS.text("sheet.spareFor", "item", name)).orElse(""),
                row.weightText(), row.note())
                .filter(part -> !part.isEmpty()).map(PackingSheet::oneLine).collect(Collectors.joining("; "));
    }

    /** What somebody typed must not break a line of the sheet. */
    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private String html() {
        StringBuilder html = new StringBuilder("<!DOCTYPE html>\n").append("<html lang=\"").append(Language.current().tag())
                .append("\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" ").append("content=\"width=device-width\">\n<title>").append(escaped(title()))
                .append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n<h1>")
                .append(escaped(title())).append("</h1>\n");
        if (list.isEmpty()) {
            html.append("<p>").append(escaped(TEXTS.text("sheet.empty"))).append("</p>\n");
        } else {
            table(html);
            html.append("<p>").append(escaped(list.energy().sentence())).append("</p>\n");
            remarks(html);
        }
        return html.append("</main>\n</body>\n</html>\n").toString();
    }

    private void table(StringBuilder html) {
        html.append("<table>\n<caption>").append(escaped(list.summary())).append("</caption>\n<thead>\n<tr>");
        for (String heading : List.of("packed", "item", "count", "role", "for", "spareFor", "weight", "name", "time")) {
            html.append("<th scope=\"col\">").append(escaped(TEXTS.text("sheet.column." + heading))).append("</th>");
        }
        html.append("</tr>\n</thead>\n<tbody>\n");
        for (PackingRow row : list.rows()) {
            boolean packed = row.packed().isPresent();
            html.append("<tr><td class=\"box\">").append(box(packed)).append("</td><th scope=\"row\">").append(escaped(row.name()))
                    .append(row.note().isEmpty() ? "" : "<br><small>" + escaped(row.note()) + "</small>")
                    .append("</th>");
            cell(html, "figure", Integer.toString(row.count()));
            cell(html, "", Naming.of(row.role()));
            cell(html, "", row.modesText());
            cell(html, "", row.spareFor().orElse(""));
            cell(html, "figure", row.weightText());
            cell(html, "pen", by(row));
            cell(html, "pen", at(row));
            html.append("</tr>\n");
        }
        html.append("</tbody>\n</table>\n");
    }

    private static String box(boolean packed) {
        return "<span role=\"img\" aria-label=\"" + escaped(TEXTS.text("sheet.box", "packed", packed)) + "\">"
                + (packed ? "☑" : "☐") + "</span>";
    }

    private static void cell(StringBuilder html, String kind, String text) {
        html.append(kind.isEmpty() ? "<td>" : "<td class=\"" + kind + "\">").append(escaped(text)).append("</td>");
    }

    private void remarks(StringBuilder html) {
        if (list.remarks().isEmpty()) {
            return;
        }
        html.append("<h2>").append(escaped(TEXTS.text("sheet.remarks"))).append("</h2>\n<ul>\n");
        list.remarks().forEach(remark -> html.append("<li>").append(escaped(remark)).append("</li>\n"));
        html.append("</ul>\n");
    }

    private static String escaped(String text) {
        return InertText.line(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
