package org.straddle.plan.event;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.IdentityCommand;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Ban;
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
import org.straddle.plan.Banning;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;
import org.straddle.plan.Proposal;
import org.straddle.words.Catalogue;

/**
 * Puts a proposal into the event: the stops and turns that nobody pinned give way to the proposed ones, and the bans of
 * its what-ifs go in with it. One command, undone as one; pinned things are not touched. What the proposal keeps or only
 * changes a little stays the same object, with its notes.
 *
 * <p>A proposal may be minutes old. When a thing that it names is gone, or what is pinned is no longer the
 * same, it does not fit any more and the command cannot be executed: plan again.
 */
public final class ApplyProposal {

    private static final Catalogue TEXTS = Catalogue.of(ApplyProposal.class);

    private final EditingDomain domain;
    private final Event live;
    private final Proposal proposal;
    private final Map<String, Identified> byId = new HashMap<>();

    private ApplyProposal(EditingDomain domain, Event live, Proposal proposal) {
        this.domain = domain;
        this.live = live;
        this.proposal = proposal;
        live.getTeams().forEach(this::index);
        live.getSites().forEach(this::index);
        live.getBirds().forEach(this::index);
        stops().forEach(this::index);
    }

    /** @param live the event being edited; found by ids, so the proposal may come from a snapshot */
    public static Command command(EditingDomain domain, Event live, Proposal proposal) {
        ApplyProposal apply = new ApplyProposal(domain, live, proposal);
        return apply.fits() ? apply.command() : UnexecutableCommand.INSTANCE;
    }

    private void index(Identified object) {
        byId.put(object.getId(), object);
    }

    private List<Stop> stops() {
        return live.getPlan() == null ? List.of() : live.getPlan().getStops();
    }

    private boolean fits() {
        Optional<Instant> from = proposal.replan().from();
        List<String> planned = proposal.stops().stream().flatMap(stop -> stop.kept().stream())
                .flatMap(stop -> KeptStop.of(stop, from).stream()).map(KeptStop::facts).sorted().toList();
        List<String> present = KeptStop.of(live, from).stream().map(KeptStop::facts).sorted().toList();
        return planned.equals(present) && proposal.bans().stream().allMatch(this::namesWhatIsThere)
                && proposal.stops().stream().allMatch(stop ->
                find(Team.class, stop.team()).isPresent() && find(Site.class, stop.site()).isPresent()
                        && stop.turns().stream().allMatch(turn -> find(Bird.class, turn.bird()).isPresent()));
    }

    private boolean namesWhatIsThere(Ban ban) {
        return (ban.getTeam() == null || find(Team.class, ban.getTeam()).isPresent())
                && (ban.getSite() == null || find(Site.class, ban.getSite()).isPresent())
                && (ban.getBird() == null || find(Bird.class, ban.getBird()).isPresent());
    }

    private Command command() {
        CompoundCommand all = new CompoundCommand(TEXTS.text("apply"));
        Optional<Instant> from = proposal.replan().from();
        Set<Stop> continued = proposal.stops().stream().flatMap(stop -> stop.continued().stream())
                .flatMap(stop -> find(Stop.class, stop).stream()).filter(stop -> !KeptStop.isKept(stop, from))
                .collect(Collectors.toSet());
        List<Stop> leaving = stops().stream().filter(stop -> !KeptStop.isKept(stop, from) && !continued.contains(stop))
                .toList();
        if (!leaving.isEmpty()) {
            all.append(RemoveCommand.create(domain, live.getPlan(), StraddlePackage.Literals.PLAN__STOPS, leaving));
        }
        List<Stop> coming = new ArrayList<>();
        for (PlannedStop planned : proposal.stops()) {
            Optional<Stop> known = planned.kept().map(stop -> find(Stop.class, stop).orElseThrow())
                    .or(() -> planned.continued().flatMap(stop -> find(Stop.class, stop)).filter(continued::contains));
            known.ifPresentOrElse(stop -> change(stop, planned, from, all), () -> coming.add(newStop(planned)));
        }
        add(coming, proposal.bans().stream().map(this::ofLive).toList(), all);
        return all.isEmpty() ? IdentityCommand.INSTANCE : all;
    }

