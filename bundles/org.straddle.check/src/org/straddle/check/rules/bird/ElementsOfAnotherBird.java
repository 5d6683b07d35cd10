package org.straddle.check.rules.bird;

import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;

/** The catalogue number of an element set differs from the bird's. */
public final class ElementsOfAnotherBird extends ScopedRule<Bird> {

    public ElementsOfAnotherBird() {
        super(Scope.BIRD, CheckRule.ELEMENTS_OF_ANOTHER_BIRD.id(), Severity.WARNING);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        SortedSet<Integer> others = new TreeSet<>();
        for (BirdElements elements : bird.getElementSets()) {
            if (bird.getCatalogueNumber() > 0 && elements.getCatalogueNumber() != bird.getCatalogueNumber()) {
                others.add(elements.getCatalogueNumber());
            }
        }
        if (!others.isEmpty()) {
            findings.accept(Finding.of(this, Statement.of("elementsOfAnotherBird.hasCatalogueNumber", "bird", bird,
                    "catalogueNumber", bird.getCatalogueNumber(), "others", others), bird));
        }
    }
}
