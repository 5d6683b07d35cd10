package org.straddle.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

import org.straddle.check.gate.CallEntry;
import org.straddle.model.Call;
import org.straddle.model.Event;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.safety.CallLog;
import org.straddle.store.EventFolder;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code call EVENT}: the check-in calls of all teams; notes one with {@code --by}. */
@Command(name = "call")
final class CallCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(CallCommand.class);

    @Mixin
    private Rows rows;

    @Option(names = "--team", paramLabel = "T")
    private String team;

    @Option(names = "--at", paramLabel = "TIME")
    private String at;

    @Option(names = "--by", paramLabel = "NAME")
    private String by;

    @Option(names = "--taken-by", paramLabel = "NAME")
    private String takenBy;

    @Option(names = "--note", paramLabel = "TEXT")
    private String note;

    @Option(names = "--day", paramLabel = "YYYY-MM-DD")
    private LocalDate day;

    @Option(names = "--now", paramLabel = "TIME")
    private String now;

    @Override
    int work() throws Exception {
        Event event = by != null ? noted() : opened.event();
        TimeText times = TimeText.of(Outlook.zoneOf(event));
        Team only = team == null ? null : OpenEvent.team(team, event);
        CallLog log = new CallLog(CallLog.of(event, now == null ? Instant.now() : Moments.instant("--now", now)).entries().stream()
                .filter(entry -> only == null || entry.team() == only)
                .filter(entry -> day == null || times.date(entry.due()).equals(day)).toList());
        Table table = new Table(Table.column("team"), Table.column("site"), Table.column("due"), Table.column("act"), Table.column("call"),
                Table.column("by"), Table.column("note"));
        log.entries().forEach(entry -> table.row(entry.team().getNumber(), Naming.name(entry.stay().site()), entry.due(), entry.actAt(), entry.stateWord(),
                        entry.call().map(Call::getBy).orElse(null), entry.call().map(Call::getNote).orElse(null)));
        rows.print(table, out());
        if (rows.forPeople()) {
            out().println(log.sentence());
        }
        return log.missed().isEmpty() ? StraddleCommand.DONE : StraddleCommand.BLOCKED;
    }

    private Event noted() throws Exception {
        if (team == null) {
            throw new WrongInput(TEXTS.text("callCommand.team"));
        }
        Instant when = at == null ? Instant.now().truncatedTo(ChronoUnit.MINUTES) : Moments.instant("--at", at);
        CallEntry entry = new CallEntry(when, by, takenBy, note);
        entry.problems().stream().findFirst().ifPresent(problem -> {
            throw new WrongInput(problem);
        });
        EventFolder folder = opened.toChange();
        Team caller = OpenEvent.team(team, folder.event());
        TeamDay out = CallEntry.day(caller, when)
                .orElseThrow(() -> new WrongInput(TEXTS.text("callCommand.noDay", "team", caller.getNumber())));
        Edit.execute(domain -> entry.on(domain, out));
        folder.save();
        return folder.event();
    }
}
