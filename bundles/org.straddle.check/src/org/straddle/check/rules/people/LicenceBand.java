package org.straddle.check.rules.people;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Crew;
import org.straddle.outlook.itinerary.Licences;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Work;
import org.straddle.outlook.things.Band;

/** No licence noted in the team covers the uplink band of a bird it is to work. */
public final class LicenceBand extends ScopedRule<Team> {

    public LicenceBand() {
        super(Scope.TEAM, PlanRule.LICENCE_BAND.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        in.itinerary().turns().stream().filter(work -> work.team() == team)
                .collect(Collectors.groupingBy(Work::bird, LinkedHashMap::new, Collectors.toList()))
                .forEach((bird, turns) -> Band.ofUplink(bird).ifPresent(band -> {
                    Licences licences = Licences.of(team, band);
                    if (licences != Licences.COVER) {
                        Finding finding = Finding.of(this, Statement.of("licenceBand.nobodyHasLicence", "team", team,
                                "band", band.label(), "bird", bird), team, bird)
                                .restingOn(Crew.of(team).stream().map(operator -> List.of(String.valueOf(operator.getId()),
                                        List.copyOf(operator.getBands()))).toList())
                                .at(turns.get(0).window().start());
                        findings.accept(licences == Licences.LACK ? finding : finding.weighing(Severity.WARNING));
                    }
                }));
    }
}
