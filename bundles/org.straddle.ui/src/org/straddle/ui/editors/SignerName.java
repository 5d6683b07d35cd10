package org.straddle.ui.editors;

import java.util.Optional;

import org.straddle.model.Site;
import org.straddle.model.Verdict;
import org.straddle.safety.SignOff;
import org.straddle.ui.fields.Notation;
import org.straddle.ui.fields.Words;

/** The name of a reviewer of a site: one that is nobody's of the event is refused. */
record SignerName(Site site) implements Notation<String> {

    @Override
    public String print(String name) {
        return Words.any().print(name);
    }

    /** What a verdict asks of its signer shows as a finding: the row may get its verdict after its name. */
    @Override
    public String parse(String text) {
        String name = Words.any().parse(text);
        Optional<String> problem = name == null ? Optional.empty() : SignOff.signerProblem(site, name, Verdict.DO_NOT_USE);
        problem.ifPresent(sentence -> {
            throw new IllegalArgumentException(sentence);
        });
        return name;
    }
}