    private Ban ofLive(Ban planned) {
        Ban ban = EcoreUtil.copy(planned);
        ban.setTeam(planned.getTeam() == null ? null : find(Team.class, planned.getTeam()).orElseThrow());
        ban.setSite(planned.getSite() == null ? null : find(Site.class, planned.getSite()).orElseThrow());
        ban.setBird(planned.getBird() == null ? null : find(Bird.class, planned.getBird()).orElseThrow());
        return ban;
    }

    private void add(List<Stop> stops, List<Ban> bans, CompoundCommand all) {
        if (live.getPlan() == null) {
            Plan plan = Fresh.plan();
            plan.getStops().addAll(stops);
            plan.getBans().addAll(bans);
            all.append(SetCommand.create(domain, live, StraddlePackage.Literals.EVENT__PLAN, plan));
            return;
        }
        if (!stops.isEmpty()) {
            all.append(AddCommand.create(domain, live.getPlan(), StraddlePackage.Literals.PLAN__STOPS, stops));
        }
        if (!bans.isEmpty()) {
            all.append(Banning.add(domain, live, bans));
        }
    }

    /** A stop that stays in the plan, or whose place the planned one takes: it keeps its identity. */
    private void change(Stop stop, PlannedStop planned, Optional<Instant> from, CompoundCommand all) {
        set(stop, StraddlePackage.Literals.STOP__TEAM, find(Team.class, planned.team()).orElseThrow(), all);
        set(stop, StraddlePackage.Literals.STOP__SITE, find(Site.class, planned.site()).orElseThrow(), all);
        set(stop, StraddlePackage.Literals.STOP__ARRIVAL, planned.stay().start(), all);
        set(stop, StraddlePackage.Literals.STOP__DEPARTURE, planned.stay().end(), all);
        Map<Turn, PlannedTurn> staying = new LinkedHashMap<>();
        List<Turn> coming = new ArrayList<>();
        for (PlannedTurn turn : planned.turns()) {
            Optional<Turn> known = turn.kept().or(turn::continued)
                    .flatMap(named -> stop.getTurns().stream().filter(t -> t.getId().equals(named.getId())).findFirst());
            known.ifPresentOrElse(there -> staying.put(there, turn), () -> coming.add(newTurn(turn)));
        }
        boolean kept = KeptStop.isKept(stop, from);
        List<Turn> leaving = stop.getTurns().stream().filter(turn -> !staying.containsKey(turn) && !turn.isPinned()
                && !(kept && KeptStop.isKept(turn, from) && KeptStop.usable(turn).isEmpty())).toList();
        if (!leaving.isEmpty()) {
            all.append(RemoveCommand.create(domain, stop, StraddlePackage.Literals.STOP__TURNS, leaving));
        }
        staying.forEach((turn, as) -> {
            set(turn, StraddlePackage.Literals.TURN__DOWNLINK_MHZ, as.downlinkMhz(), all);
            set(turn, StraddlePackage.Literals.TURN__BIRD, find(Bird.class, as.bird()).orElseThrow(), all);
            set(turn, StraddlePackage.Literals.TURN__START, as.window().start(), all);
            set(turn, StraddlePackage.Literals.TURN__END, as.window().end(), all);
        });
        if (!coming.isEmpty()) {
            all.append(AddCommand.create(domain, stop, StraddlePackage.Literals.STOP__TURNS, coming));
        }
    }

    private void set(EObject object, EStructuralFeature feature, Object value, CompoundCommand all) {
        if (!Objects.equals(object.eGet(feature), value)) {
            all.append(SetCommand.create(domain, object, feature, value));
        }
    }

    private Stop newStop(PlannedStop planned) {
        Stop stop = Fresh.stop(find(Team.class, planned.team()).orElseThrow(), find(Site.class, planned.site()).orElseThrow(),
                planned.stay().start(), planned.stay().end());
        stop.getTurns().addAll(newTurns(planned));
        return stop;
    }

    private List<Turn> newTurns(PlannedStop planned) {
        return planned.turns().stream().map(this::newTurn).toList();
    }

    private Turn newTurn(PlannedTurn planned) {
        Turn turn = Fresh.turn(find(Bird.class, planned.bird()).orElseThrow(), planned.window().start(), planned.window().end());
        turn.setDownlinkMhz(planned.downlinkMhz());
        return turn;
    }

    /** The live object with the id of one from the snapshot. */
    private <T extends Identified> Optional<T> find(Class<T> kind, T named) {
        return Optional.ofNullable(byId.get(named.getId())).filter(kind::isInstance).map(kind::cast);
    }
}
