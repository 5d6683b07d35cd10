package org.straddle.publish;

import java.util.List;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.gate.DepartureGate;
import org.straddle.check.gate.FindingsOfTeam;
import org.straddle.check.gate.Gates;
import org.straddle.model.Event;
import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.safety.SafetyNotes;
import org.straddle.words.Catalogue;

/**
 * The sheet that one team takes along: who is in it, and for each day where to be when, what to work and what to mind.
 * It names people and whom to call, so it goes to the team and to nobody else. Every text is fit for one line.
 *
 * @param event the event's name
 * @param zone in which local times are printed
 * @param packingFile file of the packing list beside this one
 * @param gates whether the team may leave, one for each day of the plan
 * @param findings what the checks still hold against the team's plan, heaviest first
 * @param split who holds which square, for all teams
 * @param deference the sentence under all cautions
 */
public record Brief(String event, String club, TeamHead team, String vehicle, List<Person> people, String zone,
        String revision, String packingFile, List<Gate> gates, List<Concern> findings, List<BriefDay> days,
        List<String> split, String deference) {

    private static final Catalogue TEXTS = Catalogue.of(Brief.class);

    /** An operator, with whom to call when something happens. */
    public record Person(String name, String callSign, String skills, String emergencyContact) {
    }

    /** A finding in words. */
    public record Concern(String severity, String sentence) {
    }

    /**
     * The gate of a day in words.
     *
     * @param shut the brief says across its head that the team is not cleared
     * @param lines what is open or overridden, each with who can settle it
     */
    public record Gate(String sentence, boolean shut, List<String> lines) {

        public Gate {
            lines = List.copyOf(lines);
        }
    }

    public Brief {
        gates = List.copyOf(gates);
        people = List.copyOf(people);
        findings = List.copyOf(findings);
        days = List.copyOf(days);
        split = List.copyOf(split);
    }

    /** Whether the team has no stop on any day. */
    public boolean isEmpty() {
        return days.stream().allMatch(day -> day.stops().isEmpty());
    }

    /** Whether some gate is shut. */
    public boolean isHeld() {
        return gates.stream().anyMatch(Gate::shut);
    }

    static Brief of(Outlook outlook, Team team, List<Finding> findings, String revision, String packingFile,
            PlanHold hold) {
        Event event = outlook.event();
        Clock clock = new Clock(outlook.zone());
        return new Brief(Line.of(event.getName(), TEXTS.text("announcement.unnamedEvent")), Line.of(event.getClub()), TeamHead.of(team),
                team.getVehicle() == null ? "" : Line.of(team.getVehicle().getLabel()),
                team.getOperators().stream().map(Brief::person).toList(), clock.zoneName(), revision, packingFile,
                Gates.of(outlook, findings).of(team).stream().map(Brief::gate).toList(),
                FindingsOfTeam.of(team, Scheduled.stops(event, team), findings).stream()
                        .map(f -> new Concern(f.severity().label(), Line.of(f.sentence()))).toList(),
                days(outlook, team, clock, hold), hold.lines(clock), Line.of(SafetyNotes.DEFERENCE));
    }

    private static Gate gate(DepartureGate gate) {
        return new Gate(Line.of(gate.sentence()), gate.isShut(), Stream.concat(gate.open().stream(), gate.overridden().stream())
                .map(item -> Line.of(item.line())).toList());
    }

    private static Person person(Operator operator) {
        return new Person(Line.of(operator.getName(), TEXTS.text("brief.name")), Line.of(operator.getCallSign(), TEXTS.text("brief.callSign")),
                Line.of(String.join(", ", operator.getSkills())),
                Line.of(operator.getEmergencyContact(), TEXTS.text("brief.noneKnownAsk")));
    }

    private static List<BriefDay> days(Outlook outlook, Team team, Clock clock, PlanHold hold) {
        return DaysOut.of(team, Scheduled.stops(outlook.event(), team), clock).entrySet().stream()
                .map(day -> BriefDay.of(outlook, clock, day.getKey(), day.getValue(), hold)).toList();
    }
}
