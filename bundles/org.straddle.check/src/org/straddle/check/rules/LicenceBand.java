package org.straddle.check.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Bird;
import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;

/** No licence noted in the team covers the uplink band of a bird it is to work. */
final class LicenceBand extends NamedRule {

    LicenceBand() {
        super("licence-band", Severity.WARNING, "Somebody may transmit on the uplink");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Itinerary.of(outlook.event()).turns().stream()
                .collect(Collectors.groupingBy(work -> new Pair(work.team(), work.bird()), LinkedHashMap::new,
                        Collectors.toList()))
                .forEach((pair, turns) -> Band.ofUplink(pair.bird()).ifPresent(band -> {
                    List<Operator> crew = Crew.of(pair.team());
                    if (!crew.isEmpty() && crew.stream().noneMatch(band::isIn)) {
                        findings.accept(Finding.of(this, "Nobody in " + Words.name(pair.team())
                                + " has a licence noted for the " + band.label() + " band, on which the uplink of "
                                + Words.name(pair.bird()) + " lies.", pair.team(), pair.bird())
                                .at(turns.get(0).window().start()));
                    }
                }));
    }

    private record Pair(Team team, Bird bird) {
    }
}
