package org.straddle.exchange.sites;

import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

import org.straddle.grid.Squares;
import org.straddle.words.Catalogue;

/**
 * Which column of a table says what of a site. Immutable; {@link #guess} proposes one from the names of the columns
 * and from what they hold, and the user changes it.
 *
 * @param fields by the name of the column; columns that are not in it are passed over
 */
public record SiteMapping(Map<String, SiteField> fields) {

    private static final Catalogue TEXTS = Catalogue.of(SiteMapping.class);

    private static final int SAMPLES = 50;
    private static final String NUMBER = "[+-]?\\d{1,3}[.,]\\d+";

    public SiteMapping {
        // Keeps its order, which Map.copyOf does not.
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /** The usual meaning of the columns. */
    public static SiteMapping guess(SourceTable table) {
        Guess guess = new Guess(table);
        guess.byName(SiteField.NAME, sample -> true);
        guess.known(SourceTable.LATITUDE, SiteField.LATITUDE);
        guess.known(SourceTable.LONGITUDE, SiteField.LONGITUDE);
        guess.known(SourceTable.ALTITUDE, SiteField.ALTITUDE);
        guess.byName(SiteField.ID, sample -> sample.matches("[0-9a-fA-F-]{36}"));
        guess.byName(SiteField.LATITUDE, sample -> true);
        guess.byName(SiteField.LONGITUDE, sample -> true);
        guess.dropHalfAPosition();
        guess.byName(SiteField.SQUARES, SiteMapping::areSquares);
        if (!guess.has(SiteField.LATITUDE)) {
            guess.byName(SiteField.POSITION, SiteValues::isPosition);
            guess.byContent(SiteField.POSITION, SiteValues::isPosition);
        }
        if (!guess.has(SiteField.LATITUDE) && !guess.has(SiteField.POSITION)) {
            guess.twoNumbers();
        }
        guess.byName(SiteField.ALTITUDE, sample -> true);
        guess.byName(SiteField.ERROR, sample -> true);
        guess.byName(SiteField.KIND, SiteMapping::isKind);
        guess.byContent(SiteField.KIND, SiteMapping::isKind);
        guess.byContent(SiteField.SQUARES, SiteMapping::areSquares);
        guess.byContent(SiteField.NAME, sample -> !sample.matches("[-+\\d.,:eE]*"));
        return new SiteMapping(guess.fields);
    }

    private static boolean areSquares(String sample) {
        try {
            return !Squares.parse(sample).isEmpty();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private static boolean isKind(String sample) {
        return SiteValues.kind(sample).isPresent();
    }

    /** Takes the first column that fits for each field, and no column twice. */
    private static final class Guess {

        private final SourceTable table;
        private final Map<String, SiteField> fields = new LinkedHashMap<>();

        Guess(SourceTable table) {
            this.table = table;
        }

        boolean has(SiteField field) {
            return fields.containsValue(field);
        }

        void known(String column, SiteField field) {
            if (table.columns().contains(column)) {
                fields.put(column, field);
            }
        }

        void byName(SiteField field, Predicate<String> content) {
            first(field, column -> field.isUsuallyCalled(column) && fits(column, content));
        }

        void byContent(SiteField field, Predicate<String> content) {
            first(field, column -> !table.samples(column, 1).isEmpty() && fits(column, content));
        }

        private void first(SiteField field, Predicate<String> column) {
            if (!has(field)) {
                table.columns().stream().filter(name -> !fields.containsKey(name)).filter(column).findFirst()
                        .ifPresent(name -> fields.put(name, field));
            }
        }

        /** Four of five samples: one slip of the pen does not hide what a column is. */
        private boolean fits(String column, Predicate<String> content) {
            List<String> samples = table.samples(column, SAMPLES);
            return samples.stream().filter(content).count() * 5 >= samples.size() * 4L;
        }

        void dropHalfAPosition() {
            if (has(SiteField.LATITUDE) != has(SiteField.LONGITUDE)) {
                fields.values().removeIf(field -> field == SiteField.LATITUDE || field == SiteField.LONGITUDE);
            }
        }

        /** Two columns of decimal numbers without a telling name: latitude is wont to come first. */
        void twoNumbers() {
            List<String> numbers = table.columns().stream().filter(column -> !fields.containsKey(column))
                    .filter(column -> !table.samples(column, 1).isEmpty() && fits(column, sample -> sample.matches(NUMBER)))
                    .filter(column -> !SiteField.ALTITUDE.isUsuallyCalled(column) && !SiteField.ERROR.isUsuallyCalled(column)).toList();
            if (numbers.size() == 2) {
                fields.put(numbers.get(0), SiteField.LATITUDE);
                fields.put(numbers.get(1), SiteField.LONGITUDE);
            }
        }
    }

    /** What a column says; empty when it is passed over. */
    public Optional<SiteField> field(String column) {
        return Optional.ofNullable(fields.get(column));
    }

    /** The column that says something of a site, if there is one. */
    public Optional<String> column(SiteField field) {
        return fields.entrySet().stream().filter(entry -> entry.getValue() == field).map(Map.Entry::getKey).findFirst();
    }

    /**
     * The same with another meaning of one column; a column that had that meaning before loses it.
     *
     * @param field null to pass the column over
     */
    public SiteMapping with(String column, SiteField field) {
        Map<String, SiteField> changed = new LinkedHashMap<>(fields);
        if (field != null) {
            changed.values().removeIf(field::equals);
        }
        if (field == null) {
            changed.remove(column);
        } else {
            changed.put(column, field);
        }
        return new SiteMapping(changed);
    }

    /** What is wrong with this mapping, a sentence for the user; empty when sites can be read by it. */
    public Optional<String> problem(SiteKey key) {
        Set<SiteField> mapped = EnumSet.noneOf(SiteField.class);
        mapped.addAll(fields.values());
        boolean halves = mapped.contains(SiteField.LATITUDE) || mapped.contains(SiteField.LONGITUDE);
        boolean both = mapped.contains(SiteField.LATITUDE) && mapped.contains(SiteField.LONGITUDE);
        if (halves && mapped.contains(SiteField.POSITION)) {
            return Optional.of(TEXTS.text("siteMapping.bothColumnWhole"));
        }
        if (halves && !both) {
            return Optional.of(TEXTS.text("siteMapping.thereColumnCase", "case", mapped.contains(SiteField.LATITUDE)));
        }
        boolean placed = both || mapped.contains(SiteField.POSITION);
        return switch (key.kind()) {
            case NAME -> mapped.contains(SiteField.NAME) ? Optional.empty()
                    : Optional.of(TEXTS.text("siteMapping.columnHoldsName"));
            case ID -> mapped.contains(SiteField.ID) ? Optional.empty()
                    : Optional.of(TEXTS.text("siteMapping.columnHoldsId"));
            case POSITION -> placed ? Optional.empty()
                    : Optional.of(TEXTS.text("siteMapping.columnHoldsPosition"));
        };
    }

    /** By what sites are best known with these columns: the id, else the name, else a position within 25 m. */
    public SiteKey usualKey() {
        return column(SiteField.ID).isPresent() ? SiteKey.ID : column(SiteField.NAME).isPresent() ? SiteKey.NAME : SiteKey.within(25);
    }
}
