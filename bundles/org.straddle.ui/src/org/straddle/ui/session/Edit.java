package org.straddle.ui.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EStructuralFeature.Setting;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.plan.Banning;
import org.straddle.words.Catalogue;

/** Commands with the words that the Undo menu shows. */
public final class Edit {

    private static final Catalogue TEXTS = Catalogue.of(Edit.class);

    private Edit() {
    }

    /** Sets one feature; null unsets a reference, a list replaces all that the feature holds. */
    public static Command set(EditingDomain domain, EObject owner, EStructuralFeature feature, Object value) {
        Object stored = value == null && !feature.isMany() ? SetCommand.UNSET_VALUE : value;
        return named(TEXTS.text("edit.change", "feature", Naming.feature(feature)), SetCommand.create(domain, owner, feature, stored));
    }

    public static Command add(EditingDomain domain, EObject owner, EReference list, EObject thing) {
        return add(domain, owner, list, thing, Naming.inCurrent().type(thing.eClass()));
    }

    public static Command add(EditingDomain domain, EObject owner, EReference list, EObject thing, String what) {
        return named(TEXTS.text("edit.add", "what", what), AddCommand.create(domain, owner, list, thing));
    }

    public static Command move(EditingDomain domain, EObject owner, EReference list, EObject thing, int to) {
        return named(TEXTS.text("edit.move", "list", Naming.feature(list)), MoveCommand.create(domain, owner, list, thing, to));
    }

    public static Command remove(EditingDomain domain, EObject owner, EStructuralFeature list, Collection<?> things) {
        return named(TEXTS.text("edit.remove", "what", Naming.feature(list)), RemoveCommand.create(domain, owner, list, things));
    }

    /**
     * Deletes things with everything that means nothing without them (the stops of a team or site, the turns of a
     * bird, the bans on them), and clears what else points at them.
     */
    public static Command delete(EditingDomain domain, Event event, Collection<? extends EObject> things,
            String what) {
        Set<EObject> doomed = withDependents(event, things);
        Set<EObject> gone = new LinkedHashSet<>(doomed);
        doomed.forEach(thing -> thing.eAllContents().forEachRemaining(gone::add));
        CompoundCommand command = new CompoundCommand(TEXTS.text("edit.delete", "what", what));
        Map<EObject, Collection<Setting>> uses = EcoreUtil.UsageCrossReferencer.findAll(gone, event);
        uses.forEach((thing, settings) -> settings.stream()
                .filter(use -> !gone.contains(use.getEObject()) && clearable(use.getEStructuralFeature()))
                .forEach(use -> command.append(clear(domain, use, thing))));
        for (EObject thing : doomed) {
            if (!EcoreUtil.isAncestor(others(doomed, thing), thing)) {
                command.append(RemoveCommand.create(domain, thing.eContainer(), thing.eContainingFeature(), thing));
            }
        }
        return command;
    }

    /** The given things and those that go with them. */
    public static Set<EObject> withDependents(Event event, Collection<? extends EObject> things) {
        Set<EObject> all = new LinkedHashSet<>(things);
        for (Stop stop : event.getPlan() == null ? List.<Stop>of() : event.getPlan().getStops()) {
            if (all.contains(stop.getTeam()) || all.contains(stop.getSite())) {
                all.add(stop);
            }
            for (Turn turn : stop.getTurns()) {
                if (all.contains(turn.getBird())) {
                    all.add(turn);
                }
            }
        }
        // A ban that loses what it names would forbid more than before.
        things.stream().filter(Identified.class::isInstance)
                .forEach(thing -> all.addAll(Banning.naming(event, (Identified) thing)));
        return all;
    }

    /** Several commands as one step for the user. */
    public static Command together(String label, List<Command> commands) {
        return new CompoundCommand(label, commands);
    }

    private static Command named(String label, Command command) {
        return new CompoundCommand(label, new ArrayList<>(List.of(command)));
    }

    private static boolean clearable(EStructuralFeature feature) {
        return feature.isChangeable() && !(feature instanceof EReference link && link.isContainment());
    }

    private static Command clear(EditingDomain domain, Setting use, EObject thing) {
        EStructuralFeature feature = use.getEStructuralFeature();
        return feature.isMany() ? RemoveCommand.create(domain, use.getEObject(), feature, thing)
                : SetCommand.create(domain, use.getEObject(), feature, SetCommand.UNSET_VALUE);
    }

    private static Collection<EObject> others(Set<EObject> all, EObject one) {
        Set<EObject> others = new LinkedHashSet<>(all);
        others.remove(one);
        return others;
    }
}
