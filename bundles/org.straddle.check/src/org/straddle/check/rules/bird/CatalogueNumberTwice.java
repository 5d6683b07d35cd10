package org.straddle.check.rules.bird;

import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Identified;

/** Of two birds with one catalogue number, only the first gets the element sets that come with it. */
public final class CatalogueNumberTwice extends ScopedRule<Event> {

    public CatalogueNumberTwice() {
        super(Scope.BIRDS, CheckRule.CATALOGUE_NUMBER_TWICE.id(), Severity.WARNING);
    }

    @Override
    public void check(Event event, Inspection in, Consumer<Finding> findings) {
        event.getBirds().stream().filter(bird -> bird.getCatalogueNumber() > 0)
                .collect(Collectors.groupingBy(Bird::getCatalogueNumber, TreeMap::new, Collectors.toList()))
                .forEach((number, birds) -> {
                    if (birds.size() > 1) {
                        findings.accept(Finding.of(this,
                                Statement.of("catalogueNumberTwice.haveSameCatalogue", "birds", birds, "number", number),
                                birds.toArray(Identified[]::new)));
                    }
                });
    }
}
