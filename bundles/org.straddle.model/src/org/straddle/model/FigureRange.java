package org.straddle.model;

import java.util.Optional;

import org.eclipse.emf.ecore.EAnnotation;
import org.eclipse.emf.ecore.EAttribute;

/**
 * What a figure of the policies may be, as the model declares it beside the figure. A figure says what it says: 0 is zero,
 * and where zero makes no sense the range begins above it.
 */
public record FigureRange(double least, double most) {

    private static final String DECLARED = "urn:straddle:figure";

    /** Empty for an attribute that declares none. */
    public static Optional<FigureRange> of(EAttribute attribute) {
        EAnnotation declared = attribute.getEAnnotation(DECLARED);
        return declared == null ? Optional.empty() : Optional.of(new FigureRange(
                Double.parseDouble(declared.getDetails().get("least")), Double.parseDouble(declared.getDetails().get("most"))));
    }

    /** Also false for what is no number. */
    public boolean holds(double value) {
        return value >= least && value <= most;
    }
}
