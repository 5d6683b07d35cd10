package org.straddle.ui.fields;

import java.math.BigDecimal;
import java.util.regex.Pattern;

import org.straddle.words.Catalogue;

/** A number between bounds, with a point or a comma before its decimals. */
public final class Numbers implements Notation<Double> {

    private static final Catalogue TEXTS = Catalogue.of(Numbers.class);

    private static final Pattern FORM =
            Pattern.compile("[+-]?(\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15})([eE][+-]?\\d{1,2})?");

    private final double least;
    private final double most;

    private Numbers(double least, double most) {
        this.least = least;
        this.most = most;
    }

    public static Numbers between(double least, double most) {
        return new Numbers(least, most);
    }

    /** The same, or nothing where nobody knows. */
    public static Notation<Double> optional(double least, double most) {
        Numbers numbers = between(least, most);
        return new Notation<>() {
            @Override
            public String print(Double value) {
                return numbers.print(value);
            }

            @Override
            public Double parse(String text) {
                return text.isBlank() ? null : numbers.parse(text);
            }
        };
    }

    /** The same where the model holds 0 for what nobody knows: the field is empty then. */
    public static Notation<Double> orUnknown(double least, double most) {
        Notation<Double> numbers = optional(least, most);
        return new Notation<>() {
            @Override
            public String print(Double value) {
                return value == null || value == 0 ? "" : numbers.print(value);
            }

            @Override
            public Double parse(String text) {
                Double value = numbers.parse(text);
                return value == null ? Double.valueOf(0) : value;
            }
        };
    }

    /** The same for whole numbers. */
    public static Notation<Integer> wholeOrUnknown(int least, int most) {
        Notation<Integer> numbers = whole(least, most);
        return new Notation<>() {
            @Override
            public String print(Integer value) {
                return value == null || value == 0 ? "" : numbers.print(value);
            }

            @Override
            public Integer parse(String text) {
                return text.isBlank() ? Integer.valueOf(0) : numbers.parse(text);
            }
        };
    }

    /** Whole numbers of the same kind. */
    public static Notation<Integer> whole(int least, int most) {
        Numbers numbers = between(least, most);
        return new Notation<>() {
            @Override
            public String print(Integer value) {
                return value == null ? "" : value.toString();
            }

            @Override
            public Integer parse(String text) {
                double value = numbers.parse(text);
                if (value != Math.rint(value)) {
                    throw new IllegalArgumentException(TEXTS.text("numbers.whole", "least", plain(numbers.least), "most", plain(numbers.most)));
                }
                return (int) value;
            }
        };
    }

    @Override
    public String print(Double value) {
        return value == null ? "" : plain(value);
    }

    @Override
    public Double parse(String text) {
        String plain = text.strip().replace(',', '.').replace('\u2212', '-');
        double value = FORM.matcher(plain).matches() ? Double.parseDouble(plain) : Double.NaN;
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(TEXTS.text("numbers.range", "least", plain(least), "most", plain(most)));
        }
        return value;
    }

    /** Without exponent and without trailing zeros; what is no number, which only a file can bring, as Java names it. */
    public static String plain(double value) {
        return !Double.isFinite(value) ? String.valueOf(value) : value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
