package org.straddle.publish;

import java.time.Instant;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.IdentityCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Promises;
import org.straddle.model.Event;
import org.straddle.model.Revision;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * The number under which a state of the schedule goes out, and its record in the event. The same state published again
 * keeps its number; any other gets the next one.
 *
 * @param number   1 and up
 * @param promises what is promised with it
 * @param isNew    whether it differs from what was published last
 */
public record NextRevision(int number, Promises promises, boolean isNew) {

    private static final Catalogue TEXTS = Catalogue.of(NextRevision.class);

    public static NextRevision of(Outlook outlook) {
        Promises promises = Promises.of(outlook);
        Optional<Revision> last = Promises.last(outlook.event());
        boolean isNew = last.filter(known -> promises.facts().equals(known.getFacts())).isEmpty();
        return new NextRevision(last.map(known -> known.getNumber() + (isNew ? 1 : 0)).orElse(1), promises, isNew);
    }

    /** Why the publisher cannot choose a number, and what to do; empty when it can be chosen. */
    public Optional<String> whyNot(int chosen) {
        return chosen >= number ? Optional.empty() : Optional.of(TEXTS.text("nextRevision.revisionCaseGive",
                "chosen", chosen, "case", chosen < 1, "number", number));
    }

    /** The same state under a number that the publisher chose; see {@link #whyNot}. */
    public NextRevision numbered(int chosen) {
        return new NextRevision(chosen, promises, isNew || chosen != number);
    }

    /** Writes it down in the event, once it went out; does nothing when it stands there already. */
    public Command record(EditingDomain domain, Event live, Instant at) {
        if (!isNew) {
            return IdentityCommand.INSTANCE;
        }
        Revision revision = StraddleFactory.eINSTANCE.createRevision();
        revision.setNumber(number);
        revision.setAt(at);
        revision.setFacts(promises.facts());
        promises.all().forEach(promise -> revision.getPromises().add(promise.written()));
        return AddCommand.create(domain, live, StraddlePackage.Literals.EVENT__REVISIONS, revision);
    }
}
