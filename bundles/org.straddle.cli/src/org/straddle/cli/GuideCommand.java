package org.straddle.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import org.straddle.guide.Guide;
import org.straddle.guide.GuidePage;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code guide [RULE]}: what a finding means and how to fix it. */
@Command(name = "guide")
final class GuideCommand implements Callable<Integer> {

    private static final Catalogue TEXTS = Catalogue.of(GuideCommand.class);

    private static final int COLUMNS = 80;
    private static final int NEAREST = 3;

    @Parameters(arity = "0..1", paramLabel = "RULE")
    private String rule;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (rule == null) {
            Guide.topics().forEach(page -> printTitle(page, out));
            Guide.index().forEach(page -> printTitle(page, out));
        } else {
            print(Guide.page(rule).orElseThrow(() -> new WrongInput(TEXTS.text("guideCommand.thereRuleNearest",
                    "rule", rule, "nearest", nearest()))), out);
        }
        return StraddleCommand.DONE;
    }

    private static void print(GuidePage page, PrintWriter out) {
        printTitle(page, out);
        page.sections().forEach(section -> {
            out.println();
            out.println(section.heading());
            out.println(wrapped(section.text()));
        });
        if (!page.seeAlso().isEmpty()) {
            out.println();
            out.println(Guide.SEE_ALSO);
            page.seeAlso().stream().flatMap(id -> Guide.page(id).stream()).forEach(other -> printTitle(other, out));
        }
    }

    private static void printTitle(GuidePage page, PrintWriter out) {
        out.println(wrapped(page.rule() + ": " + page.title()));
    }

    private String nearest() {
        return Guide.index().stream().map(GuidePage::rule).sorted(Comparator.comparingInt(id -> distance(rule, id)))
                .limit(NEAREST).collect(Collectors.joining(", "));
    }

    /** How many characters have to be put in, taken out or changed (Levenshtein's distance). */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }

    private static String wrapped(String text) {
        StringBuilder lines = new StringBuilder();
        int column = 0;
        for (String word : List.of(text.split("\\s+"))) {
            if (column > 0 && column + 1 + word.length() > COLUMNS) {
                lines.append(System.lineSeparator());
                column = 0;
            } else if (column > 0) {
                lines.append(' ');
                column++;
            }
            lines.append(word);
            column += word.length();
        }
        return lines.toString();
    }
}
