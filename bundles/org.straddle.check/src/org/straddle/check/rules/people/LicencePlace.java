package org.straddle.check.rules.people;

import java.util.List;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.model.Allowance;
import org.straddle.model.Identified;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Operator;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.outlook.things.Band;

/** A licence class may not cover a band in the country where the site lies. */
public final class LicencePlace extends ScopedRule<Stay> {

    public LicencePlace() {
        super(Scope.STAY, "licence-place", Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        List<Operator> crew = Crew.of(stay.team());
        if (crew.isEmpty()) {
            return;
        }
        for (Jurisdiction place : in.outlook().jurisdictions(stay.site())) {
            if (!place.getAllowances().isEmpty()) {
                stay.turns().stream().filter(work -> Band.ofUplink(work.bird()).isPresent())
                        .collect(Collectors.groupingBy(work -> Band.ofUplink(work.bird()).orElseThrow(), TreeMap::new,
                                Collectors.toList()))
                        .forEach((band, turns) -> {
                            if (crew.stream().noneMatch(operator -> covers(place, operator, band))) {
                                findings.accept(finding(stay, place, crew, band, turns));
                            }
                        });
            }
        }
    }

    private Finding finding(Stay stay, Jurisdiction place, List<Operator> crew, Band band, List<Work> turns) {
        List<String> classes = crew.stream().map(Operator::getLicenceClass).filter(c -> !Words.blank(c)).map(String::strip)
                .distinct().sorted().toList();
        List<String> allowing = place.getAllowances().stream().filter(allowance -> band.isAmong(allowance.getBands()))
                .map(Allowance::getLicenceClass).filter(c -> !Words.blank(c)).map(String::strip).distinct().sorted()
                .toList();
        Identified[] objects = Stream.concat(Stream.of(stay.stop(), place), turns.stream().map(Work::turn))
                .toArray(Identified[]::new);
        Finding finding = Finding.of(this, Statement.of("licencePlace.nobodyMayUse", "team", stay.team(),
                "band", band.label(), "site", stay.site(), "place", place, "allowing", allowing.isEmpty()
                ? Statement.of("licencePlace.licenceClassNoted") : Statement.of("licencePlace.licenceClass",
                "allowing", allowing), "classes", classes.isEmpty()
                ? Statement.of("licencePlace.noneNoted") : classes), objects)
                .restingOn(turns.stream().map(Work::window).toList())
                .at(turns.get(0).window().start());
        // Where a class is not noted the licence may well be there.
        boolean known = crew.stream().noneMatch(operator -> Words.blank(operator.getLicenceClass()));
        return known ? finding : finding.weighing(Severity.WARNING);
    }

    private static boolean covers(Jurisdiction place, Operator operator, Band band) {
        return !Words.blank(operator.getLicenceClass()) && place.getAllowances().stream()
                .anyMatch(allowance -> !Words.blank(allowance.getLicenceClass())
                        && allowance.getLicenceClass().strip().equalsIgnoreCase(operator.getLicenceClass().strip())
                        && band.isAmong(allowance.getBands()));
    }
}
