package org.straddle.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.IdentityCommand;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Plan;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage;
import org.straddle.model.Team;
import org.straddle.model.Turn;

/**
 * Puts a proposal into the event: the stops and turns that nobody pinned give way to the proposed ones. One
 * command, undone as one; pinned things are not touched.
 *
 * <p>A proposal may be minutes old. When a thing that it names is gone, or what is pinned is no longer the
 * same, it does not fit any more and the command cannot be executed: plan again.
 */
public final class ApplyProposal {

    private static final String LABEL = "Apply the proposed plan";

    private final EditingDomain domain;
    private final Event live;
    private final Map<String, Identified> byId = new HashMap<>();

    private ApplyProposal(EditingDomain domain, Event live) {
        this.domain = domain;
        this.live = live;
        live.getTeams().forEach(this::index);
        live.getSites().forEach(this::index);
        live.getBirds().forEach(this::index);
        stops().forEach(this::index);
    }

    /** @param live the event being edited; found by ids, so the proposal may come from a snapshot */
    public static Command command(EditingDomain domain, Event live, Proposal proposal) {
        ApplyProposal apply = new ApplyProposal(domain, live);
        return apply.fits(proposal) ? apply.command(proposal) : UnexecutableCommand.INSTANCE;
    }

    private void index(Identified object) {
        byId.put(object.getId(), object);
    }

    private List<Stop> stops() {
        return live.getPlan() == null ? List.of() : live.getPlan().getStops();
    }

    private boolean fits(Proposal proposal) {
        List<String> planned = proposal.stops().stream().flatMap(stop -> stop.kept().stream())
                .flatMap(stop -> KeptStop.of(stop).stream()).map(KeptStop::facts).sorted().toList();
        List<String> present = KeptStop.of(live).stream().map(KeptStop::facts).sorted().toList();
        return planned.equals(present) && proposal.stops().stream().allMatch(stop ->
                find(Team.class, stop.team()).isPresent() && find(Site.class, stop.site()).isPresent()
                        && stop.turns().stream().allMatch(turn -> find(Bird.class, turn.bird()).isPresent()));
    }

    private Command command(Proposal proposal) {
        CompoundCommand all = new CompoundCommand(LABEL);
        List<Stop> leaving = stops().stream().filter(stop -> !KeptStop.isKept(stop)).toList();
        if (!leaving.isEmpty()) {
            all.append(RemoveCommand.create(domain, live.getPlan(), StraddlePackage.Literals.PLAN__STOPS, leaving));
        }
        List<Stop> coming = new ArrayList<>();
        for (PlannedStop planned : proposal.stops()) {
            Optional<Stop> kept = planned.kept().map(stop -> find(Stop.class, stop).orElseThrow());
            kept.ifPresentOrElse(stop -> replaceTurns(stop, planned, all), () -> coming.add(newStop(planned)));
        }
        if (!coming.isEmpty()) {
            addStops(coming, all);
        }
        return all.isEmpty() ? IdentityCommand.INSTANCE : all;
    }

    private void addStops(List<Stop> coming, CompoundCommand all) {
        if (live.getPlan() == null) {
            Plan plan = Fresh.plan();
            plan.getStops().addAll(coming);
            all.append(SetCommand.create(domain, live, StraddlePackage.Literals.EVENT__PLAN, plan));
        } else {
            all.append(AddCommand.create(domain, live.getPlan(), StraddlePackage.Literals.PLAN__STOPS, coming));
        }
    }

    private void replaceTurns(Stop stop, PlannedStop planned, CompoundCommand all) {
        List<Turn> leaving = stop.getTurns().stream().filter(turn -> !turn.isPinned()).toList();
        List<Turn> coming = newTurns(planned);
        if (!leaving.isEmpty()) {
            all.append(RemoveCommand.create(domain, stop, StraddlePackage.Literals.STOP__TURNS, leaving));
        }
        if (!coming.isEmpty()) {
            all.append(AddCommand.create(domain, stop, StraddlePackage.Literals.STOP__TURNS, coming));
        }
    }

    private Stop newStop(PlannedStop planned) {
        Stop stop = Fresh.stop();
        stop.setTeam(find(Team.class, planned.team()).orElseThrow());
        stop.setSite(find(Site.class, planned.site()).orElseThrow());
        stop.setArrival(planned.stay().start());
        stop.setDeparture(planned.stay().end());
        stop.getTurns().addAll(newTurns(planned));
        return stop;
    }

    private List<Turn> newTurns(PlannedStop planned) {
        return planned.turns().stream().filter(turn -> turn.kept().isEmpty()).map(this::newTurn).toList();
    }

    private Turn newTurn(PlannedTurn planned) {
        Turn turn = Fresh.turn();
        turn.setBird(find(Bird.class, planned.bird()).orElseThrow());
        turn.setStart(planned.window().start());
        turn.setEnd(planned.window().end());
        return turn;
    }

    /** The live object with the id of one from the snapshot. */
    private <T extends Identified> Optional<T> find(Class<T> kind, T named) {
        return Optional.ofNullable(byId.get(named.getId())).filter(kind::isInstance).map(kind::cast);
    }
}
