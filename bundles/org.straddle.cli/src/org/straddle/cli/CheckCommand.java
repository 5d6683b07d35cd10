package org.straddle.cli;

import java.util.List;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.run.Checks;
import org.straddle.model.Identified;
import org.straddle.outlook.Outlook;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code check EVENT}: what is wrong with the event and its plan. */
@Command(name = "check", description = "List what is wrong with the event and its plan; exit code 1 when blockers stand.")
final class CheckCommand extends EventCommand {

    @Mixin
    private Rows rows;

    @Option(names = "--severity", paramLabel = "SEVERITY",
            description = "Only findings that weigh at least this: ${COMPLETION-CANDIDATES}.")
    private Severity least = Severity.ADVICE;

    @Override
    int work() throws Exception {
        Outlook outlook = opened.outlook(err());
        List<Finding> findings = Checks.standard().run(outlook, new ConsoleProgress(err()));
        Table table = new Table(Table.column("severity", "Severity"), Table.column("rule", "Rule"),
                Table.column("accepted", "Accepted by"), Table.column("sentence", "Finding"), Table.column("at", "At (UTC)"),
                Table.column("objects", "Objects"));
        findings.stream().filter(finding -> finding.severity().compareTo(least) <= 0)
                .forEach(finding -> table.row(finding.severity().label(), finding.rule(),
                        finding.accepted().map(acceptance -> acceptance.getBy()).orElse(null), finding.sentence(),
                        finding.when().orElse(null), objects(finding)));
        rows.print(table, out());
        if (rows.forPeople()) {
            out().println(Blockers.summary(findings));
        }
        return Blockers.exitCode(findings);
    }

    /** Ids for programs; the sentence names the objects for people. */
    private List<String> objects(Finding finding) {
        return rows.forPeople() ? List.of() : finding.objects().stream().map(Identified::getId).toList();
    }
}
