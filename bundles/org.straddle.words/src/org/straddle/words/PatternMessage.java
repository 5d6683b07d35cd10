package org.straddle.words;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;

/**
 * A text with arguments. ICU parses it and chooses the plural; the figures are printed by the Java library, because ICU's
 * own printer of numbers takes a third of a second to load. A test compares the two.
 */
final class PatternMessage extends Message {

    private final MessagePattern pattern;
    private final Language language;

    PatternMessage(String text, Language language) {
        this.pattern = new MessagePattern(text);
        this.language = language;
        collectArguments(new HashSet<>());
    }

    /** @throws IllegalArgumentException for arguments that are numbered or of a kind that is not used here */
    void collectArguments(Set<String> names) {
        for (int i = 0; i < pattern.countParts(); i++) {
            Part part = pattern.getPart(i);
            if (part.getType() == Part.Type.ARG_NUMBER) {
                throw new IllegalArgumentException("arguments have names: " + pattern.getPatternString());
            } else if (part.getType() == Part.Type.ARG_NAME) {
                names.add(pattern.getSubstring(part));
            } else if (part.getType() == Part.Type.ARG_TYPE && !pattern.getSubstring(part).equals("number")) {
                throw new IllegalArgumentException("only number, plural and select: " + pattern.getPatternString());
            } else if (part.getType() == Part.Type.ARG_STYLE && pattern.getSubstring(part).startsWith(" ")) {
                throw new IllegalArgumentException("a blank before the form is printed: " + pattern.getPatternString());
            } else if (part.getType() == Part.Type.ARG_START && (part.getArgType() == ArgType.CHOICE
                    || part.getArgType() == ArgType.SELECTORDINAL)) {
                throw new IllegalArgumentException("only number, plural and select: " + pattern.getPatternString());
            }
        }
    }

    @Override
    String print(Map<String, ?> arguments) {
        StringBuilder out = new StringBuilder();
        print(0, arguments, null, out);
        return language.pseudo() ? Pseudo.whole(out.toString()) : out.toString();
    }

    /** Prints the (sub-)message that starts at a part; {@code counted} is what {@code #} stands for. */
    private void print(int messageStart, Map<String, ?> arguments, Number counted, StringBuilder out) {
        String text = pattern.getPatternString();
        int from = pattern.getPart(messageStart).getLimit();
        for (int i = messageStart + 1;; i++) {
            Part part = pattern.getPart(i);
            literal(text.substring(from, part.getIndex()), out);
            from = part.getLimit();
            if (part.getType() == Part.Type.MSG_LIMIT) {
                return;
            } else if (part.getType() == Part.Type.REPLACE_NUMBER) {
                out.append(grouped(counted));
            } else if (part.getType() == Part.Type.ARG_START) {
                int limit = pattern.getLimitPartIndex(i);
                argument(i, arguments, out);
                i = limit;
                from = pattern.getPart(limit).getLimit();
            }
            // What is left are quotes, which are skipped.
        }
    }

    private void literal(String text, StringBuilder out) {
        out.append(language.pseudo() ? Pseudo.accented(text) : text);
    }

    private void argument(int start, Map<String, ?> arguments, StringBuilder out) {
        ArgType type = pattern.getPart(start).getArgType();
        String name = pattern.getSubstring(pattern.getPart(start + 1));
        Object value = arguments.get(name);
        if (!arguments.containsKey(name)) {
            out.append('{').append(name).append('}');
        } else if (type == ArgType.NONE) {
            out.append(say(value, language));
        } else if (type == ArgType.SIMPLE) {
            out.append(number(start + 3, (Number) value));
        } else if (type == ArgType.PLURAL) {
            plural(start + 2, arguments, (Number) value, out);
        } else {
            print(branch(start + 2, value instanceof Enum<?> constant ? constant.name() : String.valueOf(value)), arguments,
                    null, out);
        }
    }

    private String number(int style, Number value) {
        Part part = pattern.getPart(style);
        return part.getType() == Part.Type.ARG_STYLE ? figure(pattern.getSubstring(part), value) : grouped(value);
    }

    private String figure(String form, Number value) {
        DecimalFormat format = new DecimalFormat(form, DecimalFormatSymbols.getInstance(language.locale()));
        // As people round, and as the rest of the figures is rounded.
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(value);
    }

    private String grouped(Number value) {
        return NumberFormat.getInstance(language.locale()).format(value);
    }

    private void plural(int first, Map<String, ?> arguments, Number count, StringBuilder out) {
        double offset = pattern.getPluralOffset(first);
        int i = pattern.getPart(first).getType().hasNumericValue() ? first + 1 : first;
        int chosen = -1;
        int otherwise = -1;
        String rule = PluralRule.in(language).select(count.doubleValue() - offset);
        for (; pattern.getPart(i).getType() != Part.Type.ARG_LIMIT; i = pattern.getLimitPartIndex(i) + 1) {
            String selector = pattern.getSubstring(pattern.getPart(i));
            i++;
            if (pattern.getPartType(i).hasNumericValue()) {
                if (pattern.getNumericValue(pattern.getPart(i)) == count.doubleValue()) {
                    print(i + 1, arguments, count, out);
                    return;
                }
                i++;
            } else if (selector.equals(rule)) {
                chosen = i;
            } else if (selector.equals("other")) {
                otherwise = i;
            }
        }
        Number shown = offset == 0 ? count : (Number) (count.doubleValue() - offset);
        print(chosen >= 0 ? chosen : otherwise, arguments, shown, out);
    }

    private int branch(int first, String wanted) {
        int otherwise = -1;
        for (int i = first; pattern.getPart(i).getType() != Part.Type.ARG_LIMIT; i = pattern.getLimitPartIndex(i) + 1) {
            String selector = pattern.getSubstring(pattern.getPart(i));
            i++;
            if (selector.equals(wanted)) {
                return i;
            } else if (selector.equals("other")) {
                otherwise = i;
            }
        }
        return otherwise;
    }
}
