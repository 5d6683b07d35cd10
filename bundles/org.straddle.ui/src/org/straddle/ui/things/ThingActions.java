package org.straddle.ui.things;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.straddle.model.Ban;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.EnteredDrive;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Making, doubling and deleting things, the same from every view. */
public final class ThingActions {

    private static final Catalogue TEXTS = Catalogue.of(ThingActions.class);

    private ThingActions() {
    }

    /** Makes a thing of the kind where such things live, and shows it; turns need their stop. */
    public static Identified create(EventSession session, Kind kind, Stop stop) {
        Event event = session.event();
        EObject home = kind == Kind.TURN ? stop : kind == Kind.STOP ? event.getPlan() : event;
        Identified thing = Fresh.of(kind.type());
        if (thing instanceof Team team) {
            team.setNumber(event.getTeams().stream().mapToInt(Team::getNumber).max().orElse(0) + 1);
        }
        session.execute(Edit.add(session.editingDomain(), home, kind.home(), thing));
        session.reveal(thing);
        return thing;
    }

    /** Copies things beside themselves, with identities of their own. */
    public static void duplicate(EventSession session, Collection<? extends Identified> things) {
        List<Command> commands = new ArrayList<>();
        Identified last = null;
        for (Identified thing : things) {
            Kind kind = Kind.of(thing).orElseThrow();
            Identified copy = EcoreUtil.copy(thing);
            renew(copy);
            name(copy).ifPresent(feature -> copy.eSet(feature, copyName((String) copy.eGet(feature))));
            commands.add(Edit.add(session.editingDomain(), thing.eContainer(), kind.home(), copy));
            last = copy;
        }
        if (last != null && session.execute(Edit.together(TEXTS.text("thingActions.duplicate",
                "things", named(things)), commands))) {
            session.reveal(last);
        }
    }

    /** Deletes after asking when more goes than was chosen. */
    public static void delete(Shell shell, EventSession session, Collection<? extends Identified> things) {
        if (things.isEmpty()) {
            return;
        }
        Set<EObject> all = Edit.withDependents(session.event(), things);
        List<String> along = new ArrayList<>(dependents(all, things));
        along.addAll(losers(session.event(), all));
        if (!along.isEmpty() && MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("thingActions.delete", "things", named(things)),
                TEXTS.text("thingActions.delete.question", "things", named(things), "dependents", along), SWT.NONE, TEXTS.text("thingActions.delete.button"), TEXTS.text("thingActions.cancel")) != 0) {
            return;
        }
        session.execute(Edit.delete(session.editingDomain(), session.event(), things, named(things)));
    }

    /** The stops, turns and bans that go along. */
    private static List<String> dependents(Set<EObject> all, Collection<? extends Identified> things) {
        List<Stop> stops = all.stream().filter(thing -> thing instanceof Stop && !things.contains(thing))
                .map(Stop.class::cast).toList();
        long turns = all.stream().filter(thing -> thing instanceof Turn && !things.contains(thing)
                && !all.contains(thing.eContainer())).count()
                + stops.stream().mapToInt(stop -> stop.getTurns().size()).sum();
        long bans = all.stream().filter(thing -> thing instanceof Ban && !things.contains(thing)).count();
        List<String> counts = new ArrayList<>();
        if (!stops.isEmpty()) {
            counts.add(TEXTS.text("thingActions.stops", "count", stops.size()));
        }
        if (turns > 0) {
            counts.add(TEXTS.text("thingActions.turns", "count", turns));
        }
        if (bans > 0) {
            counts.add(TEXTS.text("thingActions.bans", "count", bans));
        }
        return counts;
    }

    /** What stays and loses something: days their base, teams their people or kits, entered drives an end. */
    private static List<String> losers(Event event, Set<EObject> doomed) {
        Set<TeamDay> days = new HashSet<>();
        Set<Team> teams = new HashSet<>();
        Set<EnteredDrive> drives = new HashSet<>();
        EcoreUtil.UsageCrossReferencer.findAll(doomed, event).forEach((thing, uses) -> uses.forEach(use -> {
            EObject loser = use.getEObject();
            if (doomed.contains(loser) || EcoreUtil.isAncestor(doomed, loser)) {
                return;
            }
            if (loser instanceof TeamDay day) {
                days.add(day);
            } else if (loser instanceof Team team) {
                teams.add(team);
            } else if (loser instanceof EnteredDrive drive) {
                drives.add(drive);
            }
        }));
        List<String> counts = new ArrayList<>();
        if (!days.isEmpty()) {
            counts.add(TEXTS.text("thingActions.days", "count", days.size(), "teams", days.stream()
                    .map(day -> Naming.name((Team) day.eContainer())).distinct().sorted().toList()));
        }
        if (!teams.isEmpty()) {
            counts.add(TEXTS.text("thingActions.teams", "teams", teams.stream().map(Naming::name).sorted().toList()));
        }
        if (!drives.isEmpty()) {
            counts.add(TEXTS.text("thingActions.drives", "count", drives.size()));
        }
        return counts;
    }

    private static String named(Collection<? extends Identified> things) {
        Identified first = things.iterator().next();
        return things.size() == 1 ? Naming.name(first)
                : TEXTS.text("thingActions.several", "count", things.size());
    }

    private static void renew(Identified copy) {
        copy.setId(UUID.randomUUID().toString());
        copy.eAllContents().forEachRemaining(part -> {
            if (part instanceof Identified inner) {
                inner.setId(UUID.randomUUID().toString());
            }
        });
    }

    private static Optional<EStructuralFeature> name(Identified thing) {
        return Optional.ofNullable(thing.eClass().getEStructuralFeature("name"));
    }

    private static String copyName(String name) {
        return name == null || name.isBlank() ? name : TEXTS.text("thingActions.copy", "name", name);
    }
}
