package org.straddle.cli;

import java.util.List;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.gate.Gates;
import org.straddle.check.run.Checks;
import org.straddle.model.Acceptance;
import org.straddle.model.Identified;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code check EVENT}: what is wrong with the event and its plan. */
@Command(name = "check")
final class CheckCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(CheckCommand.class);

    @Mixin
    private Rows rows;

    @Option(names = "--severity", paramLabel = "SEVERITY")
    private Severity least = Severity.ADVICE;

    @Option(names = "--without-papers")
    private boolean withoutPapers;

    @Override
    int work() throws Exception {
        Outlook outlook = opened.outlook(err());
        List<Finding> findings = Checks.standard().run(outlook, new ConsoleProgress(err())).stream()
                .filter(finding -> !withoutPapers || !CheckRule.PAPERS.contains(finding.rule())).toList();
        List<Finding> shown = findings.stream().filter(finding -> finding.severity().compareTo(least) <= 0).toList();
        rows.print(rows.forPeople() ? forPeople(shown) : forPrograms(shown), out());
        if (rows.forPeople()) {
            out().println(Blockers.summary(findings));
            HoldLines.print(outlook, out());
            out().println(Gates.of(outlook, findings).summary());
        }
        return Blockers.exitCode(findings);
    }

    /** The sentence, which is as long as it is and names the objects, comes last: nothing stands to the right of it. */
    private static Table forPeople(List<Finding> findings) {
        Table table = new Table(Table.column("severity"), Table.column("rule"), Table.column("accepted"), Table.column("at"),
                Table.column("sentence"));
        findings.forEach(finding -> table.row(finding.severity().word(), finding.rule(), acceptedBy(finding),
                finding.when().orElse(null), finding.sentence()));
        return table;
    }

    private static Table forPrograms(List<Finding> findings) {
        Table table = new Table(Table.column("severity"), Table.column("rule"), Table.column("accepted"),
                Table.column("sentence"), Table.column("at"), Table.column("objects"));
        findings.forEach(finding -> table.row(finding.severity().word(), finding.rule(), acceptedBy(finding), finding.sentence(),
                finding.when().orElse(null), finding.objects().stream().map(Identified::getId).toList()));
        return table;
    }

    private static String acceptedBy(Finding finding) {
        return finding.accepted().map(Acceptance::getBy).orElse(null);
    }
}
