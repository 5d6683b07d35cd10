package org.straddle.check.gate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Call;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.words.Catalogue;

/**
 * A check-in call that somebody is about to note.
 *
 * @param by who of the team called
 * @param takenBy who took the call; may be empty
 * @param note what was said; may be empty
 */
public record CallEntry(Instant at, String by, String takenBy, String note) {

    private static final Catalogue TEXTS = Catalogue.of(CallEntry.class);

    /** What keeps it from being noted, a sentence each; empty when nothing does. */
    public List<String> problems() {
        List<String> problems = new ArrayList<>();
        if (at == null) {
            problems.add(TEXTS.text("call.time"));
        }
        if (blank(by)) {
            problems.add(TEXTS.text("call.name"));
        }
        return problems;
    }

    /** The day of a team that a call belongs to: the last that began before it, or else its first. */
    public static Optional<TeamDay> day(Team team, Instant at) {
        List<TeamDay> days = team.getDays().stream().filter(day -> day.getFrom() != null).sorted(Comparator.comparing(TeamDay::getFrom)).toList();
        return days.stream().filter(day -> !day.getFrom().isAfter(at)).reduce((earlier, later) -> later).or(() -> days.stream().findFirst());
    }

    /** @throws IllegalStateException if there are {@link #problems} */
    public Command on(EditingDomain domain, TeamDay day) {
        problems().stream().findFirst().ifPresent(problem -> {
            throw new IllegalStateException(problem);
        });
        Call call = StraddleFactory.eINSTANCE.createCall();
        call.setAt(at);
        call.setBy(by.strip());
        call.setTakenBy(blank(takenBy) ? null : takenBy.strip());
        call.setNote(blank(note) ? null : note.strip());
        return AddCommand.create(domain, day, Literals.TEAM_DAY__CALLS, call);
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
