package org.straddle.ui.fields;

import org.straddle.safety.RiskMatrix;

/** The club's own risk matrix in five words of four letters, or nothing for the usual one. */
public final class RiskMatrices implements Notation<String> {

    @Override
    public String print(String value) {
        return value == null ? "" : value;
    }

    @Override
    public String parse(String text) {
        if (text.isBlank()) {
            return null;
        }
        RiskMatrix.parse(text);
        return text.strip();
    }
}
