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
import org.straddle.check.rules.Words;
import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Work;
import org.straddle.outlook.things.Band;

/** No licence noted in the team covers the uplink band of a bird it is to work. */
public final class LicenceBand extends ScopedRule<Team> {

    public LicenceBand() {
        super(Scope.TEAM, "licence-band", Severity.BLOCKER);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        List<Operator> crew = Crew.of(team);
        in.itinerary().turns().stream().filter(work -> work.team() == team)
                .collect(Collectors.groupingBy(Work::bird, LinkedHashMap::new, Collectors.toList()))
                .forEach((bird, turns) -> Band.ofUplink(bird).ifPresent(band -> {
                    if (!crew.isEmpty() && crew.stream().noneMatch(band::isIn)) {
                        Finding finding = Finding.of(this, Statement.of("licenceBand.nobodyHasLicence", "team", team,
                                "band", band.label(), "bird", bird), team, bird)
                                .restingOn(crew.stream().map(operator -> List.of(String.valueOf(operator.getId()),
                                        List.copyOf(operator.getBands()))).toList())
                                .at(turns.get(0).window().start());
                        boolean known = crew.stream().noneMatch(operator -> operator.getBands().isEmpty());
                        findings.accept(known ? finding : finding.weighing(Severity.WARNING));
                    }
                }));
    }
}
