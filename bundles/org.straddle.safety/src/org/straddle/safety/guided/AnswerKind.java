package org.straddle.safety.guided;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

import org.straddle.words.Catalogue;

/** What an answer may be. An empty answer is none, and always may be. */
public sealed interface AnswerKind {

    Catalogue TEXTS = Catalogue.of(AnswerKind.class);

    /** What is wrong with it, in a sentence. */
    Optional<String> problem(String answer);

    /** Words in a line. */
    record Line() implements AnswerKind {

        private static final int LONGEST = 1000;

        @Override
        public Optional<String> problem(String answer) {
            return answer.length() > LONGEST ? Optional.of(TEXTS.text("answer.long", "most", LONGEST)) : Optional.empty();
        }
    }

    /** A number from least to most. */
    record Figure(String unit, double least, double most) implements AnswerKind {

        @Override
        public Optional<String> problem(String answer) {
            try {
                double value = answer.isBlank() ? least : Double.parseDouble(answer.strip());
                if (value >= least && value <= most) {
                    return Optional.empty();
                }
            } catch (NumberFormatException notANumber) {
                // Said below, as for a number out of range.
            }
            return Optional.of(TEXTS.text("answer.figure", "least", (long) least, "most", (long) most, "unit", unit));
        }
    }

    /** A day as year-month-day. */
    record Day() implements AnswerKind {

        @Override
        public Optional<String> problem(String answer) {
            try {
                if (!answer.isBlank()) {
                    LocalDate.parse(answer.strip());
                }
                return Optional.empty();
            } catch (DateTimeParseException notADay) {
                return Optional.of(TEXTS.text("answer.day"));
            }
        }
    }

    /** One of a few. */
    record Choice(List<Option> options) implements AnswerKind {

        public Choice {
            options = List.copyOf(options);
        }

        @Override
        public Optional<String> problem(String answer) {
            return answer.isBlank() || options.stream().anyMatch(option -> option.value().equals(answer)) ? Optional.empty()
                    : Optional.of(TEXTS.text("answer.choice"));
        }
    }

    /** @param value what is kept of it; the label is what people read */
    record Option(String value, String label) {
    }
}
