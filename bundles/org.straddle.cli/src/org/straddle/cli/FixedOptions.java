package org.straddle.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.IdentityCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.grid.Square;
import org.straddle.model.Ban;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.plan.Banning;
import org.straddle.plan.Pinning;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Option;

/** What the coordinator decides before a plan is searched: pins and bans, which stay in the event. */
final class FixedOptions {

    private static final Catalogue TEXTS = Catalogue.of(FixedOptions.class);

    @Option(names = "--pin", paramLabel = "TEAM|SITE|STOP-ID", split = ",")
    private List<String> pinned = new ArrayList<>();

    @Option(names = "--unpin", paramLabel = "TEAM|SITE|STOP-ID", split = ",")
    private List<String> unpinned = new ArrayList<>();

    @Option(names = "--ban", paramLabel = "FIELD=VALUE,…")
    private List<String> banned = new ArrayList<>();

    @Option(names = "--lift-bans")
    private boolean lift;

    /** @throws WrongInput when something named is not there */
    Command in(EditingDomain domain, Event event) {
        CompoundCommand all = new CompoundCommand();
        if (lift && event.getPlan() != null) {
            all.append(Banning.remove(domain, event, List.copyOf(event.getPlan().getBans())));
        }
        for (String name : unpinned) {
            all.append(Pinning.unpinWhole(domain, stops("--unpin", name, event)));
        }
        for (String name : pinned) {
            all.append(Pinning.pinWhole(domain, stops("--pin", name, event)));
        }
        if (!banned.isEmpty()) {
            all.append(Banning.add(domain, event, banned.stream().map(given -> ban(given, event)).toList()));
        }
        return all.isEmpty() ? IdentityCommand.INSTANCE : all;
    }

    private static List<Stop> stops(String option, String name, Event event) {
        List<Stop> all = event.getPlan() == null ? List.of() : event.getPlan().getStops();
        Optional<Stop> one = all.stream().filter(stop -> name.equals(stop.getId())).findFirst();
        if (one.isPresent()) {
            return List.of(one.get());
        }
        Identified wanted = OpenEvent.numbered(name, event).<Identified>map(team -> team)
                .orElseGet(() -> OpenEvent.named(name, teamsAndSites(event),
                        thing -> thing instanceof Team team ? team.getName() : ((Site) thing).getName(), TEXTS.text("fixedOptions.teamSiteStop")));
        List<Stop> stops = all.stream().filter(stop -> stop.getTeam() == wanted || stop.getSite() == wanted).toList();
        if (stops.isEmpty()) {
            throw new WrongInput(TEXTS.text("fixedOptions.stopPlannedPlan", "option", option, "name", name));
        }
        return stops;
    }

    private static List<Identified> teamsAndSites(Event event) {
        return Stream.<Identified>concat(event.getTeams().stream(), event.getSites().stream()).toList();
    }

    private static Ban ban(String given, Event event) {
        Ban ban = Fresh.ban();
        Map<String, String> fields = new LinkedHashMap<>();
        for (String field : given.split(",(?=\\s*[a-z]+=)")) {
            int equals = field.indexOf('=');
            if (equals < 0 || field.substring(equals + 1).isBlank()) {
                throw new WrongInput(TEXTS.text("fixedOptions.banFieldGive", "given", given, "field", field));
            }
            fields.put(field.substring(0, equals).strip(), field.substring(equals + 1).strip());
        }
        fields.forEach((field, value) -> set(ban, field, value, event));
        if (ban.getFrom() != null && ban.getUntil() != null && !ban.getFrom().isBefore(ban.getUntil())) {
            throw new WrongInput(TEXTS.text("fixedOptions.banEndsBefore", "given", given));
        }
        if (fields.keySet().equals(Set.of("reason"))) {
            throw new WrongInput(TEXTS.text("fixedOptions.banSaysWhy", "given", given));
        }
        return ban;
    }

    private static void set(Ban ban, String field, String value, Event event) {
        switch (field) {
            case "team" -> ban.setTeam(OpenEvent.team(value, event));
            case "site" -> ban.setSite(OpenEvent.site(value, event));
            case "bird" -> ban.setBird(OpenEvent.bird(value, event));
            case "square" -> ban.setSquare(square(value));
            case "from" -> ban.setFrom(Moments.instant(TEXTS.text("fixedOptions.banFrom"), value));
            case "until" -> ban.setUntil(Moments.instant(TEXTS.text("fixedOptions.banUntil"), value));
            case "reason" -> ban.setReason(value);
            default -> throw new WrongInput(TEXTS.text("fixedOptions.banFieldBan", "field", field));
        }
    }

    private static String square(String value) {
        try {
            return Square.parse(value).name();
        } catch (IllegalArgumentException e) {
            throw new WrongInput(TEXTS.text("fixedOptions.banSquareGive", "value", value));
        }
    }
}
