package org.straddle.check.gate;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.kit.PackingList;
import org.straddle.kit.team.DryRuns;
import org.straddle.kit.team.TeamEnergy;
import org.straddle.model.Forecast;
import org.straddle.model.GateWord;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.safety.ColdLevel;
import org.straddle.safety.ForecastWarnings;
import org.straddle.safety.HeatLevel;
import org.straddle.safety.ReviewState;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.WindLevel;
import org.straddle.safety.guided.HazardProposal;
import org.straddle.safety.guided.HazardProposals;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Asks every item of the gate of one team on one day. */
final class GateQuestions {

    private static final Catalogue TEXTS = Catalogue.of(GateQuestions.class);

    /** Items of the gate that ask about the same, so that it does not count twice. */
    private static final Set<String> ASKED_ELSEWHERE = Stream.concat(CheckRule.PAPERS.stream(), Stream.of(
            CheckRule.SITE_REFUSED.id(), PlanRule.LONE_OPERATOR.id(), CheckRule.TEAM_WITHOUT_OPERATORS.id(),
            CheckRule.ENERGY_SHORT.id())).collect(Collectors.toUnmodifiableSet());

    /** A look at the weather counts from this long before the team sets out (common practice, no source). */
    private static final Duration WEATHER_AGE = Duration.ofHours(24);

    private final Outlook outlook;
    private final Team team;
    private final LocalDate day;
    private final List<Stay> stays;
    private final List<Finding> findings;
    private final Optional<TeamDay> teamDay;

    GateQuestions(Outlook outlook, Team team, LocalDate day, List<Stay> stays, List<Finding> findings) {
        this.outlook = outlook;
        this.team = team;
        this.day = day;
        this.stays = stays;
        this.findings = FindingsOfTeam.of(team, stays.stream().map(Stay::stop).toList(), findings);
        this.teamDay = team.getDays().stream().filter(out -> out.getFrom() != null && localDate(out.getFrom()).equals(day)).findFirst();
    }

    private LocalDate localDate(Instant instant) {
        return instant.atZone(outlook.zone()).toLocalDate();
    }

    DepartureGate gate() {
        return new DepartureGate(team, day, Stream.of(GateKind.values()).map(this::item).toList());
    }

    private GateItem item(GateKind kind) {
        List<OpenPoint> open = switch (kind) {
            case REVIEW -> sites(notes -> notes.state().holds() ? List.of() : List.of(notes.state().sentence()));
            case VISIT -> sites(notes -> notes.visitTrouble().stream().toList());
            case PERMISSION -> sites(notes -> notes.permissionTrouble().stream().toList());
            case HAZARDS -> Stream.concat(sites(SafetyNotes::hazardTrouble).stream(), proposed().stream()).toList();
            case BLOCKERS -> blockers();
            case CREW -> CrewQuestions.of(team, outlook.policies(), traffic());
            case PACKED -> packed();
            case ENERGY -> energy();
            case TESTED -> tested();
            case DOCUMENTS, BRIEFED -> word(kind).isPresent() ? List.of() : team(TEXTS.text("word." + kind.word()));
            case WEATHER -> weather();
            case CHECK_IN -> checkIn();
        };
        return item(kind, open);
    }

    private GateItem item(GateKind kind, List<OpenPoint> open) {
        String who = TEXTS.text("by." + kind.word());
        if (open.isEmpty()) {
            return new GateItem(kind, GateItem.State.SETTLED, settled(kind), who, things(kind));
        }
        String sentence = open.stream().map(OpenPoint::sentence).collect(Collectors.joining(" "));
        List<Identified> things = open.stream().map(OpenPoint::thing).distinct().toList();
        return words(kind).filter(GateWord::isOverride).filter(taken -> !blank(taken.getReason())).findFirst()
                .map(taken -> new GateItem(kind, GateItem.State.OVERRIDDEN, TEXTS.text("overridden", "by", taken.getBy(), "reason",
                        taken.getReason().strip(), "open", sentence), who, things))
                .orElseGet(() -> new GateItem(kind, GateItem.State.OPEN, sentence, who, things));
    }

    /** Where somebody looks who wants to see what a settled item rests on. */
    private List<Identified> things(GateKind kind) {
        return switch (kind) {
            case REVIEW, VISIT, PERMISSION, HAZARDS -> List.copyOf(stays.stream().map(Stay::site).distinct().toList());
            case PACKED, ENERGY -> List.of(gear());
            default -> List.of(team);
        };
    }

