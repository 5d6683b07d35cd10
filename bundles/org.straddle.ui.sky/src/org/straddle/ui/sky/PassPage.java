package org.straddle.ui.sky;

import java.util.Base64;
import java.util.List;

import org.straddle.ui.sky.pass.SheetWords;
import org.straddle.ui.sky.pass.SheetWords.Fact;
import org.straddle.ui.sky.pass.SheetWords.MomentRow;

/** The sheet as a page of its own for printing: one file, A4, no links to anything outside. */
final class PassPage {

    private static final String STYLE = """
            @page { size: A4 landscape; margin: 11mm 12mm; }
            html { color: #000; background: #fff; font: 9.5pt/1.35 "Noto Sans", "DejaVu Sans", Verdana, sans-serif; }
            body { max-width: 68rem; margin: 1rem auto; padding: 0 1rem; }
            h1 { font-size: 1.45em; margin: 0 0 .4em; padding-bottom: .25em; border-bottom: 3px solid #000; }
            img { display: block; width: 100%; height: auto; }
            .foot { display: flex; gap: 1.4rem; align-items: flex-start; margin-top: .6em; }
            table { border-collapse: collapse; flex: none; }
            caption { text-align: left; font-weight: 600; padding: 0 0 .2em; }
            th, td { border: 1px solid #555; padding: .15em .45em; text-align: right; white-space: nowrap;
              font-variant-numeric: tabular-nums; }
            tbody th { text-align: left; font-weight: 400; }
            thead th { background: #eee; }
            dl { margin: 0; display: grid; grid-template-columns: auto 1fr; gap: .1em .7em; }
            dt { font-weight: 600; }
            dd { margin: 0; }
            @media print { body { max-width: none; margin: 0; padding: 0; } }
            """;

    private PassPage() {
    }

    /** @param png the picture of the pass */
    static String of(SheetWords words, byte[] png) {
        StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        page.append("<title>").append(escaped(words.title())).append("</title>\n<style>\n").append(STYLE)
                .append("</style>\n</head>\n<body>\n<h1>").append(escaped(words.title())).append("</h1>\n");
        page.append("<img alt=\"").append(escaped(words.spoken())).append("\" src=\"data:image/png;base64,")
                .append(Base64.getEncoder().encodeToString(png)).append("\">\n<div class=\"foot\">\n");
        moments(page, words.moments());
        facts(page, words.facts());
        return page.append("</div>\n</body>\n</html>\n").toString();
    }

    private static void moments(StringBuilder page, List<MomentRow> rows) {
        page.append("<table>\n<caption>AOS, TCA and LOS</caption>\n<thead><tr><td></td><th>AOS</th><th>TCA</th>"
                + "<th>LOS</th></tr></thead>\n<tbody>\n");
        for (MomentRow row : rows) {
            page.append("<tr><th>").append(escaped(row.heading())).append("</th>");
            row.cells().forEach(cell -> page.append("<td>").append(escaped(cell)).append("</td>"));
            page.append("</tr>\n");
        }
        page.append("</tbody>\n</table>\n");
    }

    private static void facts(StringBuilder page, List<Fact> facts) {
        page.append("<dl>\n");
        facts.forEach(fact -> page.append("<dt>").append(escaped(fact.heading())).append("</dt><dd>")
                .append(escaped(fact.text())).append("</dd>\n"));
        page.append("</dl>\n");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
