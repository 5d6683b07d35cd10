package org.straddle.check.gate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.GateWord;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.TeamDay;
import org.straddle.words.Catalogue;

/**
 * What somebody is about to put their name to: that an item is settled, or that the team leaves although it is not.
 *
 * @param reason why; needed for an override
 */
public record GateEntry(GateKind kind, String by, Instant at, boolean override, String reason) {

    private static final Catalogue TEXTS = Catalogue.of(GateEntry.class);

    /** What keeps it from being entered, a sentence each; empty when nothing does. */
    public List<String> problems() {
        List<String> problems = new ArrayList<>();
        if (blank(by)) {
            problems.add(TEXTS.text("entry.name"));
        }
        if (override && blank(reason)) {
            problems.add(TEXTS.text("entry.reason"));
        }
        if (!override && !kind.byWord()) {
            problems.add(TEXTS.text("entry.follows", "what", TEXTS.text(kind)));
        }
        return problems;
    }

    /**
     * Enters it for a day of a team, in the place of what was entered for the item before.
     *
     * @throws IllegalStateException if there are {@link #problems}
     */
    public Command on(EditingDomain domain, TeamDay day) {
        Optional<String> problem = problems().stream().findFirst();
        if (problem.isPresent()) {
            throw new IllegalStateException(problem.get());
        }
        GateWord word = StraddleFactory.eINSTANCE.createGateWord();
        word.setItem(kind.word());
        word.setBy(by.strip());
        word.setAt(at);
        word.setOverride(override);
        word.setReason(blank(reason) ? null : reason.strip());
        CompoundCommand all = new CompoundCommand(TEXTS.text("entry.command", "override", override, "what", TEXTS.text(kind)));
        List<GateWord> before = words(day, kind);
        if (!before.isEmpty()) {
            all.append(RemoveCommand.create(domain, day, Literals.TEAM_DAY__GATE_WORDS, before));
        }
        all.append(AddCommand.create(domain, day, Literals.TEAM_DAY__GATE_WORDS, word));
        return all;
    }

    /** Takes back what was entered for an item; empty when nothing was. */
    public static Optional<Command> withdraw(EditingDomain domain, TeamDay day, GateKind kind) {
        List<GateWord> words = words(day, kind);
        if (words.isEmpty()) {
            return Optional.empty();
        }
        CompoundCommand all = new CompoundCommand(TEXTS.text("entry.withdraw", "what", TEXTS.text(kind)));
        all.append(RemoveCommand.create(domain, day, Literals.TEAM_DAY__GATE_WORDS, words));
        return Optional.of(all);
    }

    private static List<GateWord> words(TeamDay day, GateKind kind) {
        return day.getGateWords().stream().filter(word -> kind.word().equals(word.getItem())).toList();
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
