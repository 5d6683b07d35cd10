package org.straddle.cli;

import java.util.List;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.gate.Gates;
import org.straddle.check.run.Checks;
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
        Table table = new Table(Table.column("severity"), Table.column("rule"),
                Table.column("accepted"), Table.column("sentence"), Table.column("at"),
                Table.column("objects"));
        findings.stream().filter(finding -> finding.severity().compareTo(least) <= 0)
                .forEach(finding -> table.row(finding.severity().word(), finding.rule(),
                        finding.accepted().map(acceptance -> acceptance.getBy()).orElse(null), finding.sentence(),
                        finding.when().orElse(null), objects(finding)));
        rows.print(table, out());
        if (rows.forPeople()) {
            out().println(Blockers.summary(findings));
            HoldLines.print(outlook, out());
            out().println(Gates.of(outlook, findings).summary());
        }
        return Blockers.exitCode(findings);
    }

    /** Ids for programs; the sentence names the objects for people. */
    private List<String> objects(Finding finding) {
        return rows.forPeople() ? List.of() : finding.objects().stream().map(Identified::getId).toList();
    }
}
