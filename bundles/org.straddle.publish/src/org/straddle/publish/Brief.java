package org.straddle.publish;

import java.util.List;

import org.straddle.check.Finding;
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
 * @param findings what the checks still hold against the team's plan, heaviest first
 * @param deference the sentence under all cautions
 */
public record Brief(String event, String club, TeamHead team, String vehicle, List<Person> people, String zone,
        String revision, String packingFile, List<Concern> findings, List<BriefDay> days, String deference) {

    private static final Catalogue TEXTS = Catalogue.of(Brief.class);

    /** An operator, with whom to call when something happens. */
    public record Person(String name, String callSign, String skills, String emergencyContact) {
    }

    /** A finding in words. */
    public record Concern(String severity, String sentence) {
    }

    public Brief {
        people = List.copyOf(people);
        findings = List.copyOf(findings);
        days = List.copyOf(days);
    }

    /** Whether the team has no stop on any day. */
    public boolean isEmpty() {
        return days.stream().allMatch(day -> day.stops().isEmpty());
    }

    static Brief of(Outlook outlook, Team team, List<Finding> findings, String revision, String packingFile) {
        Event event = outlook.event();
        Clock clock = new Clock(outlook.zone());
        return new Brief(Line.of(event.getName(), TEXTS.text("announcement.unnamedEvent")), Line.of(event.getClub()), TeamHead.of(team),
                team.getVehicle() == null ? "" : Line.of(team.getVehicle().getLabel()),
                team.getOperators().stream().map(Brief::person).toList(), clock.zoneName(), revision, packingFile,
                TeamFindings.of(outlook, team, findings).stream()
                        .map(f -> new Concern(f.severity().label(), Line.of(f.sentence()))).toList(),
                days(outlook, team, clock), Line.of(SafetyNotes.DEFERENCE));
    }

    private static Person person(Operator operator) {
        return new Person(Line.of(operator.getName(), TEXTS.text("brief.name")), Line.of(operator.getCallSign(), TEXTS.text("brief.callSign")),
                Line.of(String.join(", ", operator.getSkills())),
                Line.of(operator.getEmergencyContact(), TEXTS.text("brief.noneKnownAsk")));
    }

    private static List<BriefDay> days(Outlook outlook, Team team, Clock clock) {
        return DaysOut.of(team, Scheduled.stops(outlook.event(), team), clock).entrySet().stream()
                .map(day -> BriefDay.of(outlook, clock, day.getKey(), day.getValue())).toList();
    }
}
