package org.straddle.safety;

import java.util.Locale;
import java.util.Optional;

import org.straddle.model.Policies;
import org.straddle.model.RiskLevel;
import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;
import org.straddle.model.Written;
import org.straddle.words.Catalogue;

/**
 * How much a hazard weighs, by how bad it may get and how likely it is: the matrix of MIL-STD-882E (table III), or the
 * club's own. The letters of the rows and columns are published; the level in each cell is from memory, because no page that
 * prints table III could be read, so a club that needs it enters its own copy. A club's matrix is taken only if nothing in it weighs less when it gets worse or likelier.
 */
public final class RiskMatrix {

    private static final Catalogue TEXTS = Catalogue.of(RiskMatrix.class);

    private static final int ROWS = 5;
    private static final int COLUMNS = 4;

    /** Rows from frequent to improbable, columns from catastrophic to negligible. */
    private static final RiskMatrix STANDARD = parse(String.join(" ", "HHSM", "HHSM", "HSML", "SMML", "MMML"));

    private final RiskLevel[][] levels;

    private RiskMatrix(RiskLevel[][] levels) {
        this.levels = levels;
    }

    public static RiskMatrix standard() {
        return STANDARD;
    }

    /**
     * The one that the event asks for.
     *
     * @throws IllegalArgumentException with a sentence when the club's own cannot be taken
     */
    public static RiskMatrix of(Policies policies) {
        String own = Written.or(policies.getRiskMatrix(), "");
        return own.isEmpty() ? STANDARD : parse(own);
    }

    /**
     * Reads five words of four letters.
     *
     * @throws IllegalArgumentException with a sentence that says what is wrong
     */
    public static RiskMatrix parse(String text) {
        String[] rows = text.strip().toUpperCase(Locale.ROOT).split("[\\s,;/]+");
        if (rows.length != ROWS) {
            throw new IllegalArgumentException(TEXTS.text("riskMatrix.rows", "rows", rows.length));
        }
        RiskLevel[][] levels = new RiskLevel[ROWS][COLUMNS];
        for (int row = 0; row < ROWS; row++) {
            if (!rows[row].matches("[HSML]{4}")) {
                throw new IllegalArgumentException(TEXTS.text("riskMatrix.letters", "row", rows[row]));
            }
            for (int column = 0; column < COLUMNS; column++) {
                levels[row][column] = level(rows[row].charAt(column));
                if (row > 0 && levels[row - 1][column].compareTo(levels[row][column]) < 0
                        || column > 0 && levels[row][column - 1].compareTo(levels[row][column]) < 0) {
                    throw new IllegalArgumentException(TEXTS.text("riskMatrix.order", "number", row + 1, "row", rows[row]));
                }
            }
        }
        return new RiskMatrix(levels);
    }

    private static RiskLevel level(char letter) {
        return switch (letter) {
            case 'H' -> RiskLevel.HIGH;
            case 'S' -> RiskLevel.SERIOUS;
            case 'M' -> RiskLevel.MEDIUM;
            default -> RiskLevel.LOW;
        };
    }

    /** How much it weighs; empty where nobody rated it, and for a hazard that is not there any more. */
    public Optional<RiskLevel> level(RiskSeverity severity, RiskProbability probability) {
        if (severity == RiskSeverity.NOT_RATED || probability == RiskProbability.NOT_RATED
                || probability == RiskProbability.ELIMINATED) {
            return Optional.empty();
        }
        return Optional.of(levels[probability.getValue() - 1][severity.getValue() - 1]);
    }
}