    private Identified gear() {
        return team.getKits().stream().filter(kit -> !kit.eIsProxy()).map(Identified.class::cast).findFirst().orElse(team);
    }

    private List<OpenPoint> team(String sentence) {
        return List.of(new OpenPoint(sentence, team));
    }

    private List<OpenPoint> gear(String sentence) {
        return List.of(new OpenPoint(sentence, gear()));
    }

    private String settled(GateKind kind) {
        List<String> conditions = kind == GateKind.REVIEW ? conditions() : List.of();
        if (!conditions.isEmpty()) {
            return TEXTS.text("settled.on", "conditions", String.join(" ", conditions));
        }
        return word(kind).map(word -> kind == GateKind.WEATHER ? TEXTS.text("settled.weather", "by", word.getBy(), "before",
                Duration.ofMinutes(Math.max(0, Duration.between(word.getAt(), leaves()).toMinutes()))) : TEXTS.text("settled.by", "what", TEXTS.text(kind), "by", word.getBy()))
                .orElseGet(() -> TEXTS.text("settled", "what", TEXTS.text(kind)));
    }

    /** What people with a name said of it for the day. */
    private Stream<GateWord> words(GateKind kind) {
        return teamDay.stream().flatMap(out -> out.getGateWords().stream())
                .filter(word -> kind.word().equals(word.getItem()) && !blank(word.getBy()) && word.getAt() != null);
    }

    private Optional<GateWord> word(GateKind kind) {
        return kind.byWord() ? words(kind).filter(word -> !word.isOverride()).findFirst() : Optional.empty();
    }

    private List<String> conditions() {
        return sites(notes -> notes.state() instanceof ReviewState.Valid valid && !valid.conditions().isEmpty()
                ? List.of(valid.conditions()) : List.of()).stream().map(OpenPoint::sentence).toList();
    }

    private List<OpenPoint> sites(Function<SafetyNotes, List<String>> trouble) {
        List<OpenPoint> open = new ArrayList<>();
        for (Site site : stays.stream().map(Stay::site).distinct().toList()) {
            // A site that is used past midnight must hold on the later day too.
            List<LocalDate> days = stays.stream().filter(stay -> stay.site() == site)
                    .flatMap(stay -> Stream.of(stay.window().start(), stay.window().end())).map(this::localDate).distinct().toList();
            days.stream().map(used -> trouble.apply(SafetyNotes.of(site, used, outlook.event().getPolicies())))
                    .filter(found -> !found.isEmpty()).findFirst().ifPresent(found -> open.add(new OpenPoint(
                            TEXTS.text("open.site", "site", Naming.name(site), "trouble", String.join(" ", found)), site)));
        }
        return open;
    }

    /** Hazards that facts propose and nobody has accepted or declined. The weather is an item of its own; maps are read when questions are asked. */
    private List<OpenPoint> proposed() {
        List<OpenPoint> open = new ArrayList<>();
        for (Site site : stays.stream().map(Stay::site).distinct().toList()) {
            List<Stay> there = stays.stream().filter(stay -> stay.site() == site).toList();
            List<HazardProposal> waiting = HazardProposals.open(outlook, site, there, localDate(there.get(0).window().start()), OptionalDouble.empty())
                    .stream().filter(proposal -> !proposal.ofForecast()).toList();
            if (!waiting.isEmpty()) {
                open.add(new OpenPoint(TEXTS.text("open.proposed", "site", Naming.name(site), "count", waiting.size(), "what",
                        waiting.stream().map(HazardProposal::what).toList()), site));
            }
        }
        return open;
    }

    private List<OpenPoint> blockers() {
        List<Finding> standing = findings.stream().filter(finding -> finding.severity() == Severity.BLOCKER)
                .filter(finding -> !ASKED_ELSEWHERE.contains(finding.rule()))
                .filter(finding -> finding.when().map(this::localDate).filter(on -> !isOurs(on)).isEmpty()).toList();
        return standing.isEmpty() ? List.of() : List.of(new OpenPoint(TEXTS.text("open.blockers", "count", standing.size(),
                "first", standing.get(0).sentence()), standing.get(0).objects().stream().findFirst().orElse(team)));
    }

    private boolean isOurs(LocalDate on) {
        return on.equals(day) || stays.stream().anyMatch(stay -> localDate(stay.window().start()).equals(on));
    }

