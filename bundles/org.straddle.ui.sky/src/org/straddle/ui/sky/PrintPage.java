package org.straddle.ui.sky;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;

import org.straddle.ui.sky.pass.SheetWords.Fact;

/** A page of its own for printing: one file, A4, no links to anything outside. */
final class PrintPage {

    private static final String STYLE = """
            @page { size: A4 landscape; margin: 11mm 12mm; }
            html { color: #000; background: #fff; font: 9.5pt/1.35 "Noto Sans", "DejaVu Sans", Verdana, sans-serif; }
            body { max-width: 68rem; margin: 1rem auto; padding: 0 1rem; }
            h1 { font-size: 1.45em; margin: 0 0 .4em; padding-bottom: .25em; border-bottom: 3px solid #000; }
            img { display: block; width: 100%; height: auto; }
            p { margin: .4em 0; }
            .foot { display: flex; flex-wrap: wrap; gap: .6rem 1.4rem; align-items: flex-start; margin-top: .6em; }
            table { border-collapse: collapse; flex: none; }
            th, td { border: 1px solid #555; padding: .15em .45em; text-align: right; white-space: nowrap;
              font-variant-numeric: tabular-nums; }
            tbody th { text-align: left; font-weight: 400; white-space: pre; }
            thead th { background: #eee; }
            thead { display: table-header-group; }
            tr { break-inside: avoid; }
            dl { flex: 1 1 22rem; margin: 0; display: grid; grid-template-columns: auto 1fr; gap: .1em .7em; }
            dt { font-weight: 600; }
            dd { margin: 0; }
            @media print { body { max-width: none; margin: 0; padding: 0; } }
            """;

    private final StringBuilder head = new StringBuilder();
    private final StringBuilder foot = new StringBuilder();

    private PrintPage(String title) {
        head.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>")
                .append(escaped(title)).append("</title>\n<style>\n").append(STYLE)
                .append("</style>\n</head>\n<body>\n<h1>").append(escaped(title)).append("</h1>\n");
    }

    static PrintPage titled(String title) {
        return new PrintPage(title);
    }

    PrintPage sentence(String words) {
        head.append("<p>").append(escaped(words)).append("</p>\n");
        return this;
    }

    /** @param words what it shows, for those who do not see it */
    PrintPage picture(byte[] png, String words) {
        head.append("<img alt=\"").append(escaped(words)).append("\" src=\"data:image/png;base64,")
                .append(Base64.getEncoder().encodeToString(png)).append("\">\n");
        return this;
    }

    PrintPage table(List<String> titles, List<List<String>> rows) {
        foot.append("<table>\n<thead><tr>");
        titles.forEach(title -> foot.append("<th>").append(escaped(title)).append("</th>"));
        foot.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : rows) {
            foot.append("<tr><th>").append(escaped(row.get(0))).append("</th>");
            row.stream().skip(1).forEach(cell -> foot.append("<td>").append(escaped(cell)).append("</td>"));
            foot.append("</tr>\n");
        }
        foot.append("</tbody>\n</table>\n");
        return this;
    }

    PrintPage facts(List<Fact> facts) {
        foot.append("<dl>\n");
        facts.forEach(fact -> foot.append("<dt>").append(escaped(fact.heading())).append("</dt><dd>")
                .append(escaped(fact.text())).append("</dd>\n"));
        foot.append("</dl>\n");
        return this;
    }

    @Override
    public String toString() {
        return head + "<div class=\"foot\">\n" + foot + "</div>\n</body>\n</html>\n";
    }

    byte[] bytes() {
        return toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
