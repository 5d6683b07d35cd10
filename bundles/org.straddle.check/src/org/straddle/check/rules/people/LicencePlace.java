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
import org.straddle.model.Allowance;
import org.straddle.model.Identified;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Operator;
import org.straddle.model.Written;
import org.straddle.outlook.itinerary.Crew;
import org.straddle.outlook.itinerary.Licences;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.outlook.things.Band;

/** A licence class may not cover a band in the country where the site lies. */
public final class LicencePlace extends ScopedRule<Stay> {

    public LicencePlace() {
        super(Scope.STAY, PlanRule.LICENCE_PLACE.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        for (Jurisdiction place : in.outlook().jurisdictions(stay.site())) {
            stay.turns().stream().filter(work -> Band.ofUplink(work.bird()).isPresent())
                    .collect(Collectors.groupingBy(work -> Band.ofUplink(work.bird()).orElseThrow(), TreeMap::new,
                            Collectors.toList()))
                    .forEach((band, turns) -> {
                        Licences licences = Licences.of(stay.team(), place, band);
                        if (licences != Licences.COVER) {
                            Finding finding = finding(stay, place, band, turns);
                            findings.accept(licences == Licences.LACK ? finding : finding.weighing(Severity.WARNING));
                        }
                    });
        }
    }

    private Finding finding(Stay stay, Jurisdiction place, Band band, List<Work> turns) {
        List<String> classes = Crew.of(stay.team()).stream().map(Operator::getLicenceClass).filter(c -> !Written.isBlank(c)).map(String::strip)
                .distinct().sorted().toList();
        List<String> allowing = place.getAllowances().stream().filter(allowance -> band.isAmong(allowance.getBands()))
                .map(Allowance::getLicenceClass).filter(c -> !Written.isBlank(c)).map(String::strip).distinct().sorted()
                .toList();
        Identified[] objects = Stream.concat(Stream.of(stay.stop(), place), turns.stream().map(Work::turn))
                .toArray(Identified[]::new);
        return Finding.of(this, Statement.of("licencePlace.nobodyMayUse", "team", stay.team(),
                "band", band.label(), "site", stay.site(), "place", place, "allowing", allowing.isEmpty()
                ? Statement.of("licencePlace.licenceClassNoted") : Statement.of("licencePlace.licenceClass",
                "allowing", allowing), "classes", classes.isEmpty()
                ? Statement.of("licencePlace.noneNoted") : classes), objects)
                .restingOn(turns.stream().map(Work::window).toList())
                .at(turns.get(0).window().start());
    }
}