    private boolean traffic() {
        return stays.stream().anyMatch(stay -> SafetyNotes.of(stay.site(), localDate(stay.window().start())).hasTraffic());
    }

    private List<OpenPoint> packed() {
        PackingList list = PackingList.of(team);
        if (list.isEmpty()) {
            return team(TEXTS.text("open.packed.empty"));
        }
        int missing = list.rows().size() - list.ticked();
        return missing == 0 ? List.of() : gear(TEXTS.text("open.packed", "missing", missing, "all", list.rows().size()));
    }

    private List<OpenPoint> energy() {
        if (TeamEnergy.of(team, Itinerary.of(outlook.event()), outlook.policies(), outlook.zone()).isEmpty()) {
            return gear(TEXTS.text("open.energy.unknown"));
        }
        return findings.stream().filter(finding -> finding.rule().equals(CheckRule.ENERGY_SHORT.id()) && finding.severity() != Severity.ADVICE)
                .filter(finding -> finding.when().map(this::localDate).filter(on -> !isOurs(on)).isEmpty())
                .limit(1).flatMap(finding -> gear(finding.sentence()).stream()).toList();
    }

    /** A dry run that failed counts against the word of whoever says that the kit was tested. */
    private List<OpenPoint> tested() {
        List<String> failed = DryRuns.of(team).open();
        return word(GateKind.TESTED).isPresent() || !failed.isEmpty()
                ? failed.stream().flatMap(sentence -> gear(sentence).stream()).toList()
                : team(TEXTS.text("word." + GateKind.TESTED.word()));
    }

    private List<OpenPoint> weather() {
        Instant leaves = leaves();
        boolean looked = words(GateKind.WEATHER).filter(word -> !word.isOverride())
                .anyMatch(word -> !word.getAt().isBefore(leaves.minus(WEATHER_AGE)));
        if (!looked) {
            return team(TEXTS.text("open.weather", "hours", WEATHER_AGE.toHours()));
        }
        List<OpenPoint> open = new ArrayList<>();
        stale(leaves).ifPresent(issued -> open.add(new OpenPoint(TEXTS.text("open.weather.old", "issued", TimeText.of(outlook.zone()).at(issued),
                "hours", Duration.between(issued, leaves).toHours()), stays.get(0).site())));
        for (Stay stay : stays) {
            ForecastWarnings warnings = ForecastWarnings.of(outlook.event(), stay.site(), localDate(stay.window().start()), Optional.of(stay.window()));
            if (warnings.thunder()) {
                open.add(new OpenPoint(TEXTS.text("open.weather.thunder", "site", Naming.name(stay.site())), stay.site()));
            }
            if (warnings.heat().compareTo(HeatLevel.DANGER) >= 0) {
                open.add(new OpenPoint(TEXTS.text("open.weather.heat", "site", Naming.name(stay.site())), stay.site()));
            }
            if (warnings.cold() == ColdLevel.FROSTBITE) {
                open.add(new OpenPoint(TEXTS.text("open.weather.cold", "site", Naming.name(stay.site())), stay.site()));
            }
            if (warnings.wind() == WindLevel.NO_SET_UP) {
                open.add(new OpenPoint(TEXTS.text("open.weather.wind", "site", Naming.name(stay.site())), stay.site()));
            }
        }
        return open;
    }

    private Instant leaves() {
        return teamDay.map(TeamDay::getFrom).orElse(stays.get(0).window().start());
    }

    /** When the newest forecast for the day was made, if that is too long before the team leaves. */
    private Optional<Instant> stale(Instant leaves) {
        return outlook.event().getForecasts().stream().filter(forecast -> day.equals(forecast.getDay()) && forecast.getIssued() != null)
                .filter(forecast -> forecast.getSite() == null || stays.stream().anyMatch(stay -> stay.site() == forecast.getSite()))
                .map(Forecast::getIssued).max(Comparator.naturalOrder()).filter(issued -> issued.isBefore(leaves.minus(WEATHER_AGE)));
    }

    private List<OpenPoint> checkIn() {
        if (teamDay.map(TeamDay::getCheckIn).filter(text -> !blank(text)).isEmpty()) {
            return team(TEXTS.text("open.check-in.nobody"));
        }
        return word(GateKind.CHECK_IN).isPresent() ? List.of() : team(TEXTS.text("open.check-in"));
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
